using LiteDB;
using TyingClass.Storage.Attempts;
using TyingClass.Storage.BenchLog;
using TyingClass.Storage.Classes;
using TyingClass.Storage.Comments;
using TyingClass.Storage.Evenings;
using TyingClass.Storage.Files;
using TyingClass.Storage.Patterns;
using TyingClass.Storage.Phrases;
using TyingClass.Storage.Practice;

namespace TyingClass.Storage.People;

/// <summary>Removing people so that it can be undone for a while, and then for good.</summary>
public sealed class Trash
{
    private readonly Database _database;
    private readonly TimeProvider _time;

    internal Trash(Database database, TimeProvider time) => (_database, _time) = (database, time);

    // Every collection that keeps something of a person has its line here, or the person is not wholly removed.
    private static readonly Action<OpenData, string>[] DeleteAllOf =
    [
        AttemptStore.DeleteOf,
        PracticeStore.DeleteOf,
        CommentStore.DeleteOf,
        PhraseStore.DeleteOf,
        PatternStore.DeleteOf,
        BenchLogStore.DeleteOf,
        RoomQuestionStore.DeleteOf,
        GuestMoves.DeleteOf,
        ClassRoomStore.DropDeputy,
    ];

    /// <summary>Signs the person out and hides them with all their work.</summary>
    public Person? Remove(string personId) => _database.Write(db => AccountStore.Change(db, personId, p =>
        p.Role == Role.Instructor ? null : p with { RemovedAt = p.RemovedAt ?? _time.GetUtcNow(), Stamp = RandomId.New() }));

    public Person? Restore(string personId) => _database.Write(db => AccountStore.Change(db, personId, p => p with { RemovedAt = null }));

    /// <summary>False while the clock may be wrong: see <see cref="ClockWatch"/>. To be asked once a day, before anything is emptied.</summary>
    public bool MayBelieveClock() => _database.Write(db => ClockWatch.MayBelieve(db, _time.GetUtcNow()));

    /// <summary>Deletes for good whoever has been in the trash for more than <see cref="PersonStore.DaysInTrash"/> days.</summary>
    public void Empty() => _database.Write(db =>
    {
        DateTimeOffset now = _time.GetUtcNow();
        long before = (now - TimeSpan.FromDays(PersonStore.DaysInTrash)).UtcTicks;
        foreach (BsonDocument document in PersonStore.People(db).FindAll("removedTicks > 0 AND removedTicks < @0", before))
        {
            string id = document["_id"].AsString;
            foreach (Action<OpenData, string> deleteOf in DeleteAllOf) deleteOf(db, id);
            PersonStore.People(db).Delete(id);
        }

        GuestMoves.Empty(db, now);
        return true;
    });
}
