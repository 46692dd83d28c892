using System.Collections.Immutable;
using TyingClass.Lessons.Courses;
using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Kinds;
using TyingClass.Lessons.Kinds.Predict;
using TyingClass.Recipes.Text;
using TyingClass.Storage.Classes;
using TyingClass.Storage.Evenings;
using TyingClass.Storage.People;
using TyingClass.Telling.Reasons;
using TyingClass.Web.Classes;
using TyingClass.Web.Editing;
using TyingClass.Web.Identity;

namespace TyingClass.Web.Evenings;

/// <summary>What a question to the room reads and changes.</summary>
public sealed record RoomStores(RoomQuestionStore Questions, AccountStore Accounts);

/// <summary>Puts questions to the room of the visitor's class, takes answers and reveals what the engine says.</summary>
public sealed class RoomDesk(ICourseSource course, RoomStores store, ClassAccess access, Visitor visitor, UntilWritten memory, TimeProvider time)
{
    public ClassRoom? Room => access.Current;

    /// <summary>The question before the room now; null when there is none, or no class.</summary>
    public RoomView? Now() => Room is { } room && store.Questions.Current(room.Id) is { } question ? View(room, question) : null;

    /// <summary>Closed ones, the latest first.</summary>
    public IEnumerable<RoomView> Before() =>
        Room is { } room ? store.Questions.OfClass(room.Id).Where(q => q.ClosedAt is not null).Reverse().Select(q => View(room, q)) : [];

    /// <summary>Exercises that can be put to a room, by lesson, to choose from.</summary>
    public IEnumerable<(Lesson Lesson, ImmutableArray<Exercise> Questions)> Choices() => course.Current.Lessons
        .Select(l => (l, l.Exercises.Where(e => e.Kind is IPutToRoom).ToImmutableArray()))
        .Where(l => !l.Item2.IsEmpty);

    /// <returns>What is wrong; null when the question is put.</returns>
    public string? PutExercise(string exerciseId)
    {
        if (Room is not { } room) return "You have no class yet.";
        if (!course.Current.TryFindExercise(exerciseId, out _, out Exercise exercise) || exercise.Kind is not IPutToRoom)
            return "Choose a question from the list.";
        store.Questions.Put(Blank(room, exercise) with { ExerciseId = exercise.Id });
        return null;
    }

    /// <summary>Questions kept to be asked some evening: those of the class this one was copied from.</summary>
    public IEnumerable<RoomQuestion> Prepared() => Room is { } room ? store.Questions.Prepared(room.Id) : [];

    /// <returns>What is wrong; null when the question is put.</returns>
    public string? PutPrepared(string questionId)
    {
        if (!IsOurs(questionId) || store.Questions.Find(questionId) is not { IsPrepared: true } question) return "That question is no longer on the list.";
        if (ExerciseOf(question) is not { } exercise)
            return $"The exercise of “{question.Title}” has left the course since it was asked. Take it off the list and ask another.";
        store.Questions.Put(question with { Title = exercise.Title, Choices = exercise.Choices });
        return null;
    }

    public void Forget(string questionId)
    {
        if (IsOurs(questionId)) store.Questions.Forget(questionId);
    }

    /// <param name="ask">One of <see cref="Prediction.Asks"/>.</param>
    /// <returns>Everything that is wrong; empty when the question is put.</returns>
    public ImmutableArray<string> PutRecipe(string recipeText, string ask)
    {
        if (Room is not { } room) return ["You have no class yet."];
        if (!Prediction.Asks.Contains(ask)) return ["Choose what to ask."];
        ParseResult<Recipes.Model.Recipe> parsed = RecipeParser.Parse(recipeText);
        if (parsed.Value is not { } recipe) return [.. parsed.Errors.Select(e => $"Line {e.Line}: {e.Text}")];
        Exercise question = Prediction.About(recipe, ask);
        store.Questions.Put(Blank(room, question) with { RecipeText = recipeText, Ask = ask });
        return [];
    }

    /// <returns>False when it was too late, or is no question of this person's class.</returns>
    public bool Answer(string questionId, int choice) =>
        visitor.Person is { } person && IsOurs(questionId) && store.Questions.Answer(questionId, person.Id, choice);

    /// <returns>What is wrong; null when it is revealed.</returns>
    public string? Reveal(string questionId)
    {
        if (!IsOurs(questionId) || store.Questions.Find(questionId) is not { } question) return "That question is gone.";
        if (ExerciseOf(question) is not { } exercise)
            return "The exercise has left the course since it was asked: there is nothing to compute. Close it and ask another.";
        if (((IPutToRoom)exercise.Kind).RoomAnswer(exercise) is not { } answer)
            return "The engine gives no single answer for this fly. Close it and ask another.";
        store.Questions.Reveal(questionId, new RoomAnswer(answer.Choice, answer.Feedback.WhatItWouldDo, answer.Feedback.Why, time.GetUtcNow()));
        return null;
    }

    public void Close(string questionId)
    {
        if (IsOurs(questionId)) store.Questions.Close(questionId);
    }

    private static RoomQuestion Blank(ClassRoom room, Exercise exercise) =>
        new("", room.Id, exercise.Title, ((IPutToRoom)exercise.Kind).RoomChoices(exercise), default);

    private bool IsOurs(string questionId) => Room is { } room && store.Questions.Find(questionId)?.ClassId == room.Id;

    private RoomView View(ClassRoom room, RoomQuestion question)
    {
        Exercise? exercise = ExerciseOf(question);
        return new RoomView(
            question,
            exercise?.PromptHtml ?? "",
            exercise is null ? [] : [.. AskedRecipes.Of(exercise)],
            store.Questions.Tally(question.Id),
            visitor.Person is { } person ? store.Questions.AnswerOf(question.Id, person.Id) : null,
            store.Accounts.OfClass(room.Id).Count(p => p.Role == Role.Student))
        {
            Prompt = (exercise?.Kind as IPutToRoom)?.RoomPrompt ?? "",
            Because = question.Answer is null ? null : (exercise?.Task as PredictTask)?.Because,
            Asked = exercise is not null && question.Answer is not null && PictureOf(question, exercise) is { } picture ? (exercise, picture) : null,
        };
    }

    // Every phone looks again and again, and the answer takes a fly or two.
    private AskedPicture? PictureOf(RoomQuestion question, Exercise exercise) => memory.Get(
        $"picture of {question.Id}", exercise, () => Tuple.Create((exercise.Kind as IPutToRoom)?.RoomAnswer(exercise)?.Feedback.Picture)).Item1;

    private Exercise? ExerciseOf(RoomQuestion question)
    {
        if (question is { RecipeText: { } text, Ask: { } ask }) return RecipeParser.Parse(text).Value is { } recipe ? Prediction.About(recipe, ask) : null;
        return question.ExerciseId is { } id && course.Current.TryFindExercise(id, out _, out Exercise exercise) ? exercise : null;
    }
}
