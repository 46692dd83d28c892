using System.Collections.Immutable;
using TyingClass.Lessons.Courses;

namespace TyingClass.Web.Progress;

/// <summary>What is left at home of the lessons of one evening.</summary>
/// <param name="First">What the plan says is not to be left out.</param>
/// <param name="Then">For who has time.</param>
public sealed record Homework(int Evening, ImmutableArray<ExerciseLine> First, ImmutableArray<ExerciseLine> Then)
{
    /// <summary>Of the evening that the next exercise belongs to; null where nobody says what comes first, or all of it is done.</summary>
    internal static Homework? Of(Course course, ImmutableArray<LessonLine> lessons, Lesson? next)
    {
        if (course.Evenings.FirstOrDefault(e => e.Number == next?.Evening) is not { First.IsEmpty: false } plan) return null;
        ILookup<bool, ExerciseLine> left = CoursePlan.Open(lessons)
            .Where(open => open.Lesson.Lesson.Evening == plan.Number && !plan.InTheRoom.Contains(open.Line.Exercise.Id))
            .ToLookup(open => plan.IsFirst(open.Line.Exercise), open => open.Line);
        return left.Count == 0 ? null : new Homework(plan.Number, [.. left[true]], [.. left[false]]);
    }
}
