using TyingClass.Lessons.Courses;
using TyingClass.Lessons.Exercises;
using TyingClass.Storage;
using TyingClass.Web.Identity;

namespace TyingClass.Web.Editing;

/// <summary>The exercises of the course, by id.</summary>
public sealed class ExerciseDesk(ICourseSource course, ClassStore store, Visitor visitor, AnswerDesk desk)
{
    /// <param name="attemptNumber">The attempt to show and to begin from; the latest when null; none when 0.</param>
    /// <returns>Null for an exercise nobody knows.</returns>
    public ExerciseView? Open(string exerciseId, int? attemptNumber = null, bool inLesson = false) =>
        Find(exerciseId) is { } work ? desk.Open(work, attemptNumber, inLesson) : null;

    /// <summary>Grades and keeps a submitted answer, or does what another button asks of the form.</summary>
    public DeskResult Take(string exerciseId, AnswerPost post) =>
        Find(exerciseId) is { } work ? desk.Take(work, post) : new DeskResult(null, null, StatusCodes.Status404NotFound);

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
            Attempts = () => visitor.Person is { } person ? store.Attempts.Of(person.Id, exercise.Id) : [],
            Keep = (text, grade) => store.Attempts.Add(visitor.PersonOrNewGuest().Id, exercise.Id, text, grade),
        }
        : null;
}
