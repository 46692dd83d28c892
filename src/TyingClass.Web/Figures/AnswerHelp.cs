using TyingClass.Lessons.Quantities;
using TyingClass.Recipes.Text;
using TyingClass.Telling.Figures;

namespace TyingClass.Web.Figures;

/// <summary>How to write a figure of one quantity, for whoever is about to type it.</summary>
public static class AnswerHelp
{
    /// <param name="quantity">As an exercise names it: "hang angle".</param>
    public static string SameAnswer(string? quantity, UnitSystem units) => TypingHelp.SameAnswer(Query(quantity)?.Quantity.Dimension, units);

    /// <summary>After what the quantity is, where its name alone is no plain English.</summary>
    public static string AsIn(string quantity, UnitSystem units) => Query(quantity) is { } query
        ? TypingHelp.AsIn(query.Heading(units), query.Phrase(units), query.Quantity.Dimension, units)
        : TypingHelp.AsIn(quantity, quantity, null, units);

    private static QuantityQuery? Query(string? quantity) =>
        quantity is not null && QuantityQuery.TryParse(quantity, out QuantityQuery query, out _) ? query : null;
}
