using System.Collections.Immutable;
using TyingClass.Balance.Reports;
using TyingClass.Recipes.Text;
using TyingClass.Storage.Attempts;
using TyingClass.Web.Figures;

namespace TyingClass.Web.Bench;

/// <summary>The figures shown beside a fly, in the state looked at.</summary>
internal static class BenchFigures
{
    private static readonly ImmutableArray<(string Label, string Name, Func<BalanceReport, StateReport, double?> Value)> Rows =
    [
        ("Mass, dry", "G", (r, _) => r.MassG),
        ("Mass to cast, wet", "G", (r, _) => r.Casting.WetG),
        ("Weight in water", "G", (_, s) => s.WetWeightG),
        ("Mass center behind the front of the shank", "Mm", (r, _) => r.MassCenterMm.X),
        ("Mass center above the shank’s line", "Mm", (r, _) => r.MassCenterMm.Z),
        ("Hung dry, shank from plumb", "Deg", (r, _) => r.Hang.ShankFromPlumbDeg),
        ("Level-line keel", "Mm", (r, s) => s.LevelLineKeelMm?.For(r.Intent)),
        ("Speed", "MS", (_, s) => s.AtFishingSpeed.SpeedMS),
        ("Pitch, nose up positive", "Deg", (_, s) => s.AtFishingSpeed.PitchDeg),
        ("Lean from as intended", "Deg", (_, s) => s.AtFishingSpeed.LeanDeg),
        ("Keel height", "Mm", (r, s) => s.AtFishingSpeed.KeelHeightMm.For(r.Intent)),
        ("Comes back when tipped by up to", "Deg", (_, s) => s.Roll.RangeDeg),
        ("Line above the horizontal", "Deg", (_, s) => s.AtFishingSpeed.LineAngleDeg),
        ("Sink rate on a slack line", "MS", (_, s) => s.Sink?.RateMS),
        ("Depth after a pause of 5 s", "M", (_, s) => s.Sink?.DepthAfter5sM),
        ("Of flies tied like it, ride as intended", "Share", (_, s) => s.Tolerance.AsIntended),
    ];

    public static ImmutableArray<Figure> Of(BalanceReport report, StateReport state, UnitSystem units) =>
        [.. Rows.Select(row => new Figure(row.Label, Say(row.Name, row.Value(report, state), units)))];

    private static string Say(string name, double? value, UnitSystem units) =>
        value is { } known && double.IsFinite(known) ? FigureText.Say(new KeptFigure(name, known), units) : "cannot be told";
}

public sealed record Figure(string Label, string Value);
