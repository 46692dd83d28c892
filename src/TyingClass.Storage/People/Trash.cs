using LiteDB;
using TyingClass.Storage.Attempts;
using TyingClass.Storage.BenchLog;
using TyingClass.Storage.Comments;
using TyingClass.Storage.Evenings;
using TyingClass.Storage.Files;
using TyingClass.Storage.Patterns;
using TyingClass.Storage.Practice;

namespace TyingClass.Storage.People;

/// <summary>Removing people so that it can be undone for a while, and then for good.</summary>
public sealed class Trash
{
    private readonly Database database;
    private readonly TimeProvider time;

    internal Trash(Database database, TimeProvider time) => (this.database, this.time) = (database, time);

    // Every collection that keeps something of a person has its line here, or the person is not wholly removed.
    private static readonly Action<ILiteDatabase, string>[] DeleteAllOf =
    [
        AttemptStore.DeleteOf,
        PracticeStore.DeleteOf,
        CommentStore.DeleteOf,
        PatternStore.DeleteOf,
        BenchLogStore.DeleteOf,
        RoomQuestionStore.DeleteOf,
    ];

    /// <summary>Signs the person out and hides them with all their work.</summary>
    public Person? Remove(string personId) => database.Write(db => AccountStore.Change(db, personId, p =>
        p.Role == Role.Instructor ? null : p with { RemovedAt = p.RemovedAt ?? time.GetUtcNow(), Stamp = RandomId.New() }));

    public Person? Restore(string personId) => database.Write(db => AccountStore.Change(db, personId, p => p with { RemovedAt = null }));

    /// <summary>Gives a guest's work to an account, after the attempts already there, and removes the guest's record.</summary>
    /// <returns>How many attempts moved; null when one of the two is not what it should be.</returns>
    public int? MoveGuestInto(string guestId, string personId) => database.Write<int?>(db =>
    {
        if (Find(db, guestId) is not { Role: Role.Guest } || Find(db, personId) is not { Role: Role.Student or Role.Mentor }) return null;
        int moved = AttemptStore.Move(db, guestId, personId);
        PracticeStore.Move(db, guestId, personId);
        CommentStore.Move(db, guestId, personId);
        PersonStore.People(db).Delete(guestId);
        return moved;
    });

    /// <summary>Deletes for good whoever has been in the trash for more than <see cref="PersonStore.DaysInTrash"/> days.</summary>
    internal static void Empty(ILiteDatabase db, DateTimeOffset now)
    {
        long before = (now - TimeSpan.FromDays(PersonStore.DaysInTrash)).UtcTicks;
        foreach (BsonDocument document in PersonStore.People(db).FindAll("removedTicks > 0 AND removedTicks < @0", before))
        {
            string id = document["_id"].AsString;
            foreach (Action<ILiteDatabase, string> deleteOf in DeleteAllOf) deleteOf(db, id);
            PersonStore.People(db).Delete(id);
        }
    }

    private static Person? Find(ILiteDatabase db, string personId) =>
        PersonStore.People(db).FindById(personId) is { } found ? PersonDocument.ToPerson(found) : null;
}
