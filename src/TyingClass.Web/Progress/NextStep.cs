using TyingClass.Lessons.Courses;
using TyingClass.Lessons.Exercises;
using TyingClass.Web.Practice;

namespace TyingClass.Web.Progress;

/// <summary>Where a button leads on, and what stands on it.</summary>
public readonly record struct NextStep(string Address, string Label)
{
    /// <summary>The first of a lesson is met in the lesson; what stands in the middle of one begun, by itself.</summary>
    public static NextStep To(LessonLine line, Exercise exercise)
    {
        ArgumentNullException.ThrowIfNull(line);
        ArgumentNullException.ThrowIfNull(exercise);
        return line.IsBegun ? new NextStep(AddressOf(exercise), $"Go on: {exercise.Title}") : Begin(line.Lesson);
    }

    public static NextStep After(Exercise exercise) => new(AddressOf(exercise), $"Next: {exercise.Title}");

    public static NextStep Begin(Lesson lesson)
    {
        ArgumentNullException.ThrowIfNull(lesson);
        return new NextStep($"/lessons/{Uri.EscapeDataString(lesson.Slug)}", FormattableString.Invariant($"Begin lesson {lesson.Number}: {lesson.Title}"));
    }

    public static NextStep Practice(ConceptLine concept)
    {
        ArgumentNullException.ThrowIfNull(concept);
        return new NextStep(concept.Address, $"Practice {concept.Concept}");
    }

    public static NextStep Home { get; } = new("/", "Back to the course");

    private static string AddressOf(Exercise exercise) => $"/exercises/{Uri.EscapeDataString(exercise.Id)}";
}
