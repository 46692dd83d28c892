using TyingClass.Lessons.Quantities;
using TyingClass.Lessons.Reasons;
using TyingClass.Recipes.Text;
using TyingClass.Telling.Reasons;

namespace TyingClass.Lessons.Kinds.TubTest;

/// <summary>What the first thing seen hangs on.</summary>
internal static class TubTestReason
{
    public static AnswerReason Of(string quantity, FlyFigures fly, UnitSystem units)
    {
        if (!QuantityQuery.TryParse(quantity, out QuantityQuery query, out _))
        {
            WayReason way = WayReason.Of(fly, units);
            return AnswerReason.Of(way.First, units, way.Reason).Shown(way.Reason, way.Pair);
        }

        Reason reason = OneFlyReason.Of(query, fly);
        return AnswerReason.Of(OpeningSentence.OfOne(reason), units, reason).Shown(reason, FlyPair.None);
    }
}
