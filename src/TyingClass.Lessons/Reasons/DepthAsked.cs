using TyingClass.Lessons.Exercises;
using TyingClass.Recipes.Text;
using TyingClass.Telling.Figures;
using TyingClass.Telling.Sentences;

namespace TyingClass.Lessons.Reasons;

/// <summary>A depth of the last round that an exercise sets as a goal: a line to draw where depths are drawn.</summary>
public sealed record DepthAsked(Goal Goal)
{
    /// <summary>The bound that is set; the deeper one of two.</summary>
    public double DepthM => double.IsFinite(Goal.HighSi) ? Goal.HighSi : Goal.LowSi;

    /// <summary>The first such goal; null where there is none.</summary>
    public static DepthAsked? Of(Exercise exercise) =>
        exercise.Goals.FirstOrDefault(g => g.Quantity is "deepest" or "shallowest") is { } goal ? new DepthAsked(goal) : null;

    /// <summary>"deepest: at most 0.9 m".</summary>
    public string Say(UnitSystem units) => GoalSentence.Asked(Goal.Quantity, Magnitudes.Find(Goal.Quantity), Goal.LowSi, Goal.HighSi, units);
}
