using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Quantities;
using TyingClass.Lessons.Reasons;
using TyingClass.Recipes.Text;
using TyingClass.Telling.Reasons;
using TyingClass.Telling.Sentences;

namespace TyingClass.Lessons.Grading;

/// <summary>Why a fly sent in meets or misses what was asked: the goal that it turns on, and no other.</summary>
internal static class RecipeReason
{
    // Two goals are as much as anybody mends at a time.
    private const int MostGoals = 2;

    /// <param name="start">The fly given, in a repair; null where the fly was built from nothing.</param>
    public static AnswerReason Of(Exercise exercise, FlyFigures fly, FlyFigures? start, UnitSystem units)
    {
        (Goal Goal, QuantityQuery Query)[] asked = [.. TurnsOn(exercise, fly, start)];
        if (asked.Length == 0) return InTheVise(WayOpening.OfBareHook());
        return start is null ? Built(exercise, asked, fly, units) : Changed(exercise, asked, fly, start, units);
    }

    /// <summary>What it would do: which way up where that is asked, else the figures that are.</summary>
    public static string WhatItWouldDo(Exercise exercise, FlyFigures fly, UnitSystem units)
    {
        QuantityQuery[] asked = [.. exercise.Goals.Select(GoalCheck.Query)];
        if (fly.Body.Parts.Length == 1) return WayOpening.OfBareHook();
        bool keel = asked.Any(q => q.Quantity.Name is "keel height" or "level-line keel" or "righting range");
        if (asked.Any(IsOfRiding)) return VerdictSentence.Of(fly.Body.Intent, fly.Report.Soaked, units, keel);
        return asked.Where(IsOfSwimming).ToArray() is { Length: > 0 } told ? QuantityQuery.Sentence(fly, told, units)
            : VerdictSentence.Of(fly.Body.Intent, fly.Report.Soaked, units, keel);
    }

    private static bool IsOfRiding(QuantityQuery query) =>
        query.Quantity.Name is "rides as intended" or "leans" or "flips" or "lean" or "keel height" or "level-line keel" or "righting range";

    private static bool IsOfSwimming(QuantityQuery query) => !query.Quantity.IsOfMass && query.Quantity.Name is not ("parts" or "changes" or "added mass");

    /// <summary>
    /// The goals missed, the one missed by the most first; where none is, those that the fly given missed; else the first that a fly's swimming decides. What
    /// is counted against the fly given comes last: it only limits what was asked.
    /// </summary>
    private static IEnumerable<(Goal Goal, QuantityQuery Query)> TurnsOn(Exercise exercise, FlyFigures fly, FlyFigures? start)
    {
        (Goal Goal, QuantityQuery Query)[] all = [.. exercise.Goals.Select(g => (g, GoalCheck.Query(g)))];
        if (Missed(fly) is { Length: > 0 } missed) return missed.Take(MostGoals);
        if (start is not null && Missed(start) is { Length: > 0 } mended) return mended.Take(MostGoals);
        return all.OrderBy(g => g.Query.Quantity.IsOfMass).Take(1);

        (Goal Goal, QuantityQuery Query)[] Missed(FlyFigures of) =>
            [.. all.Where(g => !GoalCheck.IsMet(g.Goal, of)).OrderBy(g => IsLimit(g.Query)).ThenByDescending(g => GoalDistance.Of(g.Goal, g.Query, of))];
    }

    private static bool IsLimit(QuantityQuery query) => query.Quantity.Name is "changes" or "added mass";

    private static AnswerReason Changed(Exercise exercise, (Goal Goal, QuantityQuery Query)[] asked, FlyFigures fly, FlyFigures start, UnitSystem units)
    {
        if (asked.All(a => IsLimit(a.Query))) return TooDear(exercise, asked, fly, start, units);
        asked = [.. asked.Where(a => a.Query.Quantity.Name != "changes")];
        Reason[] reasons = [.. asked.Select(a => ChangeReason.Of(a.Query, start, fly))];
        // What the change did comes before what it left as it was; what only limits the change stays last.
        if (!reasons[0].IsNoticeable && Array.FindIndex(reasons, r => r.IsNoticeable && r.Quantity != "added mass") is > 0 and var moved)
        {
            (asked[0], asked[moved]) = (asked[moved], asked[0]);
            (reasons[0], reasons[moved]) = (reasons[moved], reasons[0]);
        }

        // What did not move and need not is not worth a word.
        reasons = [reasons[0], .. reasons.Skip(1).Where(r => r.IsNoticeable)];
        if (reasons.All(r => r.Shares.IsEmpty)) return Built(exercise, asked, fly, units);
        (Goal goal, Reason first) = (asked[0].Goal, reasons[0]);
        GoalStand stand = GoalCheck.IsMet(goal, fly) ? GoalStand.Met : GoalStands.Of(first.FromSi, first.ToSi, goal.LowSi, goal.HighSi);
        return AnswerReason.Of(RepairOpening.Of(first, stand), units, [.. reasons]).Shown(first, FlyPair.Change);
    }

