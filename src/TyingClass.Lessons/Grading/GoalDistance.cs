using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Quantities;
using TyingClass.Recipes.Text;

namespace TyingClass.Lessons.Grading;

/// <summary>How far a figure is from what was asked, in the goal's own width, so that a goal of grams can be set beside one of degrees.</summary>
internal static class GoalDistance
{
    // A goal with one end is as wide as its bound is far from nothing, and no narrower than what a tyer would call a step. Estimates.
    private const double StepRad = Math.PI / 6;
    private const double StepM = 1e-3;

    // Noticeable differences to a step, of any other quantity.
    private const double Steps = 4;

    /// <summary>0 for a goal that is met; infinite where the fly has no such figure.</summary>
    public static double Of(Goal goal, QuantityQuery query, FlyFigures fly)
    {
        if (query.Of(fly) is not { } si) return double.PositiveInfinity;
        double miss = Math.Max(0, Math.Max(goal.LowSi - si, si - goal.HighSi));
        return miss / Width(goal, query.Quantity);
    }

    private static double Width(Goal goal, Quantity quantity)
    {
        if (double.IsFinite(goal.LowSi) && double.IsFinite(goal.HighSi) && goal.HighSi > goal.LowSi) return goal.HighSi - goal.LowSi;
        double bound = double.IsFinite(goal.LowSi) ? goal.LowSi : goal.HighSi;
        double step = quantity.Dimension switch
        {
            Dimension.Angle => StepRad,
            Dimension.Length => StepM,
            _ => Math.Max(Steps * quantity.NoticeableSi, 1e-12),
        };
        return Math.Max(Math.Abs(bound), step);
    }
}
