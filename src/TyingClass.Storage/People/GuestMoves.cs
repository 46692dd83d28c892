using System.Collections.Immutable;
using LiteDB;
using TyingClass.Storage.Attempts;
using TyingClass.Storage.Comments;
using TyingClass.Storage.Files;
using TyingClass.Storage.Practice;

namespace TyingClass.Storage.People;

/// <summary>Gives guests' work to accounts, and takes it back out for <see cref="PersonStore.DaysInTrash"/> days.</summary>
public sealed class GuestMoves
{
    private readonly Database _database;
    private readonly TimeProvider _time;

    internal GuestMoves(Database database, TimeProvider time) => (_database, _time) = (database, time);

    /// <summary>Gives a guest's work to an account, after the attempts already there, and removes the guest's record.</summary>
    /// <returns>Null when one of the two is not what it should be.</returns>
    public GuestMove? MoveInto(string guestId, string personId) => _database.Write(db =>
    {
        if (PersonStore.People(db).FindById(guestId) is not { } record || PersonDocument.ToPerson(record) is not { Role: Role.Guest } guest) return null;
        if (PersonStore.FindIn(db, personId) is not { Role: Role.Student or Role.Mentor, RemovedAt: null }) return null;
        ImmutableArray<MovedWork> attempts = AttemptStore.Move(db, guestId, personId);
        ImmutableArray<MovedWork> practice = PracticeStore.Move(db, guestId, personId);
        ImmutableArray<string> comments = CommentStore.Move(db, guestId, personId);
        PersonStore.People(db).Delete(guestId);
        BsonDocument move = new()
        {
            ["_id"] = RandomId.New(),
            ["toPersonId"] = personId,
            ["atTicks"] = Ticks.From(_time.GetUtcNow()),
            ["guest"] = record,
            ["label"] = guest.Label,
            ["attempts"] = Documents.ToArray(attempts, From),
            ["practice"] = Documents.ToArray(practice, From),
            ["comments"] = Documents.ToArray(comments, id => new BsonValue(id)),
        };
        Moves(db).Insert(move);
        return ToMove(move);
    });

    /// <summary>Those that can still be undone, the latest first.</summary>
    public ImmutableArray<GuestMove> Into(string personId) => _database.Read(db =>
        Moves(db).FindAll("toPersonId = @0", personId).Select(ToMove).Where(IsOpen).OrderByDescending(m => m.At).ToImmutableArray());

    public GuestMove? Find(string moveId) =>
        _database.Read(db => Moves(db).FindById(moveId) is { } found && ToMove(found) is var move && IsOpen(move) ? move : null);

    /// <summary>
    /// Puts the guest's record and everything that was moved back as it was, with what people said of it since; what the account did itself
    /// stays there and closes up.
    /// </summary>
    /// <returns>False when there is no such move, or it is too old.</returns>
    public bool Undo(string moveId) => _database.Write(db =>
    {
        if (Moves(db).FindById(moveId) is not { } move || ToMove(move) is not { } kept || !IsOpen(kept)) return false;
        BsonDocument guest = move["guest"].AsDocument;
        PersonStore.RestoreGuest(db, guest);
        string guestId = guest["_id"].AsString;
        AttemptStore.MoveBack(db, kept.ToPersonId, guestId, move["attempts"].ToList(ToWork));
        PracticeStore.MoveBack(db, kept.ToPersonId, guestId, move["practice"].ToList(ToWork));
        CommentStore.Readdress(db, guestId, move["comments"].ToList(id => id.AsString));
        Moves(db).Delete(moveId);
        return true;
    });

    internal static void Prepare(OpenData db)
    {
        Moves(db).EnsureIndex("toPersonId", "$.toPersonId");
        Moves(db).EnsureIndex("atTicks", "$.atTicks");
    }

    internal static void DeleteOf(OpenData db, string personId) => Moves(db).DeleteMany("toPersonId = @0", personId);

    /// <summary>Forgets what can no longer be undone, and with it the guests' records.</summary>
    internal static void Empty(OpenData db, DateTimeOffset now) =>
        Moves(db).DeleteMany("atTicks < @0", (now - TimeSpan.FromDays(PersonStore.DaysInTrash)).UtcTicks);

    private bool IsOpen(GuestMove move) => _time.GetUtcNow() <= move.Until;

    private static GuestMove ToMove(BsonDocument move) => new(
        move["_id"].AsString, move["toPersonId"].AsString, move["label"].AsString, move["attempts"].AsArray.Count, move["practice"].AsArray.Count,
        move["atTicks"].ToTime());

    private static BsonDocument From(MovedWork work) => new() { ["id"] = work.Id, ["number"] = work.Number };

    private static MovedWork ToWork(BsonValue work) => new(work["id"].AsString, work["number"].AsInt32);

    private static Records Moves(OpenData db) => db.Records("guest_moves");
}
