using System.Collections.Immutable;
using LiteDB;
using TyingClass.Lessons.Grading;
using TyingClass.Storage.Editing;
using TyingClass.Storage.Files;
using TyingClass.Storage.People;

namespace TyingClass.Storage.Attempts;

/// <summary>Graded answers: added, judged by people, never graded anew.</summary>
public sealed class AttemptStore
{
    public const int MostReasonLength = 2000;

    private readonly Database _database;
    private readonly TimeProvider _time;

    internal AttemptStore(Database database, TimeProvider time) => (_database, _time) = (database, time);

    /// <summary>Keeps a graded answer under the next number of that person and exercise.</summary>
    /// <param name="answerText">Kept character by character.</param>
    /// <param name="form">Of the form it came in; null where there is none.</param>
    /// <returns>The attempt; the one that is there already where the same answer came out of the same form.</returns>
    /// <exception cref="ArgumentException">The answer could not be graded, so it is no attempt.</exception>
    /// <exception cref="StorageException">Nothing was kept.</exception>
    public Attempt Add(string personId, string exerciseId, string answerText, GradeResult grade, string? form = null)
    {
        ArgumentNullException.ThrowIfNull(grade);
        return _database.Write(db =>
        {
            if (form is not null && InSlot(db, personId, exerciseId).Find(a => a.Form == form && a.AnswerText == answerText) is { } kept) return kept;
            Standing before = StandingIn(db, personId, exerciseId);
            Attempt attempt = Attempt.Of(personId, exerciseId, NextNumber(db, before), _time.GetUtcNow(), answerText, grade) with { Form = form };
            Attempts(db).Insert(AttemptDocument.From(attempt));
            StandingDocument.Keep(db, before.After(attempt));
            return attempt;
        });
    }

    /// <summary>Takes in attempts that were kept elsewhere, as they are, all or none; the standings follow.</summary>
    /// <param name="attempts">Numbered without gaps, after those that person and exercise already have.</param>
    /// <exception cref="StorageException">Nothing was kept.</exception>
    internal void AddKept(IReadOnlyCollection<Attempt> attempts)
    {
        ArgumentNullException.ThrowIfNull(attempts);
        _database.Write(db =>
        {
            Attempts(db).Insert(attempts.Select(AttemptDocument.From));
            foreach ((string personId, string exerciseId) in attempts.Select(a => (a.PersonId, a.ExerciseId)).Distinct()) Recount(db, personId, exerciseId);
            return attempts.Count;
        });
    }

    /// <summary>One person's attempts at one exercise, first to last.</summary>
    public ImmutableArray<Attempt> Of(string personId, string exerciseId) => _database.Read(db => InSlot(db, personId, exerciseId).ToImmutableArray());

    /// <summary>Those of one person that a mentor or instructor has judged, oldest first.</summary>
    public ImmutableArray<Attempt> JudgedOf(string personId) => _database.Read(db =>
        Attempts(db).FindAll("personId = @0 AND COUNT($.judgments[*]) > 0", personId)
            .Select(AttemptDocument.ToAttempt).OrderBy(a => a.At).ToImmutableArray());

    /// <summary>All of one person, oldest first.</summary>
    public ImmutableArray<Attempt> AllOf(string personId) => _database.Read(db => AllOfIn(db, personId));

    /// <summary>Notes of all attempts of one person, oldest first.</summary>
    public ImmutableArray<AttemptNote> NotesOf(string personId) => _database.Read(db => Notes(db, "personId = @0", personId));

    /// <summary>Notes of everyone's attempts at one exercise, oldest first.</summary>
    public ImmutableArray<AttemptNote> NotesAt(string exerciseId) => _database.Read(db => Notes(db, "exerciseId = @0", exerciseId));

    public Attempt? Find(string attemptId) => _database.Read(db =>
        Attempts(db).FindById(attemptId) is { } found ? AttemptDocument.ToAttempt(found) : null);

