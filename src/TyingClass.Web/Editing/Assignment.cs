using System.Collections.Immutable;
using TyingClass.Lessons.Courses;
using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Grading;
using TyingClass.Storage.Attempts;

namespace TyingClass.Web.Editing;

/// <summary>What somebody works on, an exercise of a lesson or a practice problem, and where the answers to it are kept.</summary>
/// <param name="Address">Where its form is sent.</param>
public sealed record Assignment(Lesson Lesson, Exercise Exercise, string Address)
{
    /// <summary>After a wrong vote the next answer is of a fresh fly; false where the next problem is one by itself.</summary>
    public bool GoesOnFresh { get; init; } = true;

    /// <summary>Only the first answer counts: whoever missed a figure is shown how it is worked out.</summary>
    public bool ShowsTheSum { get; init; }

    /// <summary>The visitor's, first to last.</summary>
    public required Func<ImmutableArray<Attempt>> Attempts { get; init; }

    /// <summary>Keeps a graded answer that came in a form; begins a guest's record where there is none.</summary>
    public required Func<string, GradeResult, string?, Attempt> Keep { get; init; }
}
