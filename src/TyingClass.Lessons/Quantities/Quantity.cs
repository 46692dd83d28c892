using System.Collections.Immutable;
using TyingClass.Recipes.Text;
using TyingClass.Telling.Figures;

namespace TyingClass.Lessons.Quantities;

/// <summary>What may be said after a quantity's name.</summary>
[Flags]
public enum Circumstances
{
    None = 0,

    /// <summary>"at 0.6 m/s".</summary>
    Speed = 1,

    /// <summary>"after 8 s".</summary>
    Pause = 2,

    /// <summary>"when fresh", "when soaked".</summary>
    State = 4,

    /// <summary>"on a loop knot", "on a cinched knot".</summary>
    Knot = 8,

    /// <summary>Compares with the fly the exercise starts from.</summary>
    Start = 16,

    /// <summary>"to 0.5 m".</summary>
    Depth = 32,

    Towed = Speed | State | Knot,
}

/// <summary>A figure of the report that goals, keys and conditions can name.</summary>
/// <param name="Name">As authors write it: "keel height".</param>
/// <param name="Dimension">Null for a plain count.</param>
/// <param name="NoticeableSi">A smaller difference is "about the same". Estimate.</param>
/// <param name="Of">SI; null where the figure has no meaning for the fly.</param>
public sealed record Quantity(
    string Name, Dimension? Dimension, double NoticeableSi, Circumstances Takes,
    Func<FlyFigures, QuantityQuery, double?> Of)
{
    /// <summary>How sentences name it, where the name alone is no plain English: "distance of the mass center behind the front of the shank".</summary>
    public string Phrase => Magnitude?.Phrase ?? Name;

    /// <summary>For students, without the number: "how far the weight lies below the hinge line".</summary>
    public string Meaning => Magnitude?.Meaning ?? $"number of {CountOf}";

    /// <summary>Of a plain count: "parts on the hook".</summary>
    public string CountOf { get; init; } = Name;

    /// <summary>Worked out over the whole retrieve of the recipe.</summary>
    public bool IsOfTheRetrieve { get; init; }

    /// <summary>True for what mass and place alone decide, without any flow.</summary>
    public bool IsOfMass => (!IsOfTheRetrieve && Takes is Circumstances.None or Circumstances.Start)
        || Name.StartsWith("center of buoyancy", StringComparison.Ordinal)
        || Name.StartsWith("balance point", StringComparison.Ordinal) || Name is "wet weight" or "displaced volume" or "level-line keel";

    /// <summary>Worked out with the fly held the way it was meant to ride, however it settles.</summary>
    public bool IsOfTheWayMeant => Name is "keel height" or "keel moment of" or "level-line keel";

    /// <summary>True for a figure whose sign says which way the nose points.</summary>
    public bool IsOfTheNose => Name is "pitch" or "pitch while sinking" or "pitch in the pause";

    /// <summary>How it is told, the same on every page; null for a plain count.</summary>
    public Magnitude? Magnitude => Magnitudes.Find(Name);

    /// <summary>The value with its unit, as the reader prefers it; "not defined" for none.</summary>
    public string Say(double? si, UnitSystem units) => (si, Magnitude) switch
    {
        (null, _) => "not defined",
        ({ } value, null) => Numbers.Write(value, 2),
        ({ } value, { } magnitude) => magnitude.Say(Noticed(value), units),
    };

    /// <summary>What the arithmetic left over is nothing.</summary>
    internal double Noticed(double si) => Math.Abs(si) < NoticeableSi / 1000 ? 0 : si;

    /// <summary>Two or more of them set against one another, told apart where they differ.</summary>
    public ImmutableArray<string> SayApart(UnitSystem units, params ReadOnlySpan<double?> si)
    {
        if (Magnitude is not { } magnitude) return [.. si.ToArray().Select(v => Say(v, units))];
        return [.. magnitude.SayApart(units, si).Select(text => text == Telling.Figures.Magnitude.None ? Say(null, units) : text)];
    }

    /// <summary>A value that somebody set, typed or saw, in the reader's units.</summary>
    public string SayStated(double si, UnitSystem units) => Magnitude?.SayStated(si, units) ?? Stated.SayCount(si);
}
