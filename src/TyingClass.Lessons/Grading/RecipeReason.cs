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
        if (asked.Length == 0) return AnswerReason.Silent(OpeningSentence.OfBareHook(), "");
        return start is null ? Built(asked, fly, units) : Changed(asked, fly, start, units);
    }

    /// <summary>What it would do: which way up where that is asked, else the figures that are.</summary>
    public static string WhatItWouldDo(Exercise exercise, FlyFigures fly, UnitSystem units)
    {
        QuantityQuery[] asked = [.. exercise.Goals.Select(GoalCheck.Query)];
        if (fly.Body.Parts.Length == 1) return OpeningSentence.OfBareHook();
        bool keel = asked.Any(q => q.Quantity.Name is "keel height" or "level-line keel" or "righting range");
        if (asked.Any(IsOfRiding)) return VerdictSentence.Of(fly.Body.Intent, fly.Report.Soaked, units, keel);
        return asked.Where(IsOfSwimming).ToArray() is { Length: > 0 } told ? QuantityQuery.Sentence(fly, told, units)
            : VerdictSentence.Of(fly.Body.Intent, fly.Report.Soaked, units, keel);
    }

    private static bool IsOfRiding(QuantityQuery query) =>
        query.Quantity.Name is "rides as intended" or "leans" or "flips" or "lean" or "keel height" or "level-line keel" or "righting range";

    private static bool IsOfSwimming(QuantityQuery query) => !query.Quantity.IsOfMass && query.Quantity.Name is not ("parts" or "changes" or "added mass");

    /// <summary>The goals missed; where none is, those that the fly given missed; else the first that a fly's swimming decides.</summary>
    private static IEnumerable<(Goal Goal, QuantityQuery Query)> TurnsOn(Exercise exercise, FlyFigures fly, FlyFigures? start)
    {
        (Goal Goal, QuantityQuery Query)[] all = [.. exercise.Goals.Select(g => (g, GoalCheck.Query(g)))];
        (Goal, QuantityQuery)[] missed = [.. all.Where(g => !GoalCheck.IsMet(g.Goal, fly))];
        if (missed.Length > 0) return missed.Take(MostGoals);
        if (start is not null && all.Where(g => !GoalCheck.IsMet(g.Goal, start)).ToArray() is { Length: > 0 } mended) return mended.Take(MostGoals);
        return all.OrderBy(g => g.Query.Quantity.IsOfMass).Take(1);
    }

    private static AnswerReason Changed((Goal Goal, QuantityQuery Query)[] asked, FlyFigures fly, FlyFigures start, UnitSystem units)
    {
        asked = asked.Length > 1 && asked.Any(a => a.Query.Quantity.Name != "changes") ? [.. asked.Where(a => a.Query.Quantity.Name != "changes")] : asked;
        Reason[] reasons = [.. asked.Select(a => ChangeReason.Of(a.Query, start, fly))];
        // What did not move and need not is not worth a word.
        reasons = [reasons[0], .. reasons.Skip(1).Where(r => r.IsNoticeable)];
        if (reasons.All(r => r.Shares.IsEmpty)) return Built(asked, fly, units);
        (Goal goal, Reason first) = (asked[0].Goal, reasons[0]);
        bool met = GoalCheck.IsMet(goal, fly);
        double wanted = (start, goal) switch
        {
            _ when first.FromSi is { } from => from < goal.LowSi ? 1 : from > goal.HighSi ? -1 : 0,
            _ => 0,
        };
        // A goal that the fly given met and this one misses was lost on the way.
        bool upward = wanted != 0 ? wanted > 0 : first.ToSi is { } to && to < goal.LowSi;
        return AnswerReason.Of(OpeningSentence.OfRepair(first, met, upward), units, [.. reasons]).Shown(first, FlyPair.Change);
    }

    private static AnswerReason Built((Goal Goal, QuantityQuery Query)[] asked, FlyFigures fly, UnitSystem units)
    {
        (Goal _, QuantityQuery query) = asked[0];
        if (query is { Quantity.Name: "mass of", Part: { } part } && query.Of(fly) is null)
            return AnswerReason.Silent(OpeningSentence.Missing(part), "");
        if (fly.Body.Parts.Length == 1 && !query.Quantity.IsOfMass || query.Quantity.Name == "parts")
            return AnswerReason.Silent(fly.Body.Parts.Length == 1 ? OpeningSentence.OfBareHook() : OpeningSentence.TooFew(), "");
        if (query.Quantity.Name is "rides as intended" or "flips" or "leans" or "lean" or "keel height")
        {
            WayReason way = WayReason.Of(fly, units);
            AnswerReason told = AnswerReason.Of(way.First, units, way.Reason).Shown(way.Reason, way.Pair);
            return way.ByHands ? told : told with { Why = $"{told.Why} {CauseSentence.Of(fly.Solved, units)}" };
        }

        Reason[] reasons = [.. asked.Select(a => OneFlyReason.Of(a.Query, fly))];
        return AnswerReason.Of(OpeningSentence.OfOne(reasons[0]), units, [.. reasons]).Shown(reasons[0], FlyPair.None);
    }
}
