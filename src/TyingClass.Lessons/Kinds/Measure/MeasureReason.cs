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
        return told ? AnswerReason.Of(first, units, reason) : AnswerReason.Silent(first, WhySentence.Names(reason));
    }
}
