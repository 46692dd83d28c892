using System.Collections.Immutable;
using TyingClass.Lessons.Courses;
using TyingClass.Lessons.Exercises;
using TyingClass.Web.Practice;

namespace TyingClass.Web.Progress;

/// <summary>What stands under an answer that is done: what one now holds, and where to go on.</summary>
/// <param name="Lesson">"3 of 7 exercises of this lesson are done."</param>
/// <param name="Held">The concepts the exercise is on, as far as they are begun.</param>
public sealed record AfterView(string Lesson, ImmutableArray<ConceptLine> Held, NextStep Next);

/// <summary>Works out what comes after an answer.</summary>
public sealed class AfterAnswer(CourseProgress progress, ConceptBoard board)
{
    public AfterView Of(Lesson lesson, Exercise exercise)
    {
        ArgumentNullException.ThrowIfNull(lesson);
        ArgumentNullException.ThrowIfNull(exercise);
        CoursePlan plan = progress.Now();
        ConceptView concepts = board.Mine();
        LessonLine? here = plan.Lessons.FirstOrDefault(l => l.Lesson.Slug == lesson.Slug);
        return new AfterView(
            here is null ? "" : Say(here),
            [.. concepts.Lines.Where(l => l.IsBegun && exercise.Concepts.Contains(l.Concept))],
            Next(plan, here, exercise, concepts));
    }

    private static string Say(LessonLine line)
    {
        int done = line.Exercises.Count(e => e.Kind is StandingKind.Passed or StandingKind.Waiting);
        return done == line.Exercises.Length ? "That was the last exercise of this lesson."
            : FormattableString.Invariant($"{done} of {line.Exercises.Length} exercises of this lesson are done.");
    }

    // What follows in this lesson, then what was passed over in it, then the course's own order.
    private static NextStep Next(CoursePlan plan, LessonLine? here, Exercise exercise, ConceptView concepts)
    {
        if (here is not null)
        {
            int at = here.Exercises.ToList().FindIndex(e => e.Exercise.Id == exercise.Id);
            ExerciseLine? next = here.Exercises.Skip(at + 1).Concat(here.Exercises.Take(Math.Max(0, at))).FirstOrDefault(e => e.IsOpen);
            if (next is not null) return NextStep.After(next.Exercise);
        }

        // What is still open here is where one already is.
        return plan.NextBut(exercise) is { } onward ? NextStep.To(onward.Lesson, onward.Line.Exercise)
            : concepts.Next is { } due ? NextStep.Practice(due)
            : NextStep.Home;
    }
}
