using TyingClass.Lessons.Quantities;
using TyingClass.Recipes.Text;
using TyingClass.Telling.Sentences;

namespace TyingClass.Lessons.Grading;

/// <summary>Which of Telling's sentences says why, for what was asked.</summary>
internal static class WhyText
{
    /// <summary>The ledger for which way up, the masses for what mass decides; both where both are asked.</summary>
    /// <param name="withheld">A part whose mass is asked for and not to be told yet.</param>
    public static string Of(FlyFigures fly, IReadOnlyCollection<QuantityQuery> asked, UnitSystem units, string? withheld = null)
    {
        bool ledger = asked.Count == 0 || !asked.All(MassDecides);
        string masses = asked.Any(MassDecides) ? MassSentence.Most(fly.Body, units, withheld) : "";
        return $"{(ledger ? CauseSentence.Of(fly.Report, units) : "")} {masses}".Trim();
    }

    /// <summary>The ledger, and the masses too when a goal that mass decides is missed.</summary>
    public static string OfRecipe(FlyFigures fly, IEnumerable<QuantityQuery> missed, UnitSystem units) => missed.Any(MassDecides)
        ? $"{CauseSentence.Of(fly.Report, units)} {MassSentence.Most(fly.Body, units)}"
        : CauseSentence.Of(fly.Report, units);

    private static bool MassDecides(QuantityQuery query) =>
        query.Quantity.IsOfMass || query.Quantity.Name is "sink rate" or "depth" or "pitch while sinking" or "lean while sinking";
}
