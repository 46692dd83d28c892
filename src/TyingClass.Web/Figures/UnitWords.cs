using TyingClass.Lessons.Quantities;
using TyingClass.Recipes.Text;

namespace TyingClass.Web.Figures;

/// <summary>How to write a figure of one quantity, for whoever is about to type it.</summary>
public static class UnitWords
{
    /// <summary>"Any unit of its kind will do: 0.25 g and 3.86 gr are the same answer."</summary>
    /// <param name="quantity">As an exercise names it: "hang angle".</param>
    public static string SameAnswer(string? quantity)
    {
        if (Of(quantity) is not { } dimension) return "A plain number.";
        string example = Units.Example(dimension);
        // A phone hides the sign for degrees.
        if (dimension == Dimension.Angle) return $"{example} and {example.Replace("°", " deg", StringComparison.Ordinal)} are the same answer.";
        string other = Units.TryParse(example, dimension, out double si, out _) ? Units.Tell(si, dimension, UnitSystem.Imperial) : example;
        return other == example ? $"With its unit, as in {example}." : $"Any unit of its kind will do: {example} and {other} are the same answer.";
    }

    /// <summary>"With its unit, as in 0.25 g.", after what the quantity is where its name alone is no plain English.</summary>
    public static string AsIn(string quantity)
    {
        string how = Of(quantity) is { } dimension ? $"With its unit, as in {Units.Example(dimension)}." : "A plain number.";
        return Query(quantity) is { } query && query.Phrase != query.Name ? $"{char.ToUpperInvariant(query.Phrase[0])}{query.Phrase[1..]}. {how}" : how;
    }

    private static Dimension? Of(string? quantity) => Query(quantity)?.Quantity.Dimension;

    private static QuantityQuery? Query(string? quantity) => quantity is not null && QuantityQuery.TryParse(quantity, out QuantityQuery query, out _) ? query : null;
}