    // What was asked is met, and the way there costs more changes or more grams than it may: what can be put back.
    private static AnswerReason TooDear(Exercise exercise, (Goal Goal, QuantityQuery Query)[] limits, FlyFigures fly, FlyFigures start, UnitSystem units)
    {
        (Goal Goal, QuantityQuery Query)[] real = [.. exercise.Goals.Select(g => (Goal: g, Query: GoalCheck.Query(g))).Where(g => !IsLimit(g.Query))];
        (Goal _, QuantityQuery query) = real.OrderByDescending(g => GoalDistance.Of(g.Goal, g.Query, start)).Concat(limits).First();
        Reason did = ChangeReason.Of(query, start, fly);
        if (SpareChanges.Of(exercise, fly, start) is { } spare)
        {
            ReasonShare? one = spare.Kept is [var only] ? did.Shares.Select(s => s with { Turned = [.. s.Turned.Where(t => IsThe(t, only))] })
                .FirstOrDefault(s => !s.Turned.IsEmpty) : null;
            string first = RepairOpening.OfEnough(one, [.. spare.Kept.Select(c => c.Said)], spare.BackSaid);
            AskedPicture picture = AskedPicture.Of(one is null ? did : did with { Shares = [one] }, FlyPair.Change);
            return AnswerReason.Of(first, units, did) with { Picture = picture };
        }

        if (limits.FirstOrDefault(l => l.Query.Quantity.Name == "added mass").Query is { } mass && ChangeReason.Of(mass, start, fly) is { Top: not null } added)
            return AnswerReason.Of(RepairOpening.OfCost(added), units, did, added).Shown(did, FlyPair.Change);
        return AnswerReason.Of(RepairOpening.OfTooMany(did), units, did).Shown(did, FlyPair.Change);
    }

    private static bool IsThe(TurnedLine line, RecipeChange change) =>
        line.After == change.After && change.Path.EndsWith("." + line.Key, StringComparison.Ordinal);

    private static AnswerReason Built(Exercise exercise, (Goal Goal, QuantityQuery Query)[] asked, FlyFigures fly, UnitSystem units)
    {
        (Goal _, QuantityQuery query) = asked[0];
        if (query is { Quantity.Name: "mass of", Part: { } part } && query.Of(fly) is null)
            return InTheVise(OpeningSentence.Missing(part));
        if (fly.Body.Parts.Length == 1 && !query.Quantity.IsOfMass || query.Quantity.Name == "parts")
            return InTheVise(fly.Body.Parts.Length == 1 ? WayOpening.OfBareHook() : OpeningSentence.TooFew());
        WayReason? way = asked.Any(a => IsOfTheWay(a.Query)) ? WayReason.Of(fly, units, new AuthorWords(exercise)) : null;
        if (way is not null && IsOfTheWay(query)) return way.Told(units);
        Reason[] reasons = [.. asked.Select(a => way is not null && IsOfTheWay(a.Query) ? way.Reason : OneFlyReason.Of(a.Query, fly, a.Goal.HighSi))];
        return AnswerReason.Of(OpeningSentence.OfOne(reasons[0]), units, [.. reasons]).Shown(reasons[0], FlyPair.None);
    }

    private static bool IsOfTheWay(QuantityQuery query) => query.Quantity.Name is "rides as intended" or "flips" or "leans" or "lean" or "keel height";

    private static AnswerReason InTheVise(string first) =>
        AnswerReason.Silent(first, "") with { Picture = new AskedPicture(FlyView.Vise, FlyPair.None) };
}
