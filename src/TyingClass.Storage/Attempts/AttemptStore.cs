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

    private readonly Database database;
    private readonly TimeProvider time;

    internal AttemptStore(Database database, TimeProvider time) => (this.database, this.time) = (database, time);

    /// <summary>Keeps a graded answer under the next number of that person and exercise.</summary>
    /// <param name="answerText">Kept character by character.</param>
    /// <exception cref="ArgumentException">The answer could not be graded, so it is no attempt.</exception>
    /// <exception cref="StorageException">Nothing was kept.</exception>
    public Attempt Add(string personId, string exerciseId, string answerText, GradeResult grade)
    {
        ArgumentNullException.ThrowIfNull(grade);
        return database.Write(db =>
        {
            Standing before = StandingIn(db, personId, exerciseId);
            Attempt attempt = Attempt.Of(RandomId.New(), personId, exerciseId, before.Attempts + 1, time.GetUtcNow(), answerText, grade);
            Attempts(db).Insert(AttemptDocument.From(attempt));
            StandingDocument.Standings(db).Upsert(StandingDocument.From(before.After(attempt)));
            return attempt;
        });
    }

    /// <summary>One person's attempts at one exercise, first to last.</summary>
    public ImmutableArray<Attempt> Of(string personId, string exerciseId) => database.Read(db =>
        Attempts(db).FindAll("slot = @0", AttemptDocument.Slot(personId, exerciseId))
            .Select(AttemptDocument.ToAttempt).OrderBy(a => a.Number).ToImmutableArray());

    /// <summary>All of one person, oldest first.</summary>
    public ImmutableArray<Attempt> AllOf(string personId) => database.Read(db => AllOfIn(db, personId));

    /// <summary>Everyone's at one exercise, oldest first.</summary>
    public ImmutableArray<Attempt> At(string exerciseId) => database.Read(db =>
        Attempts(db).FindAll("exerciseId = @0", exerciseId).Select(AttemptDocument.ToAttempt).OrderBy(a => a.At).ToImmutableArray());

    public Attempt? Find(string attemptId) => database.Read(db =>
        Attempts(db).FindById(attemptId) is { } found ? AttemptDocument.ToAttempt(found) : null);

    /// <summary>Adds a person's word on an attempt; the standing follows it.</summary>
    /// <param name="expectedJudgments">How many there were on the page it was written on.</param>
    /// <returns>Null when there is no such attempt; not saved when someone else judged it meanwhile.</returns>
    public EditOutcome<Attempt>? Judge(string attemptId, int expectedJudgments, Person by, bool accepted, string reason)
    {
        ArgumentNullException.ThrowIfNull(by);
        ArgumentException.ThrowIfNullOrWhiteSpace(reason);
        return database.Write(db =>
        {
            if (Attempts(db).FindById(attemptId) is not { } document) return null;
            Attempt attempt = AttemptDocument.ToAttempt(document);
            if (attempt.Judgments.Length != expectedJudgments) return new EditOutcome<Attempt>(false, attempt);
            Judgment judgment = new(by.Id, by.Label, time.GetUtcNow(), accepted, CleanText.Lines(reason, MostReasonLength));
            Attempt judged = attempt with { Judgments = attempt.Judgments.Add(judgment) };
            Attempts(db).Update(AttemptDocument.From(judged));
            Recount(db, attempt.PersonId, attempt.ExerciseId);
            return new EditOutcome<Attempt>(true, judged);
        });
    }

    /// <summary>Zero attempts when there are none.</summary>
    public Standing StandingOf(string personId, string exerciseId) => database.Read(db => StandingIn(db, personId, exerciseId));

    public ImmutableArray<Standing> StandingsOf(string personId) => database.Read(db => StandingsOfIn(db, personId));

    /// <summary>Of these people, in no order.</summary>
    public ImmutableArray<Standing> StandingsOf(IEnumerable<string> personIds) => database.Read(db =>
        StandingDocument.Standings(db).FindAll("personId IN @0", new BsonArray(personIds.Select(id => new BsonValue(id)))).Select(StandingDocument.ToStanding).ToImmutableArray());

    /// <summary>Of everyone, in no order.</summary>
    public ImmutableArray<Standing> AllStandings() => database.Read(db =>
        StandingDocument.Standings(db).FindAll().Select(StandingDocument.ToStanding).ToImmutableArray());

    internal static void Prepare(ILiteDatabase db)
    {
        Attempts(db).EnsureIndex("slot", "$.slot");
        Attempts(db).EnsureIndex("exerciseId", "$.exerciseId");
        Attempts(db).EnsureIndex("personId", "$.personId");
        // The database's own word that no two attempts share a number.
        Attempts(db).EnsureIndex("place", "$.place", unique: true);
    }

    internal static ImmutableArray<Attempt> AllOfIn(ILiteDatabase db, string personId) =>
        [.. Attempts(db).FindAll("personId = @0", personId).Select(AttemptDocument.ToAttempt).OrderBy(a => a.At)];

    internal static ImmutableArray<Standing> StandingsOfIn(ILiteDatabase db, string personId) =>
        [.. StandingDocument.Standings(db).FindAll("personId = @0", personId).Select(StandingDocument.ToStanding)];

    internal static void DeleteOf(ILiteDatabase db, string personId)
    {
        Attempts(db).DeleteMany(BsonExpression.Create("personId = @0", personId));
        StandingDocument.Standings(db).DeleteMany(BsonExpression.Create("personId = @0", personId));
    }

    /// <summary>Numbers go on after those already there; times stay.</summary>
    internal static int Move(ILiteDatabase db, string fromPersonId, string toPersonId)
    {
        List<Attempt> all = [.. Attempts(db).FindAll("personId = @0", fromPersonId).Select(AttemptDocument.ToAttempt).OrderBy(a => a.Number)];
        StandingDocument.Standings(db).DeleteMany(BsonExpression.Create("personId = @0", fromPersonId));
        foreach (IGrouping<string, Attempt> slot in all.GroupBy(a => a.ExerciseId))
        {
            int next = StandingIn(db, toPersonId, slot.Key).Attempts;
            foreach (Attempt attempt in slot) Attempts(db).Update(AttemptDocument.From(attempt with { PersonId = toPersonId, Number = ++next }));
            Recount(db, toPersonId, slot.Key);
        }

        return all.Count;
    }

    private static void Recount(ILiteDatabase db, string personId, string exerciseId)
    {
        IEnumerable<Attempt> attempts = Attempts(db).FindAll("slot = @0", AttemptDocument.Slot(personId, exerciseId)).Select(AttemptDocument.ToAttempt).OrderBy(a => a.Number);
        StandingDocument.Standings(db).Upsert(StandingDocument.From(Standing.Of(personId, exerciseId, attempts)));
    }

    private static Standing StandingIn(ILiteDatabase db, string personId, string exerciseId) =>
        StandingDocument.Standings(db).FindById(AttemptDocument.Slot(personId, exerciseId)) is { } found
            ? StandingDocument.ToStanding(found)
            : new Standing(personId, exerciseId);

    private static ILiteCollection<BsonDocument> Attempts(ILiteDatabase db) => db.GetCollection(AttemptDocument.Collection);
}
