using System.Diagnostics;
using LiteDB;
using TyingClass.Storage.Attempts;
using TyingClass.Storage.Files;
using TyingClass.Storage.People;

namespace TyingClass.Storage.Exchange;

/// <summary>
/// The attempts of a class that is being taken in. They are kept some at a time, for people who do not exist yet, so nobody sees them; what makes them seen is
/// the one write that adds those people and ends with <see cref="Adopt"/>. A note in the data says whose they will be: where it still stands and no import is
/// under way, one was cut off, and they are taken out again.
/// </summary>
internal sealed class StagedAttempts
{
    private const string Collection = "imports";

    // So many while others wait; then others have half as long.
    private const int AtOnce = 100;
    private const double RestTimes = 0.5;

    private readonly Database _database;
    private readonly string _id;
    private readonly Dictionary<(string PersonId, string ExerciseId), Sum> _sums = [];

    private StagedAttempts(Database database, string id, Dictionary<string, string> people) => (_database, _id, People) = (database, id, people);

    private readonly record struct Sum(Standing Standing, int LastNumber, bool InOrder);

    /// <summary>What the people of the file will be called here, by what they are called there.</summary>
    public IReadOnlyDictionary<string, string> People { get; }

    public static StagedAttempts Begin(Database database, DateTimeOffset now, ClassExport export) => database.Write(db =>
    {
        Dictionary<string, string> people = export.People.ToDictionary(
            p => p.Id, p => PersonStore.People(db).FindById(p.Id) is null ? p.Id : RandomId.New(), StringComparer.Ordinal);
        string id = RandomId.New();
        Imports(db).Insert(new BsonDocument
        {
            ["_id"] = id,
            ["atTicks"] = Ticks.From(now),
            ["people"] = Documents.ToArray(people.Values, p => new BsonValue(p)),
        });
        return new StagedAttempts(database, id, people);
    });

    /// <exception cref="StorageException">The disk failed; what was kept so far is still there.</exception>
    public void Add(IEnumerable<Attempt> attempts)
    {
        foreach (Attempt[] some in attempts.Select(ToHere).Chunk(AtOnce))
        {
            foreach (Attempt attempt in some) Count(attempt);
            Piece(db =>
            {
                foreach (Attempt attempt in some)
                {
                    bool isFree = db.Records(AttemptDocument.Collection).FindById(attempt.Id) is null;
                    db.Records(AttemptDocument.Collection).Insert(AttemptDocument.From(isFree ? attempt : attempt with { Id = RandomId.New() }));
                }
            });
        }

        foreach (Sum[] some in _sums.Values.Chunk(AtOnce))
        {
            Piece(db =>
            {
                foreach (Sum sum in some)
                {
                    if (sum.InOrder) StandingDocument.Keep(db, sum.Standing);
                    else AttemptStore.Recount(db, AttemptDocument.Slot(sum.Standing.PersonId, sum.Standing.ExerciseId));
                }
            });
        }
    }

    /// <summary>Part of the write that adds the people.</summary>
    public void Adopt(OpenData db)
    {
        MustBeThere(db);
        Imports(db).Delete(_id);
    }

    /// <summary>Takes out again what any import left that did not come to its end.</summary>
    public static void UndoAll(Database database)
    {
        foreach (BsonDocument import in database.Read(db => Imports(db).FindAll()))
        {
            foreach (string person in import["people"].ToList(p => p.AsString))
                Rested(() => database.Write(db => Undo(db, person)));
            database.Write(db => Imports(db).Delete(import["_id"]));
        }
    }

    private static bool Undo(OpenData db, string personId)
    {
        if (PersonStore.People(db).FindById(personId) is not null) return false;
        AttemptStore.DeleteOf(db, personId);
        return true;
    }

    private Attempt ToHere(Attempt attempt) => attempt with
    {
        PersonId = People[attempt.PersonId],
        // Whoever judged may be an instructor of the other server: the name stays, the id then points to nobody.
        Judgments = [.. attempt.Judgments.Select(j => j with { ByPersonId = People.GetValueOrDefault(j.ByPersonId, j.ByPersonId) })],
    };

    private void Count(Attempt attempt)
    {
        (string PersonId, string ExerciseId) slot = (attempt.PersonId, attempt.ExerciseId);
        Sum before = _sums.TryGetValue(slot, out Sum sum) ? sum : new Sum(new Standing(slot.PersonId, slot.ExerciseId), 0, InOrder: true);
        _sums[slot] = new Sum(before.Standing.After(attempt), attempt.Number, before.InOrder && attempt.Number > before.LastNumber);
    }

    private void Piece(Action<OpenData> write) => Rested(() => _database.Write(db =>
    {
        MustBeThere(db);
        write(db);
        return true;
    }));

    private void MustBeThere(OpenData db)
    {
        if (Imports(db).FindById(_id) is null)
            throw new StorageException("The class was not taken in: what had come in of it so far is gone. Nothing was kept. Try again.");
    }

    private static void Rested(Func<bool> write)
    {
        long began = Stopwatch.GetTimestamp();
        write();
        Thread.Sleep(TimeSpan.FromMilliseconds(1) + (RestTimes * Stopwatch.GetElapsedTime(began)));
    }

    private static Records Imports(OpenData db) => db.Records(Collection);
}
