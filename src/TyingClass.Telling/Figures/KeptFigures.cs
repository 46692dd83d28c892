using System.Collections.Frozen;
using TyingClass.Recipes.Text;

namespace TyingClass.Telling.Figures;

/// <summary>The figures kept beside an attempt or a revision, by the names they are kept under: name, label and unit inside are fixed for good.</summary>
public static class KeptFigures
{
    private static readonly FrozenDictionary<string, Row> Rows = new Dictionary<string, Row>
    {
        ["massG"] = new(Magnitudes.Mass, Si.G),
        ["heldWaterG"] = new(Magnitudes.HeldWater, Si.G),
        ["wetWeightG"] = new(Magnitudes.WetWeight, Si.G) { Label = "Weight in water, soaked" },
        ["massCenterXMm"] = new(Magnitudes.MassCenterX, Si.Mm),
        ["massCenterZMm"] = new(Magnitudes.MassCenterZ, Si.Mm),
        ["hangShankFromPlumbDeg"] = new(Magnitudes.HangAngle, Si.Deg),
        ["levelLineKeelMm"] = new(Magnitudes.LevelLineKeel, Si.Mm),
        ["speedMS"] = new(Magnitudes.FishingSpeed, ms => ms) { Label = "Fishing speed" },
        ["pitchDeg"] = new(Magnitudes.Pitch, Si.Deg),
        ["leanDeg"] = new(Magnitudes.Lean, Si.Deg),
        ["keelHeightMm"] = new(Magnitudes.KeelHeight, Si.Mm) { Label = "Keel height, soaked" },
        ["keelHeightFreshMm"] = new(Magnitudes.KeelHeight, Si.Mm) { Label = "Keel height, fresh" },
        ["sinkRateMS"] = new(Magnitudes.SinkRate, ms => ms),
        ["depthAfter5sM"] = new(Magnitudes.Depth, m => m),
        ["asIntendedShare"] = new(Magnitudes.RidesAsIntended, share => share),
    }.ToFrozenDictionary();

    /// <summary>One figure as a row of a table; null for a name without a wording, which an older attempt may hold.</summary>
    public static (string Label, string Value)? Say(string name, double value, UnitSystem units) =>
        Rows.TryGetValue(name, out Row? row) ? (row.Label, row.What.Say(row.ToSi(value), units)) : null;

    private sealed record Row(Magnitude What, Func<double, double> ToSi)
    {
        public string Label { get; init; } = What.Label;
    }
}
