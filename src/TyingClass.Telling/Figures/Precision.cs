using TyingClass.Recipes.Text;

namespace TyingClass.Telling.Figures;

/// <summary>How finely one unit is told.</summary>
/// <param name="Decimals">At most so many; last zeros are dropped.</param>
/// <param name="FinerUnder">Under this, in the unit, one more place, lest what is small but decides read as nothing.</param>
/// <param name="Significant">Where set, so many digits count and <paramref name="Decimals"/> is the most places.</param>
/// <param name="KeepsZeros">For what stands in columns and is added up there: "−0.10" beside "+0.25".</param>
internal readonly record struct Fineness(string Symbol, int Decimals, double FinerUnder = 0, int? Significant = null, bool KeepsZeros = false)
{
    /// <param name="more">Places beyond what the figure alone would get.</param>
    public string Write(double value, int more = 0) =>
        KeepsZeros ? Numbers.Fixed(value, Places(value) + more) : Numbers.Write(value, Places(value) + more);

    private int Places(double value)
    {
        if (Significant is not { } digits) return Math.Abs(value) < FinerUnder ? Decimals + 1 : Decimals;
        return value == 0 || !double.IsFinite(value) ? 0 : Math.Clamp(digits - 1 - (int)Math.Floor(Math.Log10(Math.Abs(value))), 0, Decimals);
    }
}

/// <summary>The digits that the model deserves, for each system of units; docs/telling.md says why these.</summary>
internal sealed record Precision(Fineness Metric, Fineness Imperial)
{
    /// <summary>Heights and places along a fly: a caliper's tenth.</summary>
    public static readonly Precision Place = new(new("mm", 1, 0.095), new("in", 3, 0.00095));

    /// <summary>Of a fly and its parts: a hundredth of a gram, from the trade's scales; always two digits at least.</summary>
    public static readonly Precision FlyMass = new(new("g", 2, 0.0995), new("gr", 1, 0.995));

    public static readonly Precision Angle = new(new("°", 0), new("°", 0));

    /// <summary>As set, not computed.</summary>
    public static readonly Precision TowSpeed = new(new("m/s", 2, 0.0095), new("ft/s", 2, 0.0095));

    /// <summary>Drag is known to a tenth or so: two digits.</summary>
    public static readonly Precision SinkRate = new(new("m/s", 3, Significant: 2), new("ft/s", 3, Significant: 2));

    public static readonly Precision Depth = new(new("m", 2, 0.0095), new("ft", 1, 0.095));

    /// <summary>How far a strip lifts a fly.</summary>
    public static readonly Precision Hop = new(new("cm", 0, 9.5), new("in", 1, 0.95));

    /// <summary>Of a retrieve: a hand is no clock.</summary>
    public static readonly Precision Beat = new(new("s", 1), new("s", 1));

    public static readonly Precision KeelMoment = new(new("g·mm", 2, KeepsZeros: true), new("gr·in", 2, KeepsZeros: true));

    /// <summary>In imperial units as the weight of so many grains: there is no other unit of force this small that a tyer would know.</summary>
    public static readonly Precision SmallForce = new(new("mN", 1, 0.095), new("gr", 1, 0.095));

    public static readonly Precision Volume = new(new("mm³", 1, Significant: 2), new("in³", 5, Significant: 2));

    public static readonly Precision Share = new(new("%", 0), new("%", 0));

    public static readonly Precision Interval = new(new("%", 1), new("%", 1));

    public static readonly Precision Time = new(new("s", 0, 9.95), new("s", 0, 9.95));

    public Fineness For(UnitSystem units) => units == UnitSystem.Metric ? Metric : Imperial;
}
