using TyingClass.Lessons.Quantities;
using TyingClass.Lessons.Reasons;
using TyingClass.Recipes.Text;
using TyingClass.Telling.Reasons;
using TyingClass.Telling.Sentences;

namespace TyingClass.Lessons.Kinds.Measure;

/// <summary>What a figure hangs on. Whoever missed it is told where to look, and not how much: it may be tried again.</summary>
internal static class MeasureReason
{
    public static AnswerReason Of(QuantityQuery query, FlyFigures fly, double answer, double key, bool told, bool passed, UnitSystem units)
    {
        Reason reason = OneFlyReason.Of(query, fly);
        string first = passed ? OpeningSentence.OfOne(reason)
            : OpeningSentence.ToLookAt(reason, $"Your figure {ComparisonWords.Beside(answer, key)}");
        if (told) return AnswerReason.Of(first, units, reason).Shown(reason, FlyPair.None);
        // What a sum of masses is made from may be told; the one asked for may not.
        string masses = query.Quantity.Name.StartsWith("mass", StringComparison.Ordinal) || query.Quantity.Name == "hang angle"
            ? MassSentence.Most(fly.Body, units, query.Quantity.Name == "mass of" ? query.Part : null)
            : "";
        return AnswerReason.Silent(first, $"{(query.Part is null ? WhySentence.Names(reason) : "")} {masses}".Trim());
    }
}
