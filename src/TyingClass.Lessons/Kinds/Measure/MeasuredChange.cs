using TyingClass.Lessons.Checking;
using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Grading;
using TyingClass.Lessons.Quantities;
using TyingClass.Recipes.Text;

namespace TyingClass.Lessons.Kinds.Measure;

/// <summary>Whether what is done to a fly before it is measured makes a figure of its own: one to be noticed, and no doubt of the model's.</summary>
internal static class MeasuredChange
{
    // With a tolerance larger than this share of the change, whoever leaves the figure as it was may pass. Estimate.
    private const double MostTolerance = 0.5;

    /// <summary>Null where the change is clear, and where there is none.</summary>
    /// <param name="after">The fly that is measured.</param>
    public static string? Complaint(Exercise exercise, MeasureTask task, FlyFigures after, double key)
    {
        if (task.Done is null) return null;
        QuantityQuery query = task.Query;
        FlyFigures before = new(GivenFly.Of(exercise.RecipeText!));
        if (query.Of(before) is not { } from) return $"The engine has no {query.Name} for this fly before the change.";
        double change = key - from, least = FlyChange.Clear * query.Quantity.NoticeableSi;
        if (Math.Abs(change) < least)
            return $"The change moves the {query.Name} by {Say(Math.Abs(change))}, and {Say(least)} is the least that is clear to see.";
        if (task.ToleranceSi > MostTolerance * Math.Abs(change))
        {
            return $"The tolerance of {Say(task.ToleranceSi)} is more than half of the change, {Say(Math.Abs(change))}: "
                + "who leaves the figure as it was may pass. Make it finer.";
        }

        return KeyClearance.ModelComplaint(DrawnFlies.Of(before).Zip(DrawnFlies.Of(after), Agrees), $"The change is {Say(change)}");

        string Say(double si) => query.SayStated(si, UnitSystem.Metric);

        bool? Agrees(FlyFigures? first, FlyFigures? second) => first is null || second is null ? null
            : query.Of(second) - query.Of(first) is { } drawn ? Math.Sign(drawn) == Math.Sign(change) && Math.Abs(drawn) >= query.Quantity.NoticeableSi : null;
    }
}
