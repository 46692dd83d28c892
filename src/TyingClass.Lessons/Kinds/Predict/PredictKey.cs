using System.Collections.Immutable;
using TyingClass.Balance.Reports;
using TyingClass.Lessons.Conditions;
using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Grading;
using TyingClass.Lessons.Quantities;
using TyingClass.Telling.Sentences;
namespace TyingClass.Lessons.Kinds.Predict;

/// <summary>The flies a prediction is about.</summary>
/// <param name="Other">The second of two flies, or the fly after the change.</param>
internal sealed record AskedFlies(FlyFigures Fly, FlyFigures? Other)
{
    public static AskedFlies Of(Exercise exercise, ReportOptions? options)
    {
        FlyFigures fly = Build(exercise.RecipeText!);
        return ((PredictTask)exercise.Task).Question switch
        {
            WhichHasMore more => new AskedFlies(fly, Build(more.SecondRecipeText)),
            ChangeIn change => new AskedFlies(fly, Build(change.Change.ChangedRecipeText)),
            _ => new AskedFlies(fly, null),
        };

        FlyFigures Build(string text) => new(GivenFly.Of(text), null, options);
    }
}

/// <summary>The right choice of a predict exercise, computed.</summary>
internal static class PredictKey
{
    /// <summary>Two figures this near, as a share of the larger, are "much the same". Estimate.</summary>
    public const double SameShare = 0.05;

    /// <summary>Null when no choice, or more than one, is right.</summary>
    public static string? Of(Exercise exercise, AskedFlies flies) => ((PredictTask)exercise.Task).Question switch
    {
        WhichWayUp => WayUp(flies.Fly.Report),
        WhereTheNosePoints => Nose(Query(exercise).Of(flies.Fly)),
        WhichHasMore more => More(more, Query(exercise).Of(flies.Fly), Query(exercise).Of(flies.Other!)),
        ChangeIn => Change(Query(exercise), flies),
        OwnChoices own => Own(exercise, own, flies.Fly),
        _ => null,
    };

    public static QuantityQuery Query(Exercise exercise) =>
        QuantityQuery.Known(((PredictTask)exercise.Task).Quantity ?? "");

    /// <summary>The quantities the author's own conditions speak of.</summary>
    public static ImmutableArray<QuantityQuery> Asked(Exercise exercise, OwnChoices own, FlyFigures fly)
    {
        ConditionScope scope = PredictKind.Instance.OwnScope((PredictTask)exercise.Task, fly.Recipe);
        return [.. own.When.SelectMany(w => ConditionParser.Parse(w, scope).Condition?.Quantities ?? []).DistinctBy(q => q.Name)];
    }

    private static string? WayUp(BalanceReport report) => report.Verdict.Kind switch
    {
        VerdictKind.RidesAsIntended or VerdictKind.Tilts => FlyWords.Way(report.Intent),
        VerdictKind.Flips => FlyWords.Way(FlyWords.Other(report.Intent)),
        VerdictKind.Leans or VerdictKind.RidesOnItsSide => WhichWayUp.OnItsSide,
        VerdictKind.Undecided => WhichWayUp.Undecided,
        _ => null,
    };

    private static string? Nose(double? pitchRad) => (pitchRad * 180 / Math.PI) switch
    {
        null => null,
        > WhereTheNosePoints.LevelDeg => WhereTheNosePoints.Up,
        < -WhereTheNosePoints.LevelDeg => WhereTheNosePoints.Down,
        _ => WhereTheNosePoints.Level,
    };

    private static string? More(WhichHasMore more, double? first, double? second) => first is not { } a || second is not { } b
        ? null
        : Math.Abs(a - b) <= SameShare * Math.Max(Math.Abs(a), Math.Abs(b)) ? WhichHasMore.Same : a > b ? more.FirstName : more.SecondName;

    private static string? Change(QuantityQuery query, AskedFlies flies) => query.Of(flies.Other!) - query.Of(flies.Fly) is not { } change
        ? null
        : Math.Abs(change) < query.Quantity.NoticeableSi ? ChangeIn.Stays : change > 0 ? ChangeIn.Rises : ChangeIn.Falls;

    /// <summary>Of the author's own choices, the one whose condition holds.</summary>
    public static string? Own(Exercise exercise, OwnChoices own, FlyFigures fly)
    {
        ConditionScope scope = PredictKind.Instance.OwnScope((PredictTask)exercise.Task, fly.Recipe);
        ConditionFacts facts = new(fly, null);
        int[] right = [.. Enumerable.Range(0, own.When.Length).Where(i => ConditionParser.Parse(own.When[i], scope).Condition?.Holds(facts) == true)];
        return right.Length == 1 ? exercise.Choices[right[0]] : null;
    }
}
