using System.Collections.Immutable;
using TyingClass.Recipes.Text;

namespace TyingClass.Telling.Figures;

/// <summary>
/// What a computed figure measures, known once: its name, its meaning and how it is told. What a person set or typed is told by <see cref="Stated"/>.
/// </summary>
public sealed record Magnitude
{
    /// <summary>Where there is none to tell.</summary>
    public const string None = "cannot be told";

    // Beyond this two figures differ by less than anybody could see.
    private const int MostMore = 3;

    // Goals are judged on the figure itself: there a hair counts.
    private const int MostMoreOfAGoal = 9;

    internal Magnitude(string name, Dimension dimension, Precision precision, string meaning) =>
        (Name, Dimension, Precision, Meaning, Phrase, Label) = (name, dimension, precision, meaning, name, Grammar.Capital(name));

    /// <summary>As authors write it: "keel height".</summary>
    public string Name { get; }

    public Dimension Dimension { get; }

    /// <summary>For students, without the number: "how far the weight lies below the hinge line".</summary>
    public string Meaning { get; }

    /// <summary>How a clause names it, where the name alone is no plain English.</summary>
    public string Phrase { get; init; }

    /// <summary>At the head of a table's row.</summary>
    public string Label { get; init; }

    internal Precision Precision { get; }

    /// <summary>"0.7 mm", in the reader's units.</summary>
    /// <param name="si">SI.</param>
    public string Say(double si, UnitSystem units) => Told(si, units, 0);

    /// <summary>As <see cref="Say(double, UnitSystem)"/>; "cannot be told" for none.</summary>
    public string Say(double? si, UnitSystem units) => si is { } known && double.IsFinite(known) ? Say(known, units) : None;

    /// <summary>Figures set against one another: all get as many places as it takes to tell those apart that are not the same.</summary>
    public ImmutableArray<string> SayApart(UnitSystem units, params ReadOnlySpan<double?> si)
    {
        double[] all = [.. si.ToArray().OfType<double>().Where(double.IsFinite)];
        int more = 0;
        while (more < MostMore && With(more).Distinct().Count() < all.Select(Units.Rounded).Distinct().Count()) more++;
        return [.. si.ToArray().Select(v => v is { } known && double.IsFinite(known) ? Told(known, units, more) : None)];

        IEnumerable<string> With(int places) => all.Select(v => Told(v, units, places));
    }

    /// <summary>With as many places as it takes to tell it from another that it is not.</summary>
    internal string SayAgainst(double si, double otherSi, UnitSystem units)
    {
        int more = 0;
        while (more < MostMoreOfAGoal && Told(si, units, more) == Told(otherSi, units, more)) more++;
        return Told(si, units, more);
    }

    /// <summary>With so many places more.</summary>
    internal string SayWith(double si, UnitSystem units, int more) => Told(si, units, more);

    /// <summary>One that somebody set, typed or saw: in the unit in which the computed figure beside it is told, with the digits of <see cref="Stated"/>.
    /// </summary>
    public string SayStated(double si, UnitSystem units) => Stated.SayIn(Symbol(units), si, Dimension);

    /// <summary>With a plus sign where it is above zero.</summary>
    public string SaySigned(double si, UnitSystem units) => Plus(si, units) + Say(si, units);

    /// <summary>The number alone, for a column or a mark whose unit stands at its head.</summary>
    public string Number(double si, UnitSystem units) => Number(si, units, 0);

    public string NumberSigned(double si, UnitSystem units) => Plus(si, units) + Number(si, units);

    public string Symbol(UnitSystem units) => Precision.For(units).Symbol;

    /// <summary>For an axis: in the reader's unit, not rounded.</summary>
    public double Shown(double si, UnitSystem units) => Units.FromSi(si, Dimension, Symbol(units));

    /// <summary>"keel height, mm".</summary>
    public string Axis(UnitSystem units) => $"{Name}, {Symbol(units)}";

    private string Number(double si, UnitSystem units, int more) =>
        Precision == Precision.Share ? ShareNumber(si, more) : Precision.For(units).Write(Shown(si, units), more);

    private string Told(double si, UnitSystem units, int more)
    {
        if (Symbol(units) == "in³" && Stated.Millionths(Shown(si, units), Precision.For(units), more) is { } small) return small;
        return Symbol(units) is "°" ? Number(si, units, more) + "°" : $"{Number(si, units, more)} {Symbol(units)}";
    }

    private string Plus(double si, UnitSystem units) => si > 0 && Number(si, units).AsSpan().IndexOfAnyInRange('1', '9') >= 0 ? "+" : "";

    // "100 %" is all of them, "0 %" none.
    private string ShareNumber(double share, int more)
    {
        bool nearly = share is > 0 and < 0.01 or > 0.99 and < 1;
        return Numbers.Write(100 * share, Precision.Metric.Decimals + more + (nearly ? 1 : 0));
    }
}
