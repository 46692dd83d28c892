using System.Collections.Immutable;
using Microsoft.AspNetCore.Html;
using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Grading;
using TyingClass.Lessons.Kinds;
using TyingClass.Lessons.Kinds.Measure;
using TyingClass.Lessons.Kinds.Predict;
using TyingClass.Lessons.Reasons;
using TyingClass.Lessons.Reference;
using TyingClass.Recipes.Catalogue;
using TyingClass.Recipes.Text;
using TyingClass.Storage.Attempts;
using TyingClass.Storage.Files;
using TyingClass.Telling.Reasons;
using TyingClass.Telling.Sentences;
using TyingClass.Web.Pictures;
using TyingClass.Web.Preferences;

namespace TyingClass.Web.Editing;

/// <summary>Takes answers in and lays assignments out.</summary>
public sealed class AnswerDesk(FlyPictures pictures, SolvedFlies flies, IHttpContextAccessor accessor)
{
    public const string StaleForm =
        "The form had gone stale: it was open for long, or someone signed in or out in this browser meanwhile. Nothing was sent in. What you typed stands "
        + "below; submit it again.";

    /// <param name="attemptNumber">The attempt to show and to begin from; the latest when null; none when 0.</param>
    public ExerciseView Open(Assignment work, int? attemptNumber = null, bool inLesson = false)
    {
        ArgumentNullException.ThrowIfNull(work);
        ImmutableArray<Attempt> attempts = work.Attempts();
        Attempt? shown = attemptNumber is { } number ? attempts.FirstOrDefault(a => a.Number == number) : attempts.LastOrDefault();
        Typed typed = shown is null ? StartText.For(work.Exercise)
            : work.Exercise.Kind.AnswerIsRecipe ? Typed.FormIfPossible(shown.AnswerText)
            : Typed.Plain(shown.AnswerText);
        AttemptView? seen = shown is null ? null : View(work, attempts, shown, inLesson);
        ExerciseView view = Lay(work, typed, attempts, inLesson: inLesson) with { Shown = seen };
        return shown is not null && PredictAnswer.Read(shown.AnswerText) is null ? view : WithFirstFly(view);
    }

    /// <summary>Grades and keeps a submitted answer, or does what another button asks of the form.</summary>
    public DeskResult Take(Assignment work, AnswerPost post)
    {
        ArgumentNullException.ThrowIfNull(work);
        ArgumentNullException.ThrowIfNull(post);
        if (AnswerLimit.Check(post.Typed.Text) is { } tooLong)
            return new DeskResult(null, Again(work, post.Typed) with { Problems = [tooLong] }, StatusCodes.Status413PayloadTooLarge);
        return post.IsSubmit ? Submit(work, post) : new DeskResult(null, Edit(work, post));
    }

    /// <summary>The form with what was typed, nothing done.</summary>
    public ExerciseView ShowAgain(Assignment work, Typed typed, string notice) => Again(work, typed) with { Notice = notice };

    private UnitSystem UnitsRead =>
        accessor.HttpContext is { } http ? Look.Of(http.Request).Units : UnitSystem.Metric;

    private DeskResult Submit(Assignment work, AnswerPost post)
    {
        Typed typed = post.Typed;
        try
        {
            ImmutableArray<Attempt> before = work.Attempts();
            // Sent once more because the page it led to never arrived: that page, and no second attempt.
            if (post.Form is { } form && before.FirstOrDefault(a => a.Form == form && a.AnswerText == typed.Text) is { } kept)
                return new DeskResult(kept, null);
            int failed = before.Count(a => a is { Counts: false, Waits: false });
            GradeResult grade = Grader.Grade(work.Exercise, typed.Text, failed,
                new GradeOptions { Units = UnitsRead, Draft = typed.Draft, GoesOnFresh = work.GoesOnFresh });
            if (grade.Fly is { } fly) flies.Keep(typed.Text, fly);
            return grade.IsAttempt
                ? new DeskResult(work.Keep(typed.Text, grade, post.Form), null)
                : new DeskResult(null, Again(work, typed, grade.Problems), StatusCodes.Status422UnprocessableEntity);
        }
        catch (StorageException)
        {
            ExerciseView view = Again(work, typed,
                attempts: []) with
            {
                Notice =
                    "Your answer could not be kept: the server could not write to its disk. Nothing you typed is lost: it stands below. Tell the "
                    + "instructor, then submit it again."
            };
            return new DeskResult(null, view, StatusCodes.Status503ServiceUnavailable);
        }
    }

