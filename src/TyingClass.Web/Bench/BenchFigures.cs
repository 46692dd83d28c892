using System.Collections.Immutable;
using Microsoft.AspNetCore.Html;
using TyingClass.Balance.Reports;
using TyingClass.Balance.Retrieving;
using TyingClass.Drawing;
using TyingClass.Recipes.Reports;
using TyingClass.Recipes.Text;
using TyingClass.Telling.Figures;
using TyingClass.Telling.Sentences;

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

    /// <summary>With what the model's own guesses leave open of each, soaked.</summary>
    public static ImmutableArray<FigureRow> WithDoubt(SolvedFly fly, UnitSystem units)
    {
        ImmutableArray<SaidRange> ranges = DoubtSentence.Ranges(fly.Doubt, units);
        StateReport state = fly.Report.Soaked;
        return [.. Rows.Select(row =>
        {
            double? si = row.Si(fly.Report, state);
            SaidRange? range = si is null ? null : ranges.FirstOrDefault(r => r.What == row.What);
            return new FigureRow(
                LabelOf(row.What, units), row.What.Say(si, units), range?.Text,
                range is null ? null : BenchResult.Html(Curves.DoubtBar(range, si!.Value, units)));
        })];
    }

    /// <summary>Of the last round of its retrieve.</summary>
    public static ImmutableArray<FigureRow> Retrieved(SolvedFly fly, UnitSystem units)
    {
        RetrieveReport report = fly.Retrieve;
        return
        [
            Row(Magnitudes.Hop, report.HopM), Row(Magnitudes.Shallowest, report.ShallowestM), Row(Magnitudes.Deepest, report.DeepestM),
            Row(Magnitudes.DivePitch, report.DivePitchDeg is { } deg ? Si.Deg(deg) : null),
        ];

        FigureRow Row(Magnitude what, double? si) =>
            new($"In the last round, {char.ToLowerInvariant(what.Label[0])}{what.Label[1..]}", what.Say(report.HasFigures ? si : null, units));
    }

    public static ImmutableArray<FigureRow> Of(BalanceReport report, StateReport state, UnitSystem units) =>
        [.. Rows.Select(row => new FigureRow(LabelOf(row.What, units), row.What.Say(row.Si(report, state), units)))];

    private static string LabelOf(Magnitude what, UnitSystem units) =>
        what == Magnitudes.FirstMeterRate ? $"Over {PauseSentence.FirstMeter(units)}" : what.Label;
}

/// <param name="Range">What the model's own guesses leave open, in words; null where that was not asked or is none.</param>
/// <param name="Bar">The same for the eye.</param>
public sealed record FigureRow(string Label, string Value, string? Range = null, IHtmlContent? Bar = null);
