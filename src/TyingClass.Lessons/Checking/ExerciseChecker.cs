using TyingClass.Lessons.Courses;
using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Grading;
using TyingClass.Lessons.Quantities;
using TyingClass.Recipes.Text;

namespace TyingClass.Lessons.Checking;

/// <summary>Proves that an exercise does what its author says: the model answer passes, each wrong answer fails for the reason named, the key is clear.</summary>
internal static class ExerciseChecker
{
    private const string Refused = "refused";

    // Hints are for students; looking for one takes longer than all the rest.
    private static readonly GradeOptions Options = new() { Adviser = (_, _, _) => [] };

    public static IEnumerable<AuthorError> Check(Exercise exercise)
    {
        if (KeyClearance.Complaint(exercise) is { } complaint) yield return At("quantity", "ask", complaint);
        if (exercise.Kind == ExerciseKind.Repair && GoalCheck.AllMet(exercise, Start(exercise)))
            yield return At("recipe", "file", "The fly given already meets every goal: there is nothing to repair.");
        if (exercise.Kind == ExerciseKind.TubTest) yield break;

        if (exercise is { ModelAnswer: { } model, Kind: not ExerciseKind.Explain })
        {
            GradeResult result = Grader.Grade(exercise, model, 0, Options);
            if (!result.IsAttempt) yield return At("model answer", "", $"The model answer is refused: {result.Problems[0].Text}");
            else if (!result.Passed) yield return At("model answer", "", $"The model answer fails: {Misses(result)}.");
        }

        if (exercise.Kind == ExerciseKind.Compose && BareHookPasses(exercise))
            yield return At("goals", "kind", "The model answer's hook passes with nothing tied on it. Set a goal that a bare hook misses, such as the number of parts or the mass of one.");
        if (exercise.Kind is ExerciseKind.Repair or ExerciseKind.Compose && !exercise.WrongAnswers.Any(w => w.FindingNamed is not (null or Refused)))
            yield return At("wrong answers", "kind", "List at least one wrong answer that fails, and say with “named:” for what: a goal missed, a finding of the report or a misreading.");
        foreach (WrongAnswer wrong in exercise.WrongAnswers)
        {
            if (Complaint(exercise, wrong) is { } text) yield return At("wrong answers", "", text);
        }

        AuthorError At(string key, string otherKey, string text)
        {
            (int line, int column) = exercise.Place.Keys.ContainsKey(key) ? exercise.Place.Of(key) : exercise.Place.Of(otherKey);
            return new AuthorError(exercise.Place.File, line, column, $"{exercise.Id}: {text}");
        }
    }

    private static bool BareHookPasses(Exercise exercise)
    {
        if (exercise.ModelAnswer is not { } model || RecipeDraft.Parse(model).Value is not { } draft) return false;
        while (draft.PartCount > 0) draft = draft.RemovePart(draft.PartCount - 1);
        return Grader.Grade(exercise, draft.ToText(), 0, Options).Passed;
    }

    private static string? Complaint(Exercise exercise, WrongAnswer wrong)
    {
        string shown = Shown(wrong.Answer);
        GradeResult result = Grader.Grade(exercise, wrong.Answer, 0, Options);
        if (!result.IsAttempt)
            return wrong.FindingNamed == Refused ? null : $"The wrong answer {shown} is refused, not marked wrong: {result.Problems[0].Text} Write “named: {Refused}” if that is meant.";
        if (exercise.Kind == ExerciseKind.Explain) return "An explanation is marked by a person, so it can have no wrong answers here.";
        if (result.Passed) return $"The wrong answer {shown} passes.";
        if (wrong.FindingNamed is not { } named || Names(exercise, result).Contains(named, StringComparer.OrdinalIgnoreCase)) return null;
        return $"The wrong answer {shown} fails, but not for “{named}”. What is named: {string.Join("; ", Names(exercise, result).Distinct())}.";
    }

    // What an author may name: a goal missed, a finding of the report, its verdict, a misreading (by number or by what it says).
    private static IEnumerable<string> Names(Exercise exercise, GradeResult result)
    {
        Feedback feedback = result.Feedback!;
        if (exercise.Goals.Length > 0)
        {
            foreach ((Goal goal, GoalResult outcome) in exercise.Goals.Zip(feedback.Goals))
            {
                if (!outcome.Met) yield return goal.Quantity;
            }
        }

        foreach (Balance.Reports.Finding finding in result.Report?.Findings ?? []) yield return finding.Code;
        if (feedback.Misreading is { } say)
        {
            yield return say;
            for (int i = 0; i < exercise.Misreadings.Length; i++)
            {
                if (exercise.Misreadings[i].Say == say) yield return $"misreading {i + 1}";
            }
        }
    }

    private static FlyFigures Start(Exercise exercise)
    {
        FlyFigures given = new(AskedFlies.Given(exercise.RecipeText!));
        return new FlyFigures(given.Recipe, given);
    }

    private static string Misses(GradeResult result) =>
        string.Join("; ", result.Feedback!.Goals.Where(g => !g.Met).Select(g => $"{g.Asked}: {g.Reached}"));

    private static string Shown(string answer) => answer.Contains('\n', StringComparison.Ordinal) ? "(a recipe)" : $"“{answer}”";
}
