using TyingClass.Balance.Reports;
using TyingClass.Lessons.Checking;
using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Grading;
using TyingClass.Lessons.Quantities;
using TyingClass.Recipes.Text;

namespace TyingClass.Lessons.Kinds.Measure;

/// <summary>Whether the figure asked for can be met by flies tied alike.</summary>
internal static class MeasureChecker
{
    // A tolerance half as wide again as the first sixteen differ is wide enough for all: a spread so far above theirs has a chance of three in a hundred
    // (chi-squared of 16). Nearer than that, all are asked.
    private const int FirstFlies = 16;
    private const double Ample = 1.5;

    public static string? KeyComplaint(Exercise exercise)
    {
        MeasureTask task = (MeasureTask)exercise.Task;
        QuantityQuery query = task.Query;
        FlyFigures fly = MeasureTask.Measured(exercise);
        if (query.Of(fly) is not { } key) return $"The engine has no {query.Name} for this fly.";
        if (MeasuredChange.Complaint(exercise, task, fly, key) is { } complaint) return complaint;
        double tolerance = task.ToleranceSi;
        if (SumLine.Complaint(task.Sum, query, key, tolerance) is { } wrong) return wrong;
        (int asked, int figures, double squares) = (0, 0, 0);
        foreach (double? tied in Tied(exercise, task, fly))
        {
            asked++;
            if (tied is not { } t) continue;
            figures++;
            squares += (t - key) * (t - key);
            if (asked == FirstFlies && figures == FirstFlies && tolerance >= Ample * Math.Sqrt(squares / figures)) return null;
        }

        if (figures < asked) return $"Of {asked} flies tied alike, {asked - figures} have no {query.Name}.";
        double spread = Math.Sqrt(squares / figures);
        return tolerance >= spread ? null
            : $"The tolerance of {query.SayStated(tolerance, UnitSystem.Metric)} is finer than two flies tied alike differ "
            + $"({query.SayStated(spread, UnitSystem.Metric)}). Widen it.";
    }

    // Where the figure before a change is given, hands tell only by what they make of the change: both are one fly, with one set of errors.
    private static IEnumerable<double?> Tied(Exercise exercise, MeasureTask task, FlyFigures fly)
    {
        QuantityQuery query = task.Query;
        IEnumerable<double?> after = Of(fly);
        if (task.Done is null) return after;
        FlyFigures start = new(GivenFly.Of(exercise.RecipeText!));
        double? from = query.Of(start);
        return after.Zip(Of(start), (then, before) => then - before + from);

        IEnumerable<double?> Of(FlyFigures tied) =>
            TiedFlies.Of(tied.Body, TyingAccuracy.Practiced, KeyClearance.Flies).Select(body => query.Of(tied.Tied(body, null)));
    }
}
