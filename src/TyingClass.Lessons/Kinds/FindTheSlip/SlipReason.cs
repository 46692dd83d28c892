using TyingClass.Lessons.Quantities;
using TyingClass.Lessons.Reasons;
using TyingClass.Recipes.Text;
using TyingClass.Telling.Reasons;

namespace TyingClass.Lessons.Kinds.FindTheSlip;

/// <summary>What the step that was chosen turns on.</summary>
internal static class SlipReason
{
    public static AnswerReason Of(SlipKey key, int step, FlyFigures? fly, UnitSystem units)
    {
        if (fly is null) return AnswerReason.Silent(OpeningSentence.OfArgument(), OpeningSentence.HowArgumentsGo);
        // A step that claims nothing stands on those that do.
        QuantityQuery[] own = [.. key.Quantities(step)];
        QuantityQuery? asked = (own.Length > 0 ? own : Enumerable.Range(1, key.Claims.Length).SelectMany(key.Quantities)).FirstOrDefault();
        if (asked is null)
        {
            WayReason way = WayReason.Of(fly, units);
            return AnswerReason.Silent(way.First, OpeningSentence.HowArgumentsGo);
        }

        Reason reason = fly.Start is { } start ? ChangeReason.Of(asked, start, fly) : OneFlyReason.Of(asked, fly);
        bool ofThumb = fly.Start is null && asked.Quantity.Name == "keel height" && LevelLine(fly) is { } line && line > 0 != reason.ToSi > 0;
        string first = fly.Start is not null ? OpeningSentence.OfChange(reason, everyBit: true)
            : ofThumb ? OpeningSentence.OfRuleOfThumb(LevelLine(fly) > 0)
            : OpeningSentence.OfOne(reason);
        FlyPair pair = fly.Start is null ? FlyPair.None : FlyPair.Change;
        if (own.Length == 0) return AnswerReason.Silent(first, OpeningSentence.HowArgumentsGo);
        AnswerReason told = AnswerReason.Of(first, units, reason).Shown(reason, pair);
        return ofThumb ? told with { Picture = told.Picture! with { Part = null, Words = null } } : told;
    }

    private static double? LevelLine(FlyFigures fly) => QuantityQuery.Known("level-line keel").Of(fly);
}
