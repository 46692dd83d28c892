using System.Collections.Immutable;
using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Grading;
using TyingClass.Lessons.Kinds.Predict;
using TyingClass.Recipes.Text;

namespace TyingClass.Lessons.Tests.Answers;

/// <summary>One row of answers.md.</summary>
internal sealed record AnswerRow(
    string Exercise, string Answer, string Is, ImmutableArray<string> Mentions, ImmutableArray<string> Never, ImmutableArray<string> Drawn)
{
    public static ImmutableArray<AnswerRow> All { get; } =
    [
        .. File.ReadLines(Path.Combine(Repo.Root, "tests", "TyingClass.Lessons.Tests", "Answers", "answers.md"))
            .Select(line => line.Split('|', StringSplitOptions.TrimEntries))
            .Where(cells => cells.Length is 7 or 8 && cells[1] != "exercise" && !cells[1].StartsWith('-'))
            .Select(cells => new AnswerRow(cells[1], cells[2], cells[3], Words(cells[4]), Words(cells[5]), cells.Length == 8 ? Words(cells[6]) : [])),
    ];

    /// <summary>As the form would send it.</summary>
    public string Text(Exercise exercise)
    {
        if (Is.StartsWith("fresh", StringComparison.Ordinal) && Answer.Contains("reason", StringComparison.Ordinal)) return FreshText(exercise);
        if (Answer == "given") return exercise.RecipeText!;
        if (Answer.StartsWith("wrong ", StringComparison.Ordinal)) return exercise.WrongAnswers[Answer[^1] - '1'].Answer;
        if (exercise.Kind.Word == "tub test") return Answer.Replace("; ", "\n", StringComparison.Ordinal);
        if (!exercise.Kind.AnswerIsRecipe) return exercise.Kind.Word == "sort" ? Answer.Replace(", ", "\n", StringComparison.Ordinal) : Answer;
        bool ofModel = Answer.StartsWith("model", StringComparison.Ordinal) || Answer == "bare";
        RecipeDraft draft = RecipeDraft.Parse(ofModel ? exercise.ModelAnswer! : exercise.RecipeText!).Value!;
        if (Answer == "bare") while (draft.PartCount > 0) draft = draft.RemovePart(0);
        if (Answer.StartsWith("model without ", StringComparison.Ordinal)) return draft.RemovePart(Answer[^1] - '0').ToText();
        foreach (string change in Answer.Split([';', ','], StringSplitOptions.TrimEntries).Where(c => c.Contains('=', StringComparison.Ordinal)))
        {
            string[] pair = change.Split('=', StringSplitOptions.TrimEntries);
            draft = draft.With(pair[0], pair[1]);
        }

        return draft.ToText();
    }

    private string FreshText(Exercise exercise)
    {
        OfferedReasons offered = OfferedReasons.Of(exercise)!;
        Exercise fresh = FreshProblem.Of(exercise, 1)!;
        string key = fresh.Kind.RightAnswer(fresh)!;
        int reason = Answer.StartsWith("right reason", StringComparison.Ordinal) ? offered.Right : offered.Right % offered.Said.Length + 1;
        return new PredictAnswer(1, reason, Answer.EndsWith("right fresh", StringComparison.Ordinal) ? key : fresh.Choices.First(c => c != key)).Text;
    }

    public GradeResult Grade(Exercise exercise, string text) =>
        Grader.Grade(exercise, text, Is.StartsWith("fresh", StringComparison.Ordinal) ? 1 : 0, GradeOptions.WithoutAdvice);

    public override string ToString() => $"{Exercise}: {Answer}";

    private static ImmutableArray<string> Words(string cell) => [.. cell.Split(',', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)];
}
