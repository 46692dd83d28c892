using System.Collections.Frozen;
using System.Globalization;
using TyingClass.Recipes.Text;
using TyingClass.Storage.Attempts;

namespace TyingClass.Web.Figures;

/// <summary>An attempt's kept figures in words, in the reader's units.</summary>
public static class FigureText
{
    private const double MmPerInch = 25.4;
    private const double GrainsPerGram = 15.4323583529;
    private const double FeetPerMeter = 1 / 0.3048;

    private static readonly FrozenDictionary<string, string> Labels = new Dictionary<string, string>
    {
        ["massG"] = "Mass, dry",
        ["heldWaterG"] = "Water it carries",
        ["wetWeightG"] = "Weight in water, soaked",
        ["massCenterXMm"] = "Mass center behind the front of the shank",
        ["massCenterZMm"] = "Mass center above the shank’s line",
        ["hangShankFromPlumbDeg"] = "Hung dry, shank from plumb",
        ["levelLineKeelMm"] = "Level-line keel",
        ["speedMS"] = "Fishing speed",
        ["pitchDeg"] = "Pitch, nose up positive",
        ["leanDeg"] = "Lean",
        ["keelHeightMm"] = "Keel height, soaked",
        ["keelHeightFreshMm"] = "Keel height, fresh",
        ["sinkRateMS"] = "Sink rate",
        ["depthAfter5sM"] = "Depth after 5 s",
        ["asIntendedShare"] = "Rides as intended",
    }.ToFrozenDictionary();

    /// <summary>Figures without a wording are left out: an older attempt may hold some.</summary>
    public static IEnumerable<(string Label, string Value)> Of(IEnumerable<KeptFigure> figures, UnitSystem units) =>
        figures.Where(f => Labels.ContainsKey(f.Name)).Select(f => (Labels[f.Name], Say(f, units)));

    /// <summary>One figure with its unit, told by the end of its name: MS, Mm, Deg, Share, G or M.</summary>
    public static string Say(KeptFigure figure, UnitSystem units)
    {
        bool imperial = units == UnitSystem.Imperial;
        string name = figure.Name;
        if (name.EndsWith("MS", StringComparison.Ordinal)) return imperial ? Text(figure.Value * FeetPerMeter, "0.00", "ft/s") : Text(figure.Value, "0.00", "m/s");
        if (name.EndsWith("Mm", StringComparison.Ordinal)) return imperial ? Text(figure.Value / MmPerInch, "0.000", "in") : Text(figure.Value, "0.0", "mm");
        if (name.EndsWith("Deg", StringComparison.Ordinal)) return Number(figure.Value, "0") + "°";
        if (name.EndsWith("Share", StringComparison.Ordinal)) return Text(figure.Value * 100, "0", "%");
        if (name.EndsWith('G')) return imperial ? Text(figure.Value * GrainsPerGram, "0.0", "grains") : Text(figure.Value, "0.000", "g");
        return imperial ? Text(figure.Value * FeetPerMeter, "0.0", "ft") : Text(figure.Value, "0.00", "m");
    }

    private static string Text(double value, string format, string unit) => $"{Number(value, format)} {unit}";

    // A figure that rounds to nothing has no sign; a minus is a minus, not a hyphen.
    private static string Number(double value, string format)
    {
        string text = value.ToString(format, CultureInfo.InvariantCulture);
        return text.Any(c => c is >= '1' and <= '9') ? text.Replace('-', '−') : text.Replace("-", "", StringComparison.Ordinal);
    }
}
