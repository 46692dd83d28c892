using TyingClass.Lessons.Grading;
using TyingClass.Lessons.Quantities;
using TyingClass.Lessons.Reasons;
using TyingClass.Recipes.Text;
using TyingClass.Telling.Reasons;

namespace TyingClass.Lessons.Kinds.TubTest;

/// <summary>What was seen beside what the model says, and what that hangs on.</summary>
internal static class TubTestReason
{
    /// <summary>Of what was seen furthest from the model, in steps that anybody would notice.</summary>
    public static AnswerReason Of(IReadOnlyList<Observation> all, FlyFigures fly, UnitSystem units)
    {
        Observation seen = all.OrderByDescending(Off).First();
        if (!QuantityQuery.TryParse(seen.Quantity, out QuantityQuery query, out _))
        {
            WayReason way = WayReason.Of(fly, units);
            AnswerReason told = way.Told(units);
            return told with
            {
                First = TubTestRecord.IsOfTheCast(seen) ? SeenOpening.OfTheCast(seen.Observed, way.Reason.Top?.What)
                : SeenOpening.OfWay(seen.Observed, TubTestRecord.AgreesInWords(seen), way.Reason.Top?.What)
            };
        }

        Reason reason = OneFlyReason.Of(query, fly);
        if (seen.Observed == TubTestRecord.Never)
            return AnswerReason.Of(SeenOpening.OfNever(seen.PredictedSi is null), units, reason).Shown(reason, FlyPair.None);
        return AnswerReason.Of(SeenOpening.Of(reason, seen.ObservedSi ?? 0), units, reason).Shown(reason, FlyPair.None);
    }

    private static double Off(Observation seen)
    {
        if (!QuantityQuery.TryParse(seen.Quantity, out QuantityQuery query, out _)) return TubTestRecord.AgreesInWords(seen) ? 0 : 1;
        return seen is { PredictedSi: { } model, ObservedSi: { } observed } ? Math.Abs(observed - model) / query.Quantity.NoticeableSi : 0;
    }
}
