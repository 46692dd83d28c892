using TyingClass.Lessons.Courses;
using TyingClass.Lessons.Exercises;

namespace TyingClass.Web.Classes;

public enum RegisterSort
{
    Name,

    /// <summary>Most passed first.</summary>
    Passed,

    /// <summary>Most stuck first.</summary>
    Stuck,

    /// <summary>Longest away first.</summary>
    Away,
}

/// <summary>What part of the register is asked for.</summary>
/// <param name="StuckOnly">Only students and exercises with failed attempts and no success.</param>
public sealed record RegisterFilter(int? Evening = null, string? Concept = null, bool StuckOnly = false, RegisterSort Sort = RegisterSort.Name)
{
    /// <summary>Mentors work exercises for pleasure: they stand in the file of the class, and not among its students on a page.</summary>
    public bool WithMentors { get; init; }

    public bool IsEverything => Evening is null && string.IsNullOrEmpty(Concept) && !StuckOnly;

    public bool Fits(Lesson lesson, Exercise exercise) =>
        (Evening is null || lesson.Evening == Evening) && (string.IsNullOrEmpty(Concept) || exercise.Concepts.Contains(Concept));
}
