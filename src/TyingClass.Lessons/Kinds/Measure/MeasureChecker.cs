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
    public static string? KeyComplaint(Exercise exercise)
    {
        MeasureTask task = (MeasureTask)exercise.Task;
        QuantityQuery query = task.Query;
        FlyFigures fly = MeasureTask.Measured(exercise);
        if (query.Of(fly) is not { } key) return $"The engine has no {query.Name} for this fly.";
        double[] tied = [.. Tied(exercise, task, fly).OfType<double>()];
        if (tied.Length < KeyClearance.Flies) return $"Of {KeyClearance.Flies} flies tied alike, {KeyClearance.Flies - tied.Length} have no {query.Name}.";
        double spread = Math.Sqrt(tied.Sum(t => (t - key) * (t - key)) / tied.Length), tolerance = task.ToleranceSi;
        if (MeasuredChange.Complaint(exercise, task, fly, key) is { } complaint) return complaint;
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
