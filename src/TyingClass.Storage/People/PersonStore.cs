using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using LiteDB;
using TyingClass.Storage.Classes;
using TyingClass.Storage.Files;

namespace TyingClass.Storage.People;

/// <summary>Everyone, guests among them; what needs a name and passphrase is in <see cref="AccountStore"/>.</summary>
public sealed class PersonStore
{
    public const int MostNameLength = 60;

    private const int MostMarks = 3;

    /// <summary>A removed person can be brought back so long.</summary>
    public const int DaysInTrash = 30;

    private readonly Database _database;
    private readonly TimeProvider _time;

    internal PersonStore(Database database, TimeProvider time) => (_database, _time) = (database, time);

    /// <returns>The new guest, and the secret for the guest's cookie: kept nowhere but there.</returns>
    public (Person Guest, string Secret) AddGuest(string? name = null) => _database.Write(db =>
    {
        DateTimeOffset now = _time.GetUtcNow();
        string secret = RandomId.NewSecret();
        Person guest = new(RandomId.New(), Role.Guest, CleanName(name), null, RandomId.New(), now, now) { GuestMark = NewMark(db) };
        People(db).Insert(PersonDocument.From(guest, RandomId.Hash(secret)));
        return (guest, secret);
    });

    public Person? FindGuest(string secret) => _database.Read(db =>
        People(db).FindFirst("secretHash = @0", RandomId.Hash(secret)) is { } found && PersonDocument.ToPerson(found) is { RemovedAt: null } guest ? guest
            : null);

    /// <param name="mark">However it is spaced, hyphened or cased.</param>
    /// <returns>Null when no guest has it.</returns>
    public Person? FindGuestByMark(string mark) => _database.Read(db => WithMark(db, mark) is { RemovedAt: null } guest ? guest : null);

    public Person? Find(string personId) => _database.Read(db => FindIn(db, personId));

    /// <summary>Browsers with no account, the last seen first.</summary>
    public ImmutableArray<Person> Guests() => _database.Read(db =>
        People(db).FindAll("role = @0", nameof(Role.Guest)).Select(PersonDocument.ToPerson).OrderByDescending(p => p.LastSeenAt).ToImmutableArray());

    /// <summary>Everyone, oldest first.</summary>
    public ImmutableArray<Person> All() => _database.Read(db =>
        People(db).FindAll().Select(PersonDocument.ToPerson).OrderBy(p => p.CreatedAt).ThenBy(p => p.Id, StringComparer.Ordinal).ToImmutableArray());

    /// <summary>Trims, drops control characters, and takes blank as no name.</summary>
    /// <returns>False when there is no such person.</returns>
    public bool Rename(string personId, string? name) => _database.Write(db =>
    {
        if (People(db).FindById(personId) is not { } document) return false;
        document["name"] = CleanName(name);
        return People(db).Update(document);
    });

    internal static void Prepare(OpenData db)
    {
        People(db).EnsureIndex("role", "$.role");
        People(db).EnsureIndex("secretHash", "$.secretHash");
        People(db).EnsureIndex("removedTicks", "$.removedTicks");
        People(db).EnsureIndex("guestMarkKey", "$.guestMarkKey");
        // Guests from before there were marks.
        foreach (BsonDocument old in People(db).FindAll("role = @0", nameof(Role.Guest)).Where(d => d["guestMark"].IsNull))
            People(db).Update(PersonDocument.From(PersonDocument.ToPerson(old) with { GuestMark = NewMark(db) }, old["secretHash"].TextOrNull()));
    }

    internal static Records People(OpenData db) => db.Records(PersonDocument.Collection);

    internal static Person? FindIn(OpenData db, string personId) => People(db).FindById(personId) is { } found ? PersonDocument.ToPerson(found) : null;

    /// <summary>Puts a guest's record back as it was; only a mark given to another guest meanwhile is drawn anew.</summary>
    internal static void RestoreGuest(OpenData db, BsonDocument record)
    {
        Person guest = PersonDocument.ToPerson(record);
        if (guest.GuestMark is null || WithMark(db, guest.GuestMark) is not null) guest = guest with { GuestMark = NewMark(db) };
        People(db).Insert(PersonDocument.From(guest, record["secretHash"].TextOrNull()));
    }

    private static Person? WithMark(OpenData db, string mark) =>
        GuestMark.Key(mark) is { Length: > 0 } key && People(db).FindFirst("guestMarkKey = @0", key) is { } found ? PersonDocument.ToPerson(found) : null;

    private static string NewMark(OpenData db)
    {
        while (true)
        {
            string mark = GuestMark.New();
            if (WithMark(db, mark) is null) return mark;
        }
    }

    internal static string? CleanName(string? name) => CleanText.Line(name is null ? null : Letters.Compose(Visible(name)), MostNameLength);

    // A name is what can be seen of it, and every sign carries few marks: a tower of them would cover the lines above.
    private static string Visible(string name)
    {
        StringBuilder seen = new(name.Length);
        int marks = 0;
        foreach (Rune rune in name.EnumerateRunes())
        {
            bool isMark = Rune.GetUnicodeCategory(rune) is UnicodeCategory.NonSpacingMark or UnicodeCategory.EnclosingMark;
            marks = isMark ? marks + 1 : 0;
            if (rune != Rune.ReplacementChar && marks <= MostMarks && !(rune.IsBmp && Lookalikes.IsInvisible((char)rune.Value) && rune.Value != '\t'))
                seen.Append(rune.ToString());
        }

        return seen.ToString();
    }
}