    /// <summary>Adds a person's word on an attempt; the standing follows it.</summary>
    /// <param name="expectedJudgments">How many there were on the page it was written on.</param>
    /// <returns>Null when there is no such attempt; not saved when someone else judged it meanwhile.</returns>
    public EditOutcome<Attempt>? Judge(string attemptId, int expectedJudgments, Person by, bool accepted, string reason)
    {
        ArgumentNullException.ThrowIfNull(by);
        ArgumentNullException.ThrowIfNull(reason);
        return _database.Write(db =>
        {
            if (Attempts(db).FindById(attemptId) is not { } document) return null;
            Attempt attempt = AttemptDocument.ToAttempt(document);
            if (attempt.Judgments.Length != expectedJudgments) return new EditOutcome<Attempt>(false, attempt);
            Judgment judgment = new(by.Id, by.Label, _time.GetUtcNow(), accepted, CleanText.Lines(reason, MostReasonLength));
            Attempt judged = attempt with { Judgments = attempt.Judgments.Add(judgment) };
            Attempts(db).Update(AttemptDocument.From(judged));
            Recount(db, attempt.PersonId, attempt.ExerciseId);
            return new EditOutcome<Attempt>(true, judged);
        });
    }

    /// <summary>Zero attempts when there are none.</summary>
    public Standing StandingOf(string personId, string exerciseId) => _database.Read(db => StandingIn(db, personId, exerciseId));

    public ImmutableArray<Standing> StandingsOf(string personId) => _database.Read(db => StandingsOfIn(db, personId));

    /// <summary>Of these people, in no order.</summary>
    public ImmutableArray<Standing> StandingsOf(IEnumerable<string> personIds) => _database.Read(db =>
        personIds.SelectMany(id => StandingMemory.Of(db, id)).ToImmutableArray());

    /// <summary>Gives the notes of these attempts a checksum of their own, where they were kept before there was one.</summary>
    internal static int SealNotes(OpenData db, IEnumerable<BsonValue> ids)
    {
        List<BsonDocument> bare = [.. ids.Select(id => Attempts(db).FindById(id)).OfType<BsonDocument>().Where(a => !AttemptNote.HasSum(a))];
        return bare.Count == 0 ? 0 : Attempts(db).Update(bare.Select(old => AttemptDocument.From(AttemptDocument.ToAttempt(old))));
    }

    /// <summary>Works out anew a standing that was found damaged.</summary>
    /// <param name="slot">The id it was kept under.</param>
    internal static void Recount(OpenData db, string slot)
    {
        if (slot.Split('/') is [var personId, var exerciseId]) Recount(db, personId, exerciseId);
    }

    /// <summary>Works out anew each standing that is not there though its attempts are.</summary>
    internal static void RecountLost(OpenData db)
    {
        HashSet<string> there = [.. StandingDocument.Standings(db).Ids().Select(id => id.AsString)];
        foreach (string slot in Notes(db, "personId != @0", "").Select(n => AttemptDocument.Slot(n.PersonId, n.ExerciseId)).Distinct().ToList())
            if (!there.Contains(slot)) Recount(db, slot);
    }

    internal static void Prepare(OpenData db)
    {
        Attempts(db).EnsureIndex("slot", "$.slot");
        Attempts(db).EnsureIndex("exerciseId", "$.exerciseId");
        Attempts(db).EnsureIndex("personId", "$.personId");
        // Attempts kept before there were notes: found by index, so that a start need not read them all.
        Attempts(db).EnsureIndex("noted", "$.note.counts");
        while (Attempts(db).FindSome("$.note.counts = null", 500) is { Count: > 0 } some)
            Attempts(db).Update(some.Select(old => AttemptDocument.From(AttemptDocument.ToAttempt(old))));
        // The database's own word that no two attempts share a number.
        Attempts(db).EnsureIndex("place", "$.place", unique: true);
    }

    internal static ImmutableArray<Attempt> AllOfIn(OpenData db, string personId) =>
        [.. Attempts(db).FindAll("personId = @0", personId).Select(AttemptDocument.ToAttempt).OrderBy(a => a.At)
        .ThenBy(a => a.ExerciseId, StringComparer.Ordinal).ThenBy(a => a.Number)];

    internal static ImmutableArray<Standing> StandingsOfIn(OpenData db, string personId) => StandingMemory.Of(db, personId);

    internal static void DeleteOf(OpenData db, string personId)
    {
        Attempts(db).DeleteMany("personId = @0", personId);
        StandingDocument.DeleteOf(db, personId);
    }

