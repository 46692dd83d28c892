using System.Collections.Immutable;
using TyingClass.Balance.Bodies;
using TyingClass.Balance.Doubting;
using TyingClass.Balance.Reports;
using TyingClass.Lessons.Checking;
using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Quantities;
using TyingClass.Telling.Sentences;

namespace TyingClass.Lessons.Kinds.Predict;

/// <summary>Whether the right choice would be the right one of flies tied alike.</summary>
internal static class PredictChecker
{
    private const double MostShareOfUndecided = 0.65;
    private const double LeastShareOfRival = 0.20;

    // As shares of the larger of two figures. Estimates.
    private const double ClearlyMore = 0.15;
    private const double ClearlySame = 0.02;

    private const int FewFlies = 6;

    /// <summary>A first look, far quicker than <see cref="KeyComplaint"/>: what is close here would be too close there.</summary>
    public static bool MayBeClear(Exercise exercise, AskedFlies flies, string key)
    {
        Question question = ((PredictTask)exercise.Task).Question;
        if (question is ChangeIn or WhichHasMore)
        {
            QuantityQuery query = PredictKey.Query(exercise);
            if (query.Of(flies.Fly) is not { } a || query.Of(flies.Other!) is not { } b) return false;
            // A fly that floats has no weight in water that could get smaller or larger.
            if (query.Quantity.Name == "wet weight" && (a <= 0 || b <= 0)) return false;
            return question is ChangeIn ? Math.Abs(b - a) / query.Quantity.NoticeableSi is >= FlyChange.Clear or <= FlyChange.None
                : Math.Abs(b - a) / Math.Max(Math.Abs(a), Math.Abs(b)) is >= ClearlyMore or <= ClearlySame;
        }

        return question is WhichWayUp || TiedFlies.Of(flies.Fly.Body, TyingAccuracy.Practiced, FewFlies)
            .All(f => PredictKey.Of(exercise, new AskedFlies(flies.Fly.Tied(f, null), null)) == key);
    }

    public static string? KeyComplaint(Exercise exercise) =>
        ((PredictTask)exercise.Task).Question is WhichWayUp ? WayUp(exercise) : Choice(exercise);

    private static string? WayUp(Exercise exercise)
    {
        AskedFlies flies = AskedFlies.Of(exercise, null);
        BalanceReport report = flies.Fly.Report;
        ToleranceReport shares = report.Soaked.Tolerance;
        if (PredictKey.Of(exercise, flies) is not { } key)
            return $"This fly {(report.Verdict.Kind == VerdictKind.Floats ? "floats" : "hangs rather than rides")}, so which way up cannot be asked of it.";
        if (key == WhichWayUp.Undecided)
        {
            bool rivals = report.Soaked.Attitudes.Count(a => a.Share >= LeastShareOfRival) > 1;
            double most = Math.Max(shares.AsIntended, Math.Max(shares.Leaning, shares.Flipped));
            return rivals || most <= MostShareOfUndecided ? null
                : $"The answer is “{key}”, yet {KeyClearance.Percent(most)} of flies tied like it ride one way: too close to call.";
        }

        double share = key == WhichWayUp.OnItsSide ? shares.Leaning
            : key == FlyWords.Way(report.Intent) ? report.Verdict.Kind == VerdictKind.Tilts ? shares.TheRightWayUp : shares.AsIntended : shares.Flipped;
        return share >= KeyClearance.LeastShare
            ? KeyClearance.ModelComplaint(Agreeing(flies.Fly.Solved.Doubt), $"The answer is “{key}”")
            : $"The answer is “{key}”, but only {KeyClearance.Percent(share)} of flies tied like it agree, "
            + $"and {KeyClearance.Percent(KeyClearance.LeastShare)} must: too near a coin toss to ask.";
    }

    // Which way a perfectly tied fly lies. Of “no telling” there is no doubt to have.
    private static IEnumerable<bool?> Agreeing(DoubtReport doubt) =>
        Enumerable.Range(0, doubt.Draws).Select(i => (bool?)(i < Math.Round(doubt.SameVerdict * doubt.Draws)));

    private static string? Choice(Exercise exercise)
    {
        AskedFlies flies = AskedFlies.Of(exercise, null);
        if (PredictKey.Of(exercise, flies) is not { } key) return "No choice, or more than one, is right for this fly.";
        ImmutableArray<FlyBody> first = TiedFlies.Of(flies.Fly.Body, TyingAccuracy.Practiced, KeyClearance.Flies);
        ImmutableArray<FlyBody> second = flies.Other is { } other ? TiedFlies.Of(other.Body, TyingAccuracy.Practiced, KeyClearance.Flies) : [];

        // The fly before and after a change is one fly, with one set of errors; two flies compared are two.
        bool sameHands = ((PredictTask)exercise.Task).Question is ChangeIn;
        int agree = KeyClearance.Agreeing(Enumerable.Range(0, KeyClearance.Flies).Select(i => PredictKey.Of(exercise, new AskedFlies(
            flies.Fly.Tied(first[i], null),
            flies.Other?.Tied(second[sameHands ? i : KeyClearance.Flies - 1 - i], null))) == key));
        return KeyClearance.Enough(agree)
            ? KeyClearance.ModelComplaint(Drawn(exercise, flies, key), $"The answer is “{key}”")
            : $"The answer is “{key}”, but only {agree} of {KeyClearance.Flies} flies tied alike give it: too near its threshold to ask.";
    }

    private static IEnumerable<bool?> Drawn(Exercise exercise, AskedFlies flies, string key)
    {
        ImmutableArray<FlyFigures?> first = DrawnFlies.Of(flies.Fly), second = flies.Other is { } other ? DrawnFlies.Of(other) : first;
        return first.Zip(second, (fly, changed) => fly is null || changed is null
            ? null
            : (bool?)(PredictKey.Of(exercise, new AskedFlies(fly, flies.Other is null ? null : changed)) == key));
    }
}
