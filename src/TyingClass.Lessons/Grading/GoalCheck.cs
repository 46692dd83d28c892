using System.Collections.Immutable;
using TyingClass.Balance.Reports;
using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Quantities;
using TyingClass.Recipes.Text;
using TyingClass.Telling.Sentences;

namespace TyingClass.Lessons.Grading;

/// <summary>Goals held against a fly; each works out only the figure it names.</summary>
internal static class GoalCheck
{
    /// <summary>Looks at what is quickly worked out first: a search asks this of hundreds of flies.</summary>
    public static bool AllMet(Exercise exercise, FlyFigures fly) => AllMet(exercise.Goals, fly);

    public static bool AllMet(IEnumerable<Goal> goals, FlyFigures fly) =>
        goals.Select(goal => (Goal: goal, Query: Query(goal))).OrderBy(g => Work(g.Query.Quantity)).All(g => IsMet(g.Goal, g.Query.Of(fly)));

    public static ImmutableArray<GoalResult> Results(Exercise exercise, FlyFigures fly, VerdictKind verdict, UnitSystem units) =>
    [
        .. exercise.Goals.Select(goal =>
        {
            QuantityQuery query = Query(goal);
            double? si = query.Of(fly);
            string reached = Reached(goal, query, si, verdict, units);
            return IsMet(goal, si) && IsLeftToTheCast(query, () => fly.Report)
                ? new GoalResult(query.Asked(goal, units), GoalSentence.LeftToTheCast, false)
                : new GoalResult(query.Asked(goal, units), reached, IsMet(goal, si));
        }),
    ];

    /// <summary>
    /// Flies tied alike may all stay the way they lie, and still the cast decides which way that is: then they do not ride as intended, whatever their share.
    /// </summary>
    /// <param name="report">Asked for only where a goal is about it.</param>
    public static bool IsLeftToTheCast(Exercise exercise, Func<BalanceReport> report) => exercise.Goals.Any(g => IsLeftToTheCast(Query(g), report));

    private static bool IsLeftToTheCast(QuantityQuery query, Func<BalanceReport> asked) =>
        query is { Quantity.Name: "rides as intended", State: WetState.Soaked, SpeedMS: null, Knot: null } && asked() is var report
            && report.Verdict.Kind == VerdictKind.Undecided && report.Findings.Any(f => f.Kind == FindingKind.TwoWaysUp);

    public static ImmutableArray<GradedFigure> Figures(Exercise exercise, FlyFigures fly) =>
        [.. exercise.Goals.Select(goal => new GradedFigure(goal.Quantity, Query(goal).Of(fly)))];

    public static bool IsMet(Goal goal, FlyFigures fly) => IsMet(goal, Query(goal).Of(fly));

    public static QuantityQuery Query(Goal goal) => QuantityQuery.Known(goal.Quantity);

    private static string Reached(Goal goal, QuantityQuery query, double? si, VerdictKind verdict, UnitSystem units) => si is { } value
        ? GoalSentence.Reached(query.Quantity.Magnitude, query.Quantity.Noticed(value), goal.LowSi, goal.HighSi, units)
        : GoalSentence.NotReached(verdict, query.Quantity.Name == "mass of" ? query.Part : null);

    private static int Work(Quantity quantity) => quantity.IsOfMass ? 0 : quantity.Dimension == Recipes.Text.Dimension.Share ? 2 : 1;

    private static bool IsMet(Goal goal, double? si) => si is { } value && value >= goal.LowSi && value <= goal.HighSi;
}