    /// <summary>Numbers go on after those already there; times stay.</summary>
    internal static ImmutableArray<MovedWork> Move(OpenData db, string fromPersonId, string toPersonId)
    {
        List<Attempt> all = [.. Attempts(db).FindAll("personId = @0", fromPersonId).Select(AttemptDocument.ToAttempt).OrderBy(a => a.Number)];
        StandingDocument.DeleteOf(db, fromPersonId);
        foreach (IGrouping<string, Attempt> slot in all.GroupBy(a => a.ExerciseId))
        {
            int next = StandingIn(db, toPersonId, slot.Key).Attempts;
            foreach (Attempt attempt in slot) Attempts(db).Update(AttemptDocument.From(attempt with { PersonId = toPersonId, Number = ++next }));
            Recount(db, toPersonId, slot.Key);
        }

        return [.. all.Select(a => new MovedWork(a.Id, a.Number))];
    }

    /// <summary>Takes out again what <see cref="Move"/> moved, under its old numbers; what stays closes up.</summary>
    internal static void MoveBack(OpenData db, string fromPersonId, string toPersonId, IEnumerable<MovedWork> moved)
    {
        HashSet<string> exercises = [];
        foreach (MovedWork work in moved)
        {
            if (Attempts(db).FindById(work.Id) is not { } document || AttemptDocument.ToAttempt(document) is not { } attempt
                || attempt.PersonId != fromPersonId) continue;
            Attempts(db).Update(AttemptDocument.From(attempt with { PersonId = toPersonId, Number = work.Number }));
            exercises.Add(attempt.ExerciseId);
        }

        foreach (string exerciseId in exercises)
        {
            CloseUp(db, fromPersonId, exerciseId);
            Recount(db, fromPersonId, exerciseId);
            Recount(db, toPersonId, exerciseId);
        }
    }

    private static void CloseUp(OpenData db, string personId, string exerciseId)
    {
        int number = 0;
        foreach (Attempt attempt in Attempts(db).FindAll("slot = @0", AttemptDocument.Slot(personId, exerciseId)).Select(AttemptDocument.ToAttempt)
            .OrderBy(a => a.Number))
        {
            if (attempt.Number != ++number) Attempts(db).Update(AttemptDocument.From(attempt with { Number = number }));
        }
    }

    private static ImmutableArray<AttemptNote> Notes(OpenData db, string where, string value) =>
        [.. Attempts(db).FindFields(where, AttemptDocument.NoteFields, AttemptNote.Agrees, value).Select(AttemptNote.From).OrderBy(n => n.At)];

    /// <summary>From the notes alone; null where none fell short.</summary>
    internal static FailedTry? LastFailedIn(OpenData db, string slot) =>
        Notes(db, "slot = @0", slot).Where(n => n is { Counts: false, Waits: false }).MaxBy(n => n.Number) is { } last ? FailedTry.Of(last) : null;

    private static void Recount(OpenData db, string personId, string exerciseId)
    {
        List<Attempt> attempts = InSlot(db, personId, exerciseId);
        if (attempts.Count == 0) StandingDocument.Delete(db, personId, exerciseId);
        else StandingDocument.Keep(db, Standing.Of(personId, exerciseId, attempts));
    }

    private static List<Attempt> InSlot(OpenData db, string personId, string exerciseId) =>
        [.. Attempts(db).FindAll("slot = @0", AttemptDocument.Slot(personId, exerciseId)).Select(AttemptDocument.ToAttempt).OrderBy(a => a.Number)];

    // Past the number of an attempt that is damaged and so not counted, or was lost.
    private static int NextNumber(OpenData db, Standing before)
    {
        int number = before.Attempts + 1;
        while (Attempts(db).Count("place = @0", AttemptDocument.Place(before.PersonId, before.ExerciseId, number)) > 0) number++;
        return number;
    }

    private static Standing StandingIn(OpenData db, string personId, string exerciseId) =>
        StandingDocument.Standings(db).FindById(AttemptDocument.Slot(personId, exerciseId)) is { } found
            ? StandingDocument.ToStanding(found)
            // A standing that was damaged can be worked out again; none at all is the usual thing.
            : Standing.Of(personId, exerciseId, InSlot(db, personId, exerciseId));

    private static Records Attempts(OpenData db) => db.Records(AttemptDocument.Collection);
}
