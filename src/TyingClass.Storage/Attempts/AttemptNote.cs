using System.Collections.Immutable;
using LiteDB;
using TyingClass.Lessons.Grading;
using TyingClass.Storage.Files;

namespace TyingClass.Storage.Attempts;

/// <summary>What a view over many attempts needs of each, without its answer and feedback.</summary>
/// <param name="Counts">As <see cref="Attempt.Counts"/>; so with <paramref name="Waits"/>.</param>
/// <param name="AnswerKey">The same for the same answer, spaces around it ignored.</param>
/// <param name="Misreading">As the student was told.</param>
/// <param name="Missed">Goals not met, as asked.</param>
public sealed record AttemptNote(
    string Id, string PersonId, string ExerciseId, int Number, DateTimeOffset At, bool Counts, bool Waits,
    string AnswerKey, string? Misreading, string? MisreadConcept, ImmutableArray<string> Missed)
{
    public static AttemptNote Of(Attempt attempt)
    {
        ArgumentNullException.ThrowIfNull(attempt);
        Feedback? feedback = attempt.Feedback;
        return new AttemptNote(
            attempt.Id, attempt.PersonId, attempt.ExerciseId, attempt.Number, attempt.At, attempt.Counts, attempt.Waits,
            KeyOf(attempt.AnswerText), feedback?.Misreading, feedback?.MisreadConcept,
            feedback is null ? [] : [.. feedback.Goals.Where(g => !g.Met).Select(g => g.Asked).Distinct()]);
    }

    /// <summary>What <see cref="AnswerKey"/> is for an answer.</summary>
    public static string KeyOf(string answerText)
    {
        ArgumentNullException.ThrowIfNull(answerText);
        return RandomId.Hash(answerText.Trim())[..16];
    }

    /// <summary>Kept inside the attempt's document, so that it can be read without the rest.</summary>
    internal BsonDocument ToDocument() => new()
    {
        ["counts"] = Counts,
        ["waits"] = Waits,
        ["answerKey"] = AnswerKey,
        ["misreading"] = Misreading,
        ["misreadConcept"] = MisreadConcept,
        ["missed"] = Documents.ToArray(Missed, m => new BsonValue(m)),
    };

    /// <param name="document">The selection of <see cref="AttemptDocument.NoteFields"/>.</param>
    internal static AttemptNote From(BsonDocument document)
    {
        BsonValue note = document["note"];
        return new AttemptNote(
            document["_id"].AsString, document["personId"].AsString, document["exerciseId"].AsString, document["number"].AsInt32, document["atTicks"].ToTime(),
            note["counts"].AsBoolean, note["waits"].AsBoolean, note["answerKey"].AsString,
            note["misreading"].TextOrNull(), note["misreadConcept"].TextOrNull(), note["missed"].ToList(m => m.AsString));
    }
}
