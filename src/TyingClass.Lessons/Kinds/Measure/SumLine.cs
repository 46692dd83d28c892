using System.Collections.Immutable;
using System.Globalization;
using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Quantities;
using TyingClass.Recipes.Text;
using TyingClass.Telling.Figures;

namespace TyingClass.Lessons.Kinds.Measure;

/// <summary>One line of the sum as the lesson does it, by the author: "left for the eyes: 0.68 g − 0.42 g = 0.26 g".</summary>
/// <param name="What">What the line finds.</param>
/// <param name="Sum">How; empty where it is read off.</param>
/// <param name="Result">What comes of it, with its unit.</param>
public sealed record SumLine(string What, string Sum, string Result)
{
    private const string Comes = " = ";

    /// <param name="text">"0.68 g − 0.42 g = 0.26 g", or a result alone.</param>
    internal static SumLine Read(string what, string text)
    {
        int at = text.LastIndexOf(Comes, StringComparison.Ordinal);
        return new SumLine(what, at < 0 ? "" : text[..at].Trim(), text[(at < 0 ? 0 : at + Comes.Length)..].Trim());
    }

    internal WorkedRow Row(QuantityQuery query, UnitSystem units) => new(What, Said(Sum, units), Si(query), Said(Result, units));

    /// <summary>Null where the lines come out at what they say, and the last at the figure asked for.</summary>
    internal static string? Complaint(ImmutableArray<SumLine> lines, QuantityQuery query, double key, double toleranceSi)
    {
        foreach (SumLine line in lines.Where(l => l.Sum.Length > 0))
        {
            if (Plainly(line.Result) is not { } said || Arithmetic.Of(line.Sum) is not { } found)
                return $"The line “{line.What}” of the sum cannot be read.";
            if (Math.Abs(found - said.Value) > said.HalfADigit)
                return $"The line “{line.What}” of the sum comes to {Numbers.Write(found, 4)}, not to {line.Result}.";
        }

        return lines.IsEmpty ? null
            : double.IsNaN(lines[^1].Si(query)) ? $"The last line of the sum must give the {query.Name}."
            : Math.Abs(lines[^1].Si(query) - key) > toleranceSi
                ? $"The sum comes to {lines[^1].Result}, and the engine finds {query.Say(key, UnitSystem.Metric)}: more than the tolerance apart." : null;
    }

    private double Si(QuantityQuery query) => GoalReader.TryRead(query.Quantity, Result, out double si, out _) ? si : double.NaN;

    private static string Said(string text, UnitSystem units) => units == UnitSystem.Metric ? text : WrittenFigures.Beside(text, units);

    private static (double Value, double HalfADigit)? Plainly(string result)
    {
        string digits = result.Split(' ')[0].TrimEnd('°').Replace('−', '-');
        if (!double.TryParse(digits, CultureInfo.InvariantCulture, out double value)) return null;
        int decimals = digits.Contains('.', StringComparison.Ordinal) ? digits.Length - digits.IndexOf('.', StringComparison.Ordinal) - 1 : 0;
        return (value, 0.501 * Math.Pow(10, -decimals));
    }
}
