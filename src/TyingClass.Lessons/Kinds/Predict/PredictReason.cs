using System.Collections.Immutable;
using TyingClass.Balance.Reports;
using TyingClass.Lessons.Conditions;
using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Quantities;
using TyingClass.Lessons.Reasons;
using TyingClass.Recipes.Text;
using TyingClass.Telling.Reasons;
using TyingClass.Telling.Sentences;

namespace TyingClass.Lessons.Kinds.Predict;

/// <summary>Why a prediction comes out as it does.</summary>
internal static class PredictReason
{
    /// <param name="key">The right choice.</param>
    public static AnswerReason Of(Exercise exercise, AskedFlies flies, string key, UnitSystem units) => ((PredictTask)exercise.Task).Question switch
    {
        WhichWayUp => Way(flies.Fly, units),
        ChangeIn => Change(PredictKey.Query(exercise), flies, units),
        WhichHasMore more => Two(PredictKey.Query(exercise), more, flies, units),
        WhereTheNosePoints => One(PredictKey.Query(exercise), flies.Fly, units),
        OwnChoices own => Own(exercise, own, flies.Fly, key, units),
        _ => throw new InvalidOperationException("There is no such question."),
    };

    /// <summary>The moment ledger is told only where which way up is the question.</summary>
    private static AnswerReason Way(FlyFigures fly, UnitSystem units)
    {
        WayReason way = WayReason.Of(fly, units);
        AnswerReason told = AnswerReason.Of(way.First, units, way.Reason).Shown(way.Reason, way.Pair);
        if (!way.NamesTop && told.Picture is { } picture) told = told with { Picture = picture with { Part = null, Words = null } };
        return way.ByHands ? told : told with { NamesTop = way.NamesTop, Why = $"{told.Why} {CauseSentence.Of(fly.Solved, units)}" };
    }

    private static AnswerReason Change(QuantityQuery query, AskedFlies flies, UnitSystem units)
    {
        Reason reason = ChangeReason.Of(query, flies.Fly, flies.Other!);
        return AnswerReason.Of(OpeningSentence.OfChange(reason), units, reason).Shown(reason, FlyPair.Change);
    }

    private static AnswerReason Two(QuantityQuery query, WhichHasMore more, AskedFlies flies, UnitSystem units)
    {
        Reason reason = ChangeReason.Of(query, flies.Fly, flies.Other!);
        return AnswerReason.Of(OpeningSentence.OfTwo(more.FirstName, more.SecondName, reason), units, reason).Shown(reason, FlyPair.Change);
    }

    private static AnswerReason One(QuantityQuery query, FlyFigures fly, UnitSystem units)
    {
        Reason reason = OneFlyReason.Of(query, fly);
        return AnswerReason.Of(OpeningSentence.OfOne(reason), units, reason).Shown(reason, FlyPair.None);
    }

    private static AnswerReason Own(Exercise exercise, OwnChoices own, FlyFigures fly, string key, UnitSystem units)
    {
        ImmutableArray<QuantityQuery> asked = Asked(exercise, own, fly, key);
        if (asked.IsEmpty) return Way(fly, units);
        if (Circumstance(asked, fly) is { } reason)
            return AnswerReason.Of(OpeningSentence.OfChange(reason), units, reason).Shown(reason, PairOf(reason));
        bool way = asked[0] is { Quantity.Name: "lean", State: WetState.Soaked, SpeedMS: null, Knot: null };
        return way ? Way(fly, units) : One(asked[0], fly, units);
    }

    /// <summary>The same figure asked of the fly fresh and soaked, on two knots or at two speeds: then the question is what that does.</summary>
    private static Reason? Circumstance(ImmutableArray<QuantityQuery> asked, FlyFigures fly)
    {
        foreach (QuantityQuery query in asked)
        {
            QuantityQuery[] same = [.. asked.Where(q => q.Quantity == query.Quantity && q.Part == query.Part)];
            Reason? reason = same.Any(q => q.State != query.State) ? CircumstanceReason.Soaking(query, fly)
                : same.Any(q => q.Knot != query.Knot) ? CircumstanceReason.Knotted(query, fly)
                : same.FirstOrDefault(q => q.SpeedMS is not null && q.SpeedMS != query.SpeedMS) is { SpeedMS: { } other }
                    ? Sped(query, query.SpeedMS ?? fly.Conditions.SpeedMS, other, fly)
                : null;
            if (reason is { IsNoticeable: true, Shares.IsEmpty: false }) return reason;
        }

        return null;
    }

    private static FlyPair PairOf(Reason reason) => reason.Top?.What.Kind switch
    {
        ThingKind.Air => FlyPair.Soak,
        ThingKind.Knot => FlyPair.Knot,
        _ => FlyPair.None,
    };

    private static Reason Sped(QuantityQuery query, double a, double b, FlyFigures fly) =>
        CircumstanceReason.Sped(query, Math.Min(a, b), Math.Max(a, b), fly);

    /// <summary>What the right choice's condition speaks of; of all choices where that speaks of nothing.</summary>
    public static ImmutableArray<QuantityQuery> Asked(Exercise exercise, OwnChoices own, FlyFigures fly, string key)
    {
        int right = exercise.Choices.IndexOf(key);
        ConditionScope scope = PredictKind.Instance.OwnScope((PredictTask)exercise.Task, fly.Recipe);
        ImmutableArray<QuantityQuery> asked = right < 0 ? []
            : [.. (ConditionParser.Parse(own.When[right], scope).Condition?.Quantities ?? []).DistinctBy(q => q.Name)];
        return asked.IsEmpty ? PredictKey.Asked(exercise, own, fly) : asked;
    }
}
