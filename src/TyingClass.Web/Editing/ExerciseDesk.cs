using System.Collections.Immutable;
using TyingClass.Lessons.Courses;
using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Grading;
using TyingClass.Recipes.Text;
using TyingClass.Storage;
using TyingClass.Storage.Attempts;
using TyingClass.Storage.Files;
using TyingClass.Web.Identity;
using TyingClass.Web.Pictures;
using TyingClass.Web.Preferences;

namespace TyingClass.Web.Editing;

/// <summary>Takes answers in and lays exercises out.</summary>
public sealed class ExerciseDesk(ICourseSource course, ClassStore store, Visitor visitor, FlyPictures pictures, IHttpContextAccessor accessor)
{
    public const string StaleForm =
        "The form had gone stale: it was open for long, or someone signed in or out in this browser meanwhile. Nothing was sent in. What you typed stands below; submit it again.";

    /// <param name="attemptNumber">The attempt to show and to begin from; the latest when null; none when 0.</param>
    /// <returns>Null for an exercise nobody knows.</returns>
    public ExerciseView? Open(string exerciseId, int? attemptNumber = null)
    {
        if (!course.Current.TryFindExercise(exerciseId, out Lesson lesson, out Exercise exercise)) return null;
        ImmutableArray<Attempt> attempts = AttemptsAt(exercise);
        Attempt? shown = attemptNumber is { } number ? attempts.FirstOrDefault(a => a.Number == number) : attempts.LastOrDefault();
        Typed typed = shown is null ? StartText.For(exercise)
            : StartText.IsRecipe(exercise) ? Typed.FormIfPossible(shown.AnswerText)
            : Typed.Plain(shown.AnswerText);
        return Lay(lesson, exercise, typed, attempts) with { Shown = shown };
    }

    /// <summary>Grades and keeps a submitted answer, or does what another button asks of the form.</summary>
    public DeskResult Take(string exerciseId, AnswerPost post)
    {
        if (!course.Current.TryFindExercise(exerciseId, out Lesson lesson, out Exercise exercise)) return new DeskResult(null, null, StatusCodes.Status404NotFound);
        if (AnswerLimit.Check(post.Typed.Text) is { } tooLong)
            return new DeskResult(null, Again(lesson, exercise, post.Typed) with { Problems = [tooLong] }, StatusCodes.Status413PayloadTooLarge);
        return post.IsSubmit ? Submit(lesson, exercise, post.Typed) : new DeskResult(null, Edit(lesson, exercise, post));
    }

    /// <summary>The form with what was typed, nothing done.</summary>
    public ExerciseView? ShowAgain(string exerciseId, Typed typed, string notice) =>
        course.Current.TryFindExercise(exerciseId, out Lesson lesson, out Exercise exercise) ? Again(lesson, exercise, typed) with { Notice = notice } : null;

    /// <summary>Where an exercise stands in its lesson.</summary>
    public string LessonAddress(string exerciseId) => course.Current.TryFindExercise(exerciseId, out Lesson lesson, out _)
        ? $"/lessons/{Uri.EscapeDataString(lesson.Slug)}#exercise-{Uri.EscapeDataString(exerciseId)}"
        : "/";

    private UnitSystem UnitsRead =>
        accessor.HttpContext is { } http && Look.Of(http.Request).Units == Drawing.UnitSystem.Imperial ? UnitSystem.Imperial : UnitSystem.Metric;

    private DeskResult Submit(Lesson lesson, Exercise exercise, Typed typed)
    {
        try
        {
            int failed = visitor.Person is { } person ? store.Attempts.StandingOf(person.Id, exercise.Id).Failed : 0;
            GradeResult grade = Grader.Grade(exercise, typed.Text, failed, new GradeOptions { Units = UnitsRead });
            if (!grade.IsAttempt)
                return new DeskResult(null, Again(lesson, exercise, typed, grade.Problems), StatusCodes.Status422UnprocessableEntity);
            return new DeskResult(store.Attempts.Add(visitor.PersonOrNewGuest().Id, exercise.Id, typed.Text, grade), null);
        }
        catch (StorageException)
        {
            ExerciseView view = Again(lesson, exercise, typed, attempts: []) with { Notice = "Your answer could not be kept: the server could not write to its disk. Nothing you typed is lost: it stands below. Tell the instructor, then submit it again." };
            return new DeskResult(null, view, StatusCodes.Status503ServiceUnavailable);
        }
    }

    private ExerciseView Edit(Lesson lesson, Exercise exercise, AnswerPost post)
    {
        (Typed typed, string? notice) = RecipeEdits.Apply(post);
        // An unfinished recipe is no error until it is submitted, except to someone who asks to see it drawn or turned into a form.
        ImmutableArray<AnswerProblem> problems = post.Action == "draw" || notice is not null ? RecipeEdits.ProblemsOf(typed.Text) : [];
        return Again(lesson, exercise, typed, problems) with { Notice = notice };
    }

    private ExerciseView Again(Lesson lesson, Exercise exercise, Typed typed, ImmutableArray<AnswerProblem> problems = default, ImmutableArray<Attempt>? attempts = null) =>
        Lay(lesson, exercise, typed, attempts ?? AttemptsAt(exercise), problems.IsDefault ? [] : problems);

    private ExerciseView Lay(Lesson lesson, Exercise exercise, Typed typed, ImmutableArray<Attempt> attempts, ImmutableArray<AnswerProblem> problems = default)
    {
        ImmutableArray<AnswerProblem> found = problems.IsDefault ? [] : problems;
        bool isRecipe = StartText.IsRecipe(exercise);
        return new ExerciseView
        {
            Lesson = lesson,
            Exercise = exercise,
            Typed = typed,
            Problems = found,
            Attempts = attempts,
            Form = typed.Draft is { } draft ? new RecipeFormBuilder(draft, found, EditRules.Of(exercise, draft)).Build() : null,
            Picture = isRecipe ? pictures.Draw(typed.Text) : null,
            Asked = isRecipe ? [] : Asked(exercise, answered: attempts.Length > 0),
        };
    }

    private ImmutableArray<AskedFly> Asked(Exercise exercise, bool answered)
    {
        IEnumerable<string?> texts = [exercise.RecipeText, (exercise.Question as WhichHasMore)?.SecondRecipeText, .. exercise.Items.Select(i => i.RecipeText)];
        return [.. texts.OfType<string>()
            .Select(text => (Card: RecipeCard.Of(text), Text: text))
            .Where(fly => fly.Card is not null)
            .Select(fly => new AskedFly(fly.Card!, answered ? pictures.Draw(fly.Text) : null))];
    }

    private ImmutableArray<Attempt> AttemptsAt(Exercise exercise) => visitor.Person is { } person ? store.Attempts.Of(person.Id, exercise.Id) : [];
}
