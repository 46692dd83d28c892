using System.Collections.Immutable;
using LiteDB;
using TyingClass.Lessons.Grading;
using TyingClass.Storage.Files;

namespace TyingClass.Storage.Attempts;

/// <summary>Graded answers, added and never changed.</summary>
public sealed class AttemptStore
{
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
        if (!grade.IsAttempt) throw new ArgumentException("An answer that could not be read is not an attempt.", nameof(grade));
        return database.Write(db =>
        {
            Standing before = StandingIn(db, personId, exerciseId);
            Attempt attempt = Attempt.Of(personId, exerciseId, before.Attempts + 1, time.GetUtcNow(), answerText, grade);
            Attempts(db).Insert(AttemptDocument.From(attempt));
            StandingDocument.Standings(db).Upsert(StandingDocument.From(before.After(attempt)));
            return attempt;
        });
    }

    /// <summary>One person's attempts at one exercise, first to last.</summary>
    public ImmutableArray<Attempt> Of(string personId, string exerciseId) => database.Read(db =>
        Attempts(db).FindAll("slot = @0", AttemptDocument.Slot(personId, exerciseId))
            .Select(AttemptDocument.ToAttempt).OrderBy(a => a.Number).ToImmutableArray());

    /// <summary>One person's first answers to exercises that the engine marks, in no order.</summary>
    public ImmutableArray<FirstAnswer> FirstAnswersOf(string personId) => database.Read(db =>
        Attempts(db).FindFields("personId = @0 and number = 1 and awaitsReview = false", "{exerciseId, atTicks, passed, misread: feedback.misreadConcept}", personId)
            .Select(d => new FirstAnswer(d["exerciseId"].AsString, d["atTicks"].ToTime(), d["passed"].AsBoolean, d["misread"].TextOrNull()))
            .ToImmutableArray());

    /// <summary>Zero attempts when there are none.</summary>
    public Standing StandingOf(string personId, string exerciseId) => database.Read(db => StandingIn(db, personId, exerciseId));

    public ImmutableArray<Standing> StandingsOf(string personId) => database.Read(db =>
        StandingDocument.Standings(db).FindAll("personId = @0", personId).Select(StandingDocument.ToStanding).ToImmutableArray());

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

    private static Standing StandingIn(ILiteDatabase db, string personId, string exerciseId) =>
        StandingDocument.Standings(db).FindById(AttemptDocument.Slot(personId, exerciseId)) is { } found
            ? StandingDocument.ToStanding(found)
            : new Standing(personId, exerciseId);

    private static ILiteCollection<BsonDocument> Attempts(ILiteDatabase db) => db.GetCollection(AttemptDocument.Collection);
}