    private ExerciseView Edit(Assignment work, AnswerPost post)
    {
        (Typed typed, string? notice) = RecipeEdits.Apply(post);
        // An unfinished recipe is no error until it is submitted, except to someone who asks to see it drawn or turned into a form.
        ImmutableArray<AnswerProblem> problems = post.Action == "draw" || notice is not null ? RecipeEdits.ProblemsOf(typed.Text) : [];
        return Again(work, typed, problems) with { Notice = notice };
    }

    private ExerciseView Again(Assignment work, Typed typed, ImmutableArray<AnswerProblem> problems = default, ImmutableArray<Attempt>? attempts = null) =>
        WithFirstFly(Lay(work, typed, attempts ?? work.Attempts(), problems.IsDefault ? [] : problems));

    private ExerciseView Lay(Assignment work, Typed typed, ImmutableArray<Attempt> attempts, ImmutableArray<AnswerProblem> problems = default,
        bool inLesson = false)
    {
        ImmutableArray<AnswerProblem> found = problems.IsDefault ? [] : problems;
        bool isRecipe = work.Exercise.Kind.AnswerIsRecipe;
        return new ExerciseView
        {
            Lesson = work.Lesson,
            Exercise = work.Exercise,
            Address = work.Address,
            Typed = typed,
            Problems = found,
            Attempts = attempts,
            InLesson = inLesson,
            Form = typed.Draft is { } draft && !inLesson
                ? new RecipeFormBuilder(draft, found, Rules(work.Exercise, draft), Assumed(typed.Text)).Build() : null,
            Picture = isRecipe && !(inLesson && IsBareHook(work.Exercise, attempts)) ? InTheVise(typed.Text) : null,
            Fresh = work.GoesOnFresh ? Fresh(work.Exercise, attempts, typed, inLesson) : null,
            Asked = isRecipe ? [] : Asked(work.Exercise, IsTold(work.Exercise, attempts), inLesson),
        };
    }

    private FreshView? Fresh(Exercise exercise, ImmutableArray<Attempt> attempts, Typed typed, bool inLesson)
    {
        int failed = attempts.Count(a => a is { Counts: false, Waits: false });
        if (exercise.Task is not PredictTask || failed == 0 || attempts.Any(a => a.Counts)) return null;
        if (FreshProblem.Of(exercise, failed) is not { } problem) return null;
        OfferedReasons? offered = OfferedReasons.Of(exercise);
        // Either what was just sent and not taken, or the answer before, whose reason stands if it was right.
        PredictAnswer? answer = PredictAnswer.Read(typed.Text);
        bool isThis = answer is not null && (answer.Fresh == failed || answer.Fresh == 0);
        return new FreshView(failed, problem, offered?.Said ?? [], Asked(problem, told: false, inLesson, [.. AskedRecipes.Of(exercise)]))
        {
            Why = offered is null ? "" : FirstShown.AskWhy(exercise, UnitsRead),
            Reason = answer is { Reason: var reason } && (isThis || offered?.IsRight(reason) == true) ? reason : 0,
            Choice = isThis ? answer!.Choice : "",
        };
    }

    // The first fly as it swims, for where the feedback on the page is of another one, or there is none.
    private ExerciseView WithFirstFly(ExerciseView view) =>
        view is { InLesson: false, Fresh: { } fresh } && view.Attempts.FirstOrDefault(a => PredictAnswer.Read(a.AnswerText) is null) is { } first
            ? view with { Fresh = fresh with { Shown = Picture(view.Exercise, first) } } : view;

    private static EditRules Rules(Exercise exercise, RecipeDraft draft) =>
        ((RecipeTask)exercise.Task).Rules(exercise.RecipeText is { } text ? Typed.Given(text) : null, draft);

    // However often it is drawn: how it swims is what an attempt tells (docs/decisions/0010).
    private IHtmlContent? InTheVise(string text) => text.Length <= AnswerLimit.MostBytes ? pictures.Draw(text, Plates.Vise) : null;

