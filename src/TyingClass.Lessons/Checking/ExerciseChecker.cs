using TyingClass.Lessons.Courses;
using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Grading;
using TyingClass.Lessons.Kinds;

namespace TyingClass.Lessons.Checking;

/// <summary>
/// Proves that an exercise does what its author says: the model answer passes, each wrong answer fails for the reason named, the key is clear.
/// </summary>
internal static class ExerciseChecker
{
    public static IEnumerable<AuthorError> Check(Exercise exercise)
    {
        if (KeyClearance.Complaint(exercise) is { } complaint) yield return At(exercise.Kind.Keys[0], "kind", complaint);
        foreach (CheckComplaint found in exercise.Kind.Check(exercise))
            yield return found.Place is { } place ? new AuthorError(exercise.Place.File, place.Line, place.Column, $"{exercise.Id}: {found.Text}")
                : At(found.Key, found.OtherKey, found.Text);
        if (exercise is { ModelAnswer: { } model, Kind.IsMarkedByPerson: false })
        {
            GradeResult result = Grader.Grade(exercise, model, 0, GradeOptions.WithoutAdvice);
            if (!result.IsAttempt) yield return At("model answer", "", $"The model answer is refused: {result.Problems[0].Text}");
            else if (!result.Passed) yield return At("model answer", "", $"The model answer fails: {Misses(result)}.");
        }

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

    private static string? Complaint(Exercise exercise, WrongAnswer wrong)
    {
        string shown = Shown(wrong.Answer);
        GradeResult result = Grader.Grade(exercise, wrong.Answer, 0, GradeOptions.WithoutAdvice);
        if (!result.IsAttempt)
            return wrong.FindingNamed == WrongAnswer.Refused ? null
                : $"The wrong answer {shown} is refused, not marked wrong: {result.Problems[0].Text} Write “named: {WrongAnswer.Refused}” if that is meant.";
        if (exercise.Kind.IsMarkedByPerson) return $"An answer to {exercise.Kind.Word} is marked by a person, so it can have no wrong answers here.";
        if (result.Passed) return $"The wrong answer {shown} passes.";
        if (wrong.FindingNamed is not { } named || Names(exercise, result).Contains(named, StringComparer.OrdinalIgnoreCase)) return null;
        return $"The wrong answer {shown} fails, but not for “{named}”. What is named: {string.Join("; ", Names(exercise, result).Distinct())}.";
    }

    // What an author may name: what was missed (of a fly, the goal), a finding of the report, its verdict, a misreading (by number or by what it says).
    private static IEnumerable<string> Names(Exercise exercise, GradeResult result)
    {
        Feedback feedback = result.Feedback!;
        foreach (string missed in exercise.Kind.Missed(exercise, result)) yield return missed;
        foreach (Balance.Reports.Finding finding in result.Report?.Findings ?? []) yield return finding.Code;
        if ((feedback.Misreading ?? feedback.Remark) is { } say)
        {
            yield return say;
            for (int i = 0; i < exercise.Misreadings.Length; i++)
            {
                if (exercise.Misreadings[i].Say == say) yield return $"misreading {i + 1}";
            }
        }
    }

    private static string Misses(GradeResult result) =>
        string.Join("; ", result.Feedback!.Goals.Where(g => !g.Met).Select(g => $"{g.Asked}: {g.Reached}"));

    private static string Shown(string answer) => answer.Contains('\n', StringComparison.Ordinal) ? "(a recipe)" : $"“{answer}”";
}
