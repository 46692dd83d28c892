using TyingClass.Balance.Reports;
using TyingClass.Recipes.Model;
using TyingClass.Recipes.Reports;

namespace TyingClass.Recipes.Tests.TradeFacts;

/// <summary>What the full report says of a fly, soaked, at its own speed, tied 60 times by a practiced hand.</summary>
internal sealed record Ride(Recipe Recipe, StateReport State)
{
    private static readonly ReportOptions Quick = new() { Flies = 60, SpeedsMS = [0.4] };

    public double KeelMm => State.AtFishingSpeed.KeelHeightMm.For(Recipe.Intent) ?? double.NaN;

    public double PitchDeg => State.AtFishingSpeed.PitchDeg;

    public double AsIntended => State.Tolerance.AsIntended;

    public VerdictKind Kind => State.Verdict.Kind;

    /// <summary>Rides as intended, and so do at least three in four flies tied like it.</summary>
    public bool IsReliable => Kind == VerdictKind.RidesAsIntended && AsIntended >= 0.75;

    public static Ride Of(Recipe recipe) => new(recipe, SolvedFly.Solve(recipe, Quick).Report.Soaked);
}
