using TyingClass.Lessons.Quantities;
using TyingClass.Lessons.Reasons;
using TyingClass.Recipes.Text;
using TyingClass.Telling.Reasons;

namespace TyingClass.Lessons.Kinds.FindTheSlip;

/// <summary>What the step that was chosen turns on.</summary>
internal static class SlipReason
{
    /// <param name="said">The step chosen, whether it is the one that goes wrong, and whether the reason was right too.</param>
    public static AnswerReason Of(SlipKey key, (int Step, bool IsFound, bool Passed) said, FlyFigures? fly, UnitSystem units)
    {
        if (fly is null) return AnswerReason.Silent(StepOpening.OfNoFly(), StepOpening.HowArgumentsGo);
        // A step that claims nothing stands on those that do.
        QuantityQuery[] own = [.. key.Quantities(said.Step)];
        QuantityQuery? asked = (own.Length > 0 ? own : Enumerable.Range(1, key.Claims.Length).SelectMany(key.Quantities)).FirstOrDefault();
        if (asked is null)
        {
            WayReason way = WayReason.Of(fly, units);
            bool isHalf = said is { IsFound: true, Passed: false };
            return AnswerReason.Silent(isHalf ? StepOpening.OfFound(way.Reason.Top?.What) : way.First, StepOpening.HowArgumentsGo);
        }

        Reason reason = fly.Start is { } start ? ChangeReason.Of(asked, start, fly) : OneFlyReason.Of(asked, fly);
        // The reason is still to be found: whatever explains the step would give it away.
        if (said is { IsFound: true, Passed: false })
            return AnswerReason.Silent(StepOpening.OfFound(asked.Part is { } about ? PartThing(about) : reason.Top?.What), StepOpening.HowArgumentsGo);
        if (Beside(own, fly, fly.Start is null ? null : reason.Top, said.IsFound ? null : said.Step) is { } beside)
            return AnswerReason.Of(beside, units, reason).Shown(reason with { Shares = [] }, FlyPair.None);
        bool ofThumb = fly.Start is null && asked.Quantity.Name == "keel height" && LevelLine(fly) is { } line && line > 0 != reason.ToSi > 0;
        string first = fly.Start is not null ? OpeningSentence.OfChange(reason, everyBit: true)
            : ofThumb ? WayOpening.OfRuleOfThumb(LevelLine(fly) > 0)
            : OpeningSentence.OfOne(reason);
        FlyPair pair = fly.Start is null ? FlyPair.None : FlyPair.Change;
        if (own.Length == 0) return AnswerReason.Silent(first, StepOpening.HowArgumentsGo);
        AnswerReason told = AnswerReason.Of(first, units, reason).Shown(reason, pair);
        return ofThumb ? told with { Picture = told.Picture! with { Part = null, Words = null } } : told;
    }

    // A step that sets one figure of two parts side by side is about the two, not about what changed.
    private static string? Beside(QuantityQuery[] own, FlyFigures fly, ReasonShare? after, int? holds) =>
        own is [{ Part: { } one } first, { Part: { } other } second] && first.Quantity == second.Quantity && one != other
            && first.Of(fly) is { } a && second.Of(fly) is { } b && Math.Abs(a - b) >= first.Quantity.NoticeableSi
            ? StepOpening.OfTwoFigures(first.Quantity.Name, (PartThing(one), a), (PartThing(other), b), after, holds) : null;

    private static Thing PartThing(string part) => part == "hook" ? new Thing(ThingKind.Hook) : new Thing(ThingKind.Part, part);

    private static double? LevelLine(FlyFigures fly) => QuantityQuery.Known("level-line keel").Of(fly);
}
