using TyingClass.Lessons.Courses;
using TyingClass.Lessons.Exercises;
using TyingClass.Storage.Attempts;
using TyingClass.Web.Calendar;
using TyingClass.Web.Identity;
using TyingClass.Web.Progress;

namespace TyingClass.Web.Editing;

/// <summary>The exercises of the course, by id.</summary>
public sealed class ExerciseDesk(
    ICourseSource course, AttemptStore store, Visitor visitor, AnswerDesk desk, ClassCalendar calendar, AfterAnswer after)
{
    /// <param name="attemptNumber">The attempt to show and to begin from; the latest when null; none when 0.</param>
    /// <returns>Null for an exercise nobody knows.</returns>
    public ExerciseView? Open(string exerciseId, int? attemptNumber = null, bool inLesson = false)
    {
        if (Find(exerciseId) is not { } work) return null;
        ExerciseView view = desk.Open(work, attemptNumber, inLesson);
        return view.Shown is null || inLesson ? view : view with { After = after.Of(work.Lesson, work.Exercise) };
    }

    /// <summary>
    /// Grades and keeps a submitted answer, or does what another button asks of the form. Before the exercise opens for the visitor's class, neither.
    /// </summary>
    public DeskResult Take(string exerciseId, AnswerPost post)
    {
        ArgumentNullException.ThrowIfNull(post);
        if (Find(exerciseId) is not { } work) return new DeskResult(null, null, StatusCodes.Status404NotFound);
        if (calendar.OpensLater(work.Lesson, work.Exercise) is not { } opens) return desk.Take(work, post);
        string notice =
            $"Not sent in: this exercise opens for your class on {calendar.Say(opens)}. Nothing was graded or counted. What you typed stands below; copy "
            + "it, and send it in once it is open.";
        return new DeskResult(null, desk.ShowAgain(work, post.Typed, notice), StatusCodes.Status403Forbidden);
    }

    /// <summary>The form with what was typed, nothing done.</summary>
    public ExerciseView? ShowAgain(string exerciseId, Typed typed, string notice) =>
        Find(exerciseId) is { } work ? desk.ShowAgain(work, typed, notice) : null;

    /// <summary>Where an exercise stands in its lesson.</summary>
    public string LessonAddress(string exerciseId) => course.Current.TryFindExercise(exerciseId, out Lesson lesson, out _)
        ? $"/lessons/{Uri.EscapeDataString(lesson.Slug)}#exercise-{Uri.EscapeDataString(exerciseId)}"
        : "/";

    private Assignment? Find(string exerciseId) => course.Current.TryFindExercise(exerciseId, out Lesson lesson, out Exercise exercise)
        ? new Assignment(lesson, exercise, $"/exercises/{Uri.EscapeDataString(exercise.Id)}")
        {
            Attempts = () => visitor.Person is { } person ? store.Of(person.Id, exercise.Id) : [],
            Keep = (text, grade, form) => store.Add(visitor.PersonOrNewGuest().Id, exercise.Id, text, grade, form),
        }
        : null;
}
