using System.Collections.Immutable;
using TyingClass.Storage.Attempts;
using TyingClass.Storage.Evenings;
using TyingClass.Storage.People;

namespace TyingClass.Storage.Exchange;

/// <summary>What no schema can say: that the parts of an export belong together, and fit what this server keeps.</summary>
internal static class ImportCheck
{
    private const int MostProblems = 50;

    public static ImmutableArray<string> Problems(ClassExport export) =>
        export.Format != ClassExport.CurrentFormat ? [OtherFormat(export.Format)] : [.. All(export).Take(MostProblems)];

    internal static string OtherFormat(int format) =>
        $"$.format: this server reads format {ClassExport.CurrentFormat}, the file has {format}. Update the older of the two servers.";

    private static IEnumerable<string> All(ClassExport export)
    {
        if (!TimeZoneInfo.TryFindSystemTimeZoneById(export.Class.TimeZone, out _))
            yield return $"$.class.timeZone: this server knows no time zone “{Clip(export.Class.TimeZone)}”. Write one as in “Europe/Oslo” or “UTC”.";
        HashSet<string> people = new(StringComparer.Ordinal);
        foreach ((ExportedPerson person, int i) in export.People.Select((p, i) => (p, i)))
        {
            if (!IsId(person.Id)) yield return $"$.people[{i}].id: “{Clip(person.Id)}” cannot be an id.";
            if (!people.Add(person.Id)) yield return $"$.people[{i}].id: two people have the id “{Clip(person.Id)}”.";
            if (PersonStore.CleanName(person.Name) is null) yield return $"$.people[{i}].name: a name is missing.";
            if (person.Role is not (Role.Student or Role.Mentor))
                yield return $"$.people[{i}].role: {person.Role} does not belong in a class; only Student and Mentor do.";
        }

        HashSet<string> places = new(StringComparer.Ordinal);
        foreach ((Attempt attempt, int i) in export.Attempts.Select((a, i) => (a, i)))
        {
            if (!IsId(attempt.Id)) yield return $"$.attempts[{i}].id: “{Clip(attempt.Id)}” cannot be an id.";
            if (!people.Contains(attempt.PersonId)) yield return $"$.attempts[{i}].personId: nobody in “people” has the id “{Clip(attempt.PersonId)}”.";
            if (!IsId(attempt.ExerciseId)) yield return $"$.attempts[{i}].exerciseId: “{Clip(attempt.ExerciseId)}” cannot be an exercise.";
            if (attempt.Number < 1) yield return $"$.attempts[{i}].number: attempts count from 1.";
            if (!places.Add($"{attempt.PersonId}/{attempt.ExerciseId}/{attempt.Number}"))
                yield return $"$.attempts[{i}].number: this person has two attempts number {attempt.Number} at {attempt.ExerciseId}.";
        }

        foreach (string problem in export.Comments.Where(c => !people.Contains(c.PersonId))
            .Select(c => $"$.comments: a comment is to “{Clip(c.PersonId)}”, who is not among “people”.")) yield return problem;
        HashSet<string> patterns = [.. export.Patterns.Select(p => p.Id)];
        if (export.Practice.Any(p => !people.Contains(p.Attempt.PersonId) || p.Attempt.ExerciseId != p.Problem.Id))
            yield return "$.practice: an answer is from nobody in “people”, or to another problem than the one beside it.";
        if (export.Practice.GroupBy(p => (p.Attempt.PersonId, p.Problem.Id, p.Attempt.Number)).Any(g => g.Count() > 1))
            yield return "$.practice: a person has two answers of one number at one problem.";
        if (export.Patterns.Any(p => !IsId(p.Id) || !people.Contains(p.OwnerId))) yield return "$.patterns: a pattern belongs to nobody in “people”.";
        if (patterns.Count < export.Patterns.Length) yield return "$.patterns: two patterns have one id.";
        if (export.Patterns.Any(p => !export.PatternRevisions.Any(r => r.PatternId == p.Id && r.Number == p.Revision)))
            yield return "$.patternRevisions: the latest revision of a pattern is missing.";
        if (export.PatternRevisions.Any(r => !patterns.Contains(r.PatternId))
            || export.PatternRevisions.GroupBy(r => (r.PatternId, r.Number)).Any(g => g.Count() > 1))
            yield return "$.patternRevisions: a revision belongs to no pattern of the file, or stands there twice.";
        HashSet<string> reviews = [.. export.Reviews.Select(r => r.Id)];
        if (export.Reviews.Any(r => !patterns.Contains(r.PatternId) || !people.Contains(r.OwnerId)))
            yield return "$.reviews: a review is of no pattern of the file, or of nobody in “people”.";
        if (export.ReviewComments.Any(c => !patterns.Contains(c.PatternId) || !reviews.Contains(c.ReviewId)))
            yield return "$.reviewComments: a comment belongs to no pattern and review of the file.";
        if (export.BenchLog.Any(e => !people.Contains(e.PersonId))) yield return "$.benchLog: an entry is by nobody in “people”.";
        foreach ((ExportedEvening evening, int i) in export.Evenings.Select((e, i) => (e, i)))
        {
            if (evening.Number is < 1 or > 60) yield return $"$.evenings[{i}].number: evenings count from 1 to 60.";
            if (evening.Plan.Length > EveningPlan.MostNoteLength || evening.Demonstrations.Length > EveningPlan.MostNoteLength)
                yield return $"$.evenings[{i}]: a note is longer than {EveningPlan.MostNoteLength} characters.";
        }

        foreach ((ExportedQuestion question, int i) in export.RoomQuestions.Select((q, i) => (q, i)))
        {
            if (question.Answers.Any(a => !people.Contains(a.PersonId) || a.Choice < 0 || a.Choice >= question.Choices.Length))
                yield return $"$.roomQuestions[{i}].answers: an answer is from nobody in “people”, or to no choice of the question.";
        }
    }

    // The separator of compound keys may not stand in an id.
    private static bool IsId(string id) => id.Length is > 0 and <= 100 && !id.Contains('/', StringComparison.Ordinal) && !id.Any(char.IsControl);

    private static string Clip(string text) => text.Length > 40 ? text[..40] + "…" : text;
}
