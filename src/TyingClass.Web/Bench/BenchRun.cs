using System.Collections.Immutable;
using TyingClass.Balance.Reports;
using TyingClass.Drawing;
using TyingClass.Recipes.Reports;
using TyingClass.Web.Preferences;

namespace TyingClass.Web.Bench;

/// <summary>The fly in every attitude over the speeds of its slider, sent once for a script to run through.</summary>
public sealed class BenchRun(IHttpContextAccessor accessor)
{
    /// <summary>The button's value that asks for it.</summary>
    public const string Action = "run";

    private const int Steps = 24;

    /// <returns>Null when there is no fly to draw.</returns>
    public string? Of(BenchView view)
    {
        ArgumentNullException.ThrowIfNull(view);
        if (view.Result is not { } result) return null;
        double slowest = Math.Min(0.05, result.State.AtFishingSpeed.SpeedMS), fastest = Math.Max(1.5, result.State.AtFishingSpeed.SpeedMS);
        // Even steps of the logarithm: at low speed the attitude changes most.
        ImmutableArray<double> speeds = [.. Enumerable.Range(0, Steps).Select(i => slowest * Math.Pow(fastest / slowest, i / (Steps - 1.0)))];
        SolvedFly fly = result.Fly.With(ReportOptions.Default with { SpeedsMS = speeds, Flies = 1, PartlySoakedS = view.SoakS > 0 ? view.SoakS : null });
        return FlyDrawing.Run(fly,
            new DrawingOptions { IdPrefix = "bench-run", State = result.State.State, WidthPx = 520, Units = Look.Of(accessor.HttpContext!.Request).Units });
    }
}
