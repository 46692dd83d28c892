using System.Collections.Immutable;
using TyingClass.Balance.Reports;
using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Quantities;
using TyingClass.Recipes.Text;
using TyingClass.Telling.Reasons;
using TyingClass.Telling.Replies;

namespace TyingClass.Lessons.Grading;

/// <summary>How the goals stand, in one sentence, from the figures that they were marked by.</summary>
internal static class GoalsInShort
{
    private readonly record struct Held(Goal Goal, QuantityQuery Query, GoalResult Result, double? Si)
    {
        public bool IsLimit => Query.Quantity.Name is "changes" or "added mass";
    }

    /// <param name="start">The fly given, in a repair; null where the fly was built from nothing.</param>
    /// <param name="results">One for each goal, in their order.</param>
    public static string Of(Exercise exercise, FlyFigures fly, FlyFigures? start, ImmutableArray<GoalResult> results, UnitSystem units)
    {
        Held[] all = [.. exercise.Goals.Zip(results, (goal, result) => new Held(goal, GoalCheck.Query(goal), result, GoalCheck.Query(goal).Of(fly)))];
        Held[] missed =
        [
            .. all.Where(h => !h.Result.Met).OrderBy(h => h.IsLimit).ThenByDescending(h => GoalDistance.Of(h.Goal, h.Query, fly)),
        ];
        if (missed.Length == 0)
            return GoalsReply.Met(all.Length, all[0].Si is { } si ? MissWords.Reached(Asked(all[0]), si, all[0].Query.Say(si, units)) : "");
        if (missed.All(h => h.IsLimit) && all.Length > missed.Length) return GoalsReply.TooDear(Miss(missed[0]));
        int met = all.Length - missed.Length;
        if (start is not null && missed.Where(h => !h.IsLimit && GotWorse(h, start)).ToArray() is [var worse, ..])
        {
            string clause = MissWords.Worse(Asked(worse), worse.Query.Of(start)!.Value, worse.Si!.Value, units);
            Held[] others = [.. missed.Where(h => h != worse && !h.IsLimit)];
            return GoalsReply.Missed(met, all.Length, others is [var other, ..] ? [clause, Beside(other, start)] : [clause]);
        }

        return GoalsReply.Missed(met, all.Length, [.. missed.Take(2).Select(Miss)]);

        string Beside(Held other, FlyFigures given) => other.Si is { } now && other.Query.Of(given) is { } was
            && Math.Abs(now - was) >= other.Query.Quantity.NoticeableSi && !GotWorse(other, given) ? Miss(other) : MissWords.NoBetter(Asked(other));

        string Miss(Held held)
        {
            AskedGoal asked = Asked(held);
            if (held.Si is not { } figure) return MissWords.None(asked, fly.Report.Verdict.Kind);
            return figure >= held.Goal.LowSi && figure <= held.Goal.HighSi ? MissWords.LeftToTheCast : MissWords.Of(asked, figure, units);
        }

        AskedGoal Asked(Held held) => new(
            held.Query.Quantity.Name, held.Query.Phrase(units), held.Query.Part, held.Query.Quantity.Magnitude, held.Goal.LowSi, held.Goal.HighSi)
        {
            State = held.Query.State == WetState.Fresh ? "fresh, "
                : held.Query.Quantity.Takes.HasFlag(Circumstances.State) && all.Any(o => o.Query.State == WetState.Fresh) ? "soaked, " : "",
        };
    }

    // Less than can be told apart is no change; through what was asked and out on the other side is no worsening.
    private static bool GotWorse(Held held, FlyFigures start) =>
        held.Query.Of(start) is { } was && held.Si is { } now && Math.Abs(now - was) >= held.Query.Quantity.NoticeableSi
            && GoalStands.Of(was, now, held.Goal.LowSi, held.Goal.HighSi) == GoalStand.Away;
}
