using System.Collections.Immutable;
using TyingClass.Balance.Reports;
using TyingClass.Recipes.Text;
using TyingClass.Telling.Figures;

namespace TyingClass.Web.Bench;

/// <summary>The figures shown beside a fly, in the state looked at.</summary>
internal static class BenchFigures
{
    private static readonly ImmutableArray<(Magnitude What, Func<BalanceReport, StateReport, double?> Si)> Rows =
    [
        (Magnitudes.Mass, (r, _) => Si.G(r.MassG)),
        (Magnitudes.MassWithHeldWater, (r, _) => Si.G(r.Casting.WetG)),
        (Magnitudes.WetWeight, (_, s) => Si.G(s.WetWeightG)),
        (Magnitudes.MassCenterX, (r, _) => Si.Mm(r.MassCenterMm.X)),
        (Magnitudes.MassCenterZ, (r, _) => Si.Mm(r.MassCenterMm.Z)),
        (Magnitudes.HangAngle, (r, _) => Si.Deg(r.Hang.ShankFromPlumbDeg)),
        (Magnitudes.LevelLineKeel, (r, s) => Si.Mm(s.LevelLineKeelMm?.For(r.Intent))),
        (Magnitudes.FishingSpeed, (_, s) => s.AtFishingSpeed.SpeedMS),
        (Magnitudes.Pitch, (_, s) => Si.Deg(s.AtFishingSpeed.PitchDeg)),
        (Magnitudes.Lean, (_, s) => Si.Deg(s.AtFishingSpeed.LeanDeg)),
        (Magnitudes.KeelHeight, (r, s) => Si.Mm(s.AtFishingSpeed.KeelHeightMm.For(r.Intent))),
        (Magnitudes.RightingRange, (_, s) => Si.Deg(s.Roll.RangeDeg)),
        (Magnitudes.LineAngle, (_, s) => Si.Deg(s.AtFishingSpeed.LineAngleDeg)),
        (Magnitudes.SinkRate, (_, s) => s.Sink?.RateMS),
        (Magnitudes.FirstMeterRate, (_, s) => s.Sink?.FirstMeterMS),
        (Magnitudes.Depth, (_, s) => s.Sink?.DepthAfter5sM),
        (Magnitudes.RidesAsIntended, (_, s) => s.Tolerance.AsIntended),
    ];

    public static ImmutableArray<FigureRow> Of(BalanceReport report, StateReport state, UnitSystem units) =>
        [.. Rows.Select(row => new FigureRow(row.What.Label, row.What.Say(row.Si(report, state), units)))];
}

public sealed record FigureRow(string Label, string Value);
