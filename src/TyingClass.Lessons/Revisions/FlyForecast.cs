using TyingClass.Balance.Reports;
using TyingClass.Recipes.Model;
using TyingClass.Recipes.Reports;
using TyingClass.Telling.Sentences;

namespace TyingClass.Lessons.Revisions;

/// <summary>What the engine says a tub would show of a fly, SI.</summary>
/// <param name="Way">"point down", "point up", "on its side" or "no clear way".</param>
/// <param name="SinkRateMS">Null when it never settles to a rate.</param>
public sealed record FlyForecast(double HangAngleRad, string Way, double MassKg, double? SinkRateMS)
{
    /// <param name="state">How the fly is when it is towed and dropped.</param>
    /// <param name="waterC">Of the tub, 0 to 40 °C; null for the recipe's own.</param>
    /// <exception cref="ArgumentException">No fly can be built of this recipe.</exception>
    public static FlyForecast Of(Recipe recipe, WetState state, double? waterC)
    {
        ArgumentNullException.ThrowIfNull(recipe);
        Recipe inTub = waterC is { } c ? recipe with { Fishing = recipe.Fishing with { TemperatureC = c } } : recipe;
        BalanceReport report = SolvedFly.Solve(inTub).Report;
        StateReport seen = state == WetState.Fresh ? report.Fresh : report.Soaked;
        return new FlyForecast(
            report.Hang.ShankFromPlumbDeg * Math.PI / 180,
            WayWords.Of(report.Intent, seen.Verdict.Kind),
            1e-3 * report.MassG,
            seen.Sink?.RateMS);
    }
}