    private ImmutableArray<Assumption> Assumed(string text) =>
        text.Length <= AnswerLimit.MostBytes && flies.Attitude(text) is { } fly ? fly.Built.Assumed : [];

    private static bool IsBareHook(Exercise exercise, ImmutableArray<Attempt> attempts) => exercise.RecipeText is null && attempts.IsEmpty;

    /// <param name="beside">The flies that were shown first, where these are their cousins.</param>
    private ImmutableArray<AskedFly> Asked(Exercise exercise, bool told, bool inLesson, string[]? beside = null)
    {
        string[] texts = [.. AskedRecipes.Of(exercise)];
        RecipeCard?[] cards = [.. Cards(texts, beside)];
        return
        [
            .. cards.Zip(texts).Where(fly => fly.First is not null)
                .Select(fly => new AskedFly(exercise.Kind.IsAtTheBench ? fly.First! : fly.First! with { Steps = [] }, Picture(fly.Second))),
        ];

        // In a lesson, and where a fly stands alone, how it swims is shown with the feedback.
        // What is asked of a retrieve can only be read off its curve; a lesson has that above the question.
        IHtmlContent? Picture(string text) => told && !inLesson && texts.Length > 1 ? pictures.Draw(text)
            : pictures.Draw(text, !inLesson && exercise.Task is MeasureTask { IsOfTheRetrieve: true } ? Plates.LastRound : Plates.Vise);
    }

    // A prediction's feedback tells the answer; a figure or an order that missed may be tried again, so its picture must not give it away.
    private static bool IsTold(Exercise exercise, ImmutableArray<Attempt> attempts) =>
        exercise.Kind.TellsTheAnswer ? !attempts.IsEmpty : attempts.Any(a => a.Counts);

    private AttemptView View(Assignment work, ImmutableArray<Attempt> attempts, Attempt attempt, bool inLesson) => View(work.Exercise, attempt, inLesson) with
    {
        Worked = work.ShowsTheSum || IsFound(work.Exercise, attempts) ? WorkedSum.Of(work.Exercise, attempt.AnswerText, UnitsRead) : null,
        WorkedIsFolded = work.ShowsTheSum && !work.Exercise.Kind.TellsTheAnswer && !attempts.Any(a => a.Counts) && attempts.Length == 1,
        PassedBefore = attempt is { Counts: false, Waits: false } ? attempts.LastOrDefault(a => a.Counts && a.Number < attempt.Number)?.Number : null,
        CautionInFull = work.Lesson.Exercises.FirstOrDefault()?.Id == work.Exercise.Id,
    };

    // A figure that is found or told. In a lesson a prediction goes on with a fresh fly, and its figures stand in its feedback.
    private static bool IsFound(Exercise exercise, ImmutableArray<Attempt> attempts) => exercise.Task is MeasureTask
        && (attempts.Any(a => a.Counts) || attempts.Count(a => a is { Counts: false, Waits: false }) > exercise.Hints.Length);

    private AttemptView View(Exercise exercise, Attempt attempt, bool inLesson) => new(attempt)
    {
        Picture = inLesson ? null : Picture(exercise, attempt),
        Swimming = inLesson ? Swimming(exercise, attempt) : [],
        Doubt = inLesson ? null : Doubt(exercise, attempt),
        Cards = Cards(exercise, attempt),
        Regraded = Regraded(exercise, attempt),
        Heading = exercise.Kind.FeedbackHeading,
        // The reasons given for a whole fly are the terms of its ledger; those for one figure are that figure's own.
        WorkedOutAt = exercise.Kind.AnswerIsRecipe ? FormulaLinks.MomentLedger : null,
    };

    private ImmutableArray<IHtmlContent> Swimming(Exercise exercise, Attempt attempt)
    {
        if (exercise.Kind.AnswerIsRecipe || !IsTold(exercise, [attempt])) return [];
        Exercise answered = exercise.Kind.Answered(exercise, attempt.AnswerText);
        if (attempt.Feedback?.Picture is { } asked && AskedPicture(answered, attempt, asked) is { } seen) return [seen];
        IEnumerable<IHtmlContent?> all = AskedRecipes.Change(answered) is { } change ? [pictures.Pair(change.Before, change.After)]
            : AskedRecipes.Of(answered).Select(text => pictures.Draw(text));
        return [.. all.OfType<IHtmlContent>()];
    }

