using System.Collections.Immutable;
using System.Globalization;
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

    /// <summary>Kept inside the attempt's document, so that it can be read without the rest; with a checksum of it and of what is read beside it.</summary>
    internal BsonDocument ToDocument()
    {
        BsonDocument note = Bare();
        note[Checksum.Field] = SumOf(Id, PersonId, ExerciseId, Number, Ticks.From(At), Bare());
        return note;
    }

    private BsonDocument Bare() => new()
    {
        ["counts"] = Counts,
        ["waits"] = Waits,
        ["answerKey"] = AnswerKey,
        ["misreading"] = Misreading,
        ["misreadConcept"] = MisreadConcept,
        ["missed"] = Documents.ToArray(Missed, m => new BsonValue(m)),
    };

    /// <summary>Attempts kept before notes had a checksum have none.</summary>
    internal static bool HasSum(BsonDocument attempt) => attempt["note"] is BsonDocument note && note[Checksum.Field].IsInt64;

    /// <summary>What was read is what was written.</summary>
    /// <param name="document">The selection of <see cref="AttemptDocument.NoteFields"/>.</param>
    internal static bool Agrees(BsonDocument document)
    {
        if (document["note"] is not BsonDocument note || note[Checksum.Field] is not { IsInt64: true } kept) return false;
        BsonDocument bare = new();
        foreach ((string key, BsonValue value) in note.Where(field => field.Key != Checksum.Field)) bare[key] = value;
        return SumOf(document["_id"], document["personId"], document["exerciseId"], document["number"], document["atTicks"], bare) == kept.AsInt64;
    }

    // Under fixed names and in a fixed order, whatever the record calls them.
    private static long SumOf(params ReadOnlySpan<BsonValue> fields)
    {
        BsonDocument part = new();
        for (int i = 0; i < fields.Length; i++) part[i.ToString(CultureInfo.InvariantCulture)] = fields[i];
        return Checksum.OfPart(AttemptDocument.Collection, part);
    }

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
