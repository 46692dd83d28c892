using TyingClass.Balance.Reports;

namespace TyingClass.Recipes.Measured;

/// <summary>What came of taking over a measurement, as figures: Telling writes the sentence.</summary>
public abstract record TakeOverOutcome;

/// <param name="FlyKg">As weighed.</param>
/// <param name="OthersKg">All parts but the hook, by the recipe.</param>
/// <param name="HookKg">The hook by the recipe.</param>
/// <param name="WantedKg">What the hook would have to weigh; may be below 0.</param>
public sealed record HookWeighed(double FlyKg, double OthersKg, double HookKg, double WantedKg) : TakeOverOutcome
{
    /// <summary>False when no hook weighs that.</summary>
    public bool Taken { get; init; }
}

/// <summary>Why no amount of air gives the rate that was timed.</summary>
public enum AirFault { None, FasterThanWithoutAir, SlowerThanAnyAir, AttitudeJumps }

/// <param name="Part">The part whose air was looked for.</param>
public sealed record AirTimed(string Part, double SinkRateMS, WetState State) : TakeOverOutcome
{
    public AirFault Fault { get; init; }

    /// <summary>Beyond what the recipe had; below 0 for less. Where there is no fault.</summary>
    public double MoreAirM3 { get; init; }

    public double DensityKgM3 { get; init; }

    public double DensityBeforeKgM3 { get; init; }
}

/// <param name="Why">The recipe's own refusal.</param>
public sealed record CannotBeSaid(string Why) : TakeOverOutcome;