    private IHtmlContent? Picture(Exercise exercise, Attempt attempt) => attempt.Feedback?.Picture is { } asked
        ? AskedPicture(exercise.Kind.Answered(exercise, attempt.AnswerText), attempt, asked)
        : exercise switch
        {
            { Task: RecipeTask { ChangesGiven: true }, RecipeText: { } given } => pictures.Pair(given, attempt.AnswerText),
            { Kind.AnswerIsRecipe: true } => pictures.Draw(attempt.AnswerText),
            _ when !IsTold(exercise, [attempt]) => null,
            _ when AskedRecipes.Change(exercise) is { } change => pictures.Pair(change.Before, change.After),
            _ => AskedRecipes.Of(exercise).ToArray() is [var only] ? pictures.Draw(only) : null,
        };

    private IHtmlContent? AskedPicture(Exercise exercise, Attempt attempt, AskedPicture asked) => exercise switch
    {
        { Task: RecipeTask { ChangesGiven: true }, RecipeText: { } given } => pictures.Asked(asked, given, attempt.AnswerText, goal: DepthAsked.Of(exercise)),
        { Kind.AnswerIsRecipe: true } => pictures.Asked(asked, attempt.AnswerText, goal: DepthAsked.Of(exercise)),
        _ when !IsTold(exercise, [attempt]) => null,
        _ when asked.Pair == FlyPair.Order => pictures.Row(
            asked, [.. AskedRecipes.Of(exercise).OrderBy(text => Place(attempt.AnswerText, RecipeCard.Of(text)?.Name ?? ""))]),
        _ => AskedRecipes.Picture(exercise, asked, pictures),
    };

    // Where a line of the answer names it.
    private static int Place(string answer, string name) =>
        Array.FindIndex(
            answer.Split(['\n', ',', ';', '>'], StringSplitOptions.TrimEntries), said => string.Equals(said, name, StringComparison.OrdinalIgnoreCase));

    private static ImmutableArray<RecipeCard> Cards(Exercise exercise, Attempt attempt) =>
        exercise.Kind.Answered(exercise, attempt.AnswerText) is var answered && answered != exercise
            ? [.. Cards([.. AskedRecipes.Of(answered)], [.. AskedRecipes.Of(exercise)]).OfType<RecipeCard>()] : [];

    // A cousin beside the fly it is a cousin of; of two flies that differ in little, the second beside the first.
    private static IEnumerable<RecipeCard?> Cards(string[] texts, string[]? beside)
    {
        for (int i = 0; i < texts.Length; i++)
        {
            string? other = beside is not null ? beside.ElementAtOrDefault(i) : texts.Length == 2 && i == 1 ? texts[0] : null;
            RecipeCard? card = RecipeCard.Of(texts[i]);
            if (card is not null && other is not null && RecipeCard.Of(other) is { } first && card.Beside(texts[i], other, first.Name) is var marked
                && (beside is not null || marked.Marks is { Differing: <= FewDifferences }))
                card = marked;
            yield return card;
        }
    }

    private const int FewDifferences = 3;

    private string? Doubt(Exercise exercise, Attempt attempt)
    {
        // A sum in the hand trusts no guess of the model's; and nothing holds a bare hook, so there is nothing to be sure of.
        if (exercise.Task is MeasureTask { IsOfMass: true } || Prediction.IsOfMass(exercise)) return null;
        string? told = exercise.Kind.AnswerIsRecipe ? attempt.AnswerText
            : IsTold(exercise, [attempt]) && AskedRecipes.Change(exercise) is null && AskedRecipes.Of(exercise).ToArray() is [var only] ? only : null;
        return told is not null && flies.Attitude(told) is { } fly && fly.Built.Body.Parts.Length > 1 ? DoubtSentence.Of(fly.Doubt) : null;
    }

    private string? Regraded(Exercise exercise, Attempt attempt)
    {
        if (attempt.EngineVersion == Balance.Reports.BalanceEngine.Version && attempt.ExerciseVersion == exercise.Version) return null;
        GradeResult now = Grader.Grade(exercise, attempt.AnswerText, 0, GradeOptions.WithoutAdvice);
        return RegradeNote.Of(attempt.EngineVersion, attempt.ExerciseVersion, attempt.Passed, attempt.GradedFigures, now, UnitsRead);
    }
}
