using System.Collections.Immutable;
using TyingClass.Balance.Bodies;
using TyingClass.Balance.Reports;
using TyingClass.Lessons.Conditions;
using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Quantities;
using TyingClass.Lessons.Reasons;
using TyingClass.Recipes.Text;
using TyingClass.Telling.Reasons;

namespace TyingClass.Lessons.Kinds.Predict;

/// <summary>Why a prediction comes out as it does.</summary>
internal static class PredictReason
{
    /// <param name="key">The right choice.</param>
    /// <param name="choice">The one that was made; the right one where none was.</param>
    public static AnswerReason Of(Exercise exercise, AskedFlies flies, string key, string choice, UnitSystem units) =>
        ((PredictTask)exercise.Task).Question switch
        {
            WhichWayUp => Way(exercise, flies.Fly, units),
            ChangeIn => Change(PredictKey.Query(exercise), flies, units),
            WhichHasMore more => Two(PredictKey.Query(exercise), more, flies, units),
            WhereTheNosePoints => One(exercise, PredictKey.Query(exercise), flies.Fly, units),
            OwnChoices own => Own(exercise, own, flies.Fly, (key, choice), units),
            _ => throw new InvalidOperationException("There is no such question."),
        };

    /// <summary>The moment ledger is told only where which way up is the question.</summary>
    private static AnswerReason Way(Exercise exercise, FlyFigures fly, UnitSystem units) => WayReason.Of(fly, units, new AuthorWords(exercise)).Told(units);

    private static AnswerReason Change(QuantityQuery query, AskedFlies flies, UnitSystem units)
    {
        Reason reason = ChangeReason.Of(query, flies.Fly, flies.Other!);
        return AnswerReason.Of(OpeningSentence.OfChange(reason), units, reason).Shown(reason, FlyPair.Change);
    }

    private static AnswerReason Two(QuantityQuery query, WhichHasMore more, AskedFlies flies, UnitSystem units)
    {
        FlyFigures first = flies.Fly, second = flies.Other!;
        if (query.Quantity.Name is "keel height" or "level-line keel"
            && HeldReason.Of(query, (more.FirstName, first), (more.SecondName, second), units) is { } held)
            return held;
        Reason reason = FinerThing.Of(ChangeReason.Of(query, first, second), query, first, second);
        return AnswerReason.Of(TwoOpening.Of(more.FirstName, more.SecondName, reason), units, reason).Shown(reason, FlyPair.Change);
    }

    private static AnswerReason One(Exercise exercise, QuantityQuery query, FlyFigures fly, UnitSystem units, double? highestSi = null)
    {
        Reason reason = new AuthorWords(exercise).First(OneFlyReason.Of(query, fly, highestSi));
        return AnswerReason.Of(OpeningSentence.OfOne(reason), units, reason).Shown(reason, FlyPair.None);
    }

    private static AnswerReason Own(Exercise exercise, OwnChoices own, FlyFigures fly, (string Key, string Choice) said, UnitSystem units)
    {
        ImmutableArray<QuantityQuery> asked = Asked(exercise, own, fly, said.Key);
        if (asked.IsEmpty) return Way(exercise, fly, units);
        if ((Circumstance(asked, fly) ?? Knotted(exercise, own, asked, fly, said.Key)) is { } reason)
            return AnswerReason.Of(OpeningSentence.OfChange(reason), units, reason) with { Picture = Picture(reason, asked, fly) };
        bool way = asked[0] is { Quantity.Name: "lean", State: WetState.Soaked, SpeedMS: null, Knot: null };
        if (way) return Way(exercise, fly, units);
        // Whoever chose less than the fly weighs dry was not misled by the water.
        double? highest = said.Choice == said.Key ? null : Condition(exercise, own, fly, said.Choice)?.HighestOf(asked[0]);
        return One(exercise, asked[0], fly, units, highest);
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

    /// <summary>A cinched knot, where on a loop another choice would be right, if the author speaks of knots: then the knot is what decides.</summary>
    private static Reason? Knotted(Exercise exercise, OwnChoices own, ImmutableArray<QuantityQuery> asked, FlyFigures fly, string key)
    {
        if (fly.Conditions.Knot != Knot.Cinched || new AuthorWords(exercise).Speaks(new Thing(ThingKind.Knot)) == 0) return null;
        FlyFigures loose = new(fly.Recipe with { Fishing = fly.Recipe.Fishing with { Knot = Knot.Loop } }, fly.Start);
        return PredictKey.Own(exercise, own, loose) == key ? null
            : asked.Where(q => q.Knot is null && q.Quantity.Takes.HasFlag(Circumstances.Knot)).Select(q => CircumstanceReason.Knotted(q, fly))
                .Where(r => r is { IsNoticeable: true, FromSi: not null, ToSi: not null })
                .MaxBy(r => Math.Abs(r.ToSi!.Value - r.FromSi!.Value) / r.NoticeableSi);
    }

    private static AskedPicture Picture(Reason reason, ImmutableArray<QuantityQuery> asked, FlyFigures fly)
    {
        if (reason.Top?.What.Kind != ThingKind.Speed) return AskedPicture.Of(reason, reason.Top?.What.Kind == ThingKind.Air ? FlyPair.Soak : FlyPair.Knot);
        double[] speeds = [.. asked.Where(q => q.Quantity.Name == reason.Quantity).Select(q => q.SpeedMS ?? fly.Conditions.SpeedMS)];
        return AskedPicture.Of(reason, FlyPair.Speeds) with { Speeds = (speeds.Min(), speeds.Max()) };
    }

    private static Condition? Condition(Exercise exercise, OwnChoices own, FlyFigures fly, string choice)
    {
        int at = exercise.Choices.IndexOf(choice);
        return at < 0 ? null : ConditionParser.Parse(own.When[at], PredictKind.Instance.OwnScope((PredictTask)exercise.Task, fly.Recipe)).Condition;
    }

    private static Reason Sped(QuantityQuery query, double a, double b, FlyFigures fly) =>
        CircumstanceReason.Sped(query, Math.Min(a, b), Math.Max(a, b), fly);

    /// <summary>What the right choice's condition speaks of; of all choices where that speaks of nothing.</summary>
    public static ImmutableArray<QuantityQuery> Asked(Exercise exercise, OwnChoices own, FlyFigures fly, string key)
    {
        ImmutableArray<QuantityQuery> asked = [.. (Condition(exercise, own, fly, key)?.Quantities ?? []).DistinctBy(q => q.Name)];
        return asked.IsEmpty ? PredictKey.Asked(exercise, own, fly) : asked;
    }
}
