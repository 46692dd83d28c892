using System.Globalization;
using TyingClass.Recipes.Text;

namespace TyingClass.Telling.Figures;

/// <summary>A figure as it is written down, and the value that stands there.</summary>
public readonly record struct PaperFigure(string Text, double Si);

/// <summary>
/// Where a sum is done by hand: each line goes on with the figures as they are written above it, so that what is printed adds up as it stands.
/// </summary>
/// <param name="more">Places beyond what a figure alone would get.</param>
public sealed class Paper(UnitSystem units, int more)
{
    /// <summary>With so many more places any sum comes out at the engine's figure.</summary>
    public const int MostMore = 3;

    /// <summary>Whose units the sum is done in.</summary>
    public UnitSystem Units => units;

    public PaperFigure Write(double si, Magnitude what) => Of(what, si, more);

    /// <summary>A place along the fly: a caliper's digits do for one round more.</summary>
    public PaperFigure Place(double si) => Of(Magnitudes.Place, si, Math.Max(0, more - 1));

    /// <summary>With one place more: for masses that a table gives in thousandths.</summary>
    public Paper Finer => new(units, more + 1);

    /// <summary>A density as its table has it; in metric the one whose number is that of grams in a cubic centimeter.</summary>
    public PaperFigure Density(double kgM3)
    {
        string symbol = units == UnitSystem.Metric ? "g/cm³" : Recipes.Text.Units.SymbolFor(kgM3, Dimension.Density, units);
        string text = Stated.SayIn(symbol, kgM3, Dimension.Density, more);
        return new PaperFigure(text, Read(text, kgM3, Dimension.Density, symbol));
    }

    /// <summary>A size as it was stated: nobody measured it more finely.</summary>
    public PaperFigure Size(double m)
    {
        string symbol = Recipes.Text.Units.SymbolFor(m, Dimension.Length, units), text = Stated.SayIn(symbol, m, Dimension.Length);
        return new PaperFigure(text, Read(text, m, Dimension.Length, symbol));
    }

    /// <summary>A plain number.</summary>
    public PaperFigure Number(double value, int decimals = 2)
    {
        string text = Numbers.Write(value, decimals + more);
        return new PaperFigure(text, Shown(text) ?? value);
    }

    private PaperFigure Of(Magnitude what, double si, int places)
    {
        string text = what.SayWith(si, units, places);
        return new PaperFigure(text, Read(text, si, what.Dimension, what.Symbol(units)));
    }

    // What no plain number stands for is taken as it is.
    private static double Read(string text, double si, Dimension dimension, string symbol) =>
        text.Contains("millionths", StringComparison.Ordinal) || Shown(text) is not { } number ? si : Recipes.Text.Units.ToSi(number, dimension, symbol);

    private static double? Shown(string text)
    {
        string number = string.Concat(text.Replace('−', '-').TakeWhile(c => char.IsAsciiDigit(c) || c is '-' or '.'));
        return double.TryParse(number, NumberStyles.Float, CultureInfo.InvariantCulture, out double value) ? value : null;
    }
}
