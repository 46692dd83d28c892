using LiteDB;
using TyingClass.Storage.Classes;
using TyingClass.Storage.Files;
using TyingClass.Storage.People;

namespace TyingClass.Storage.Instructors;

/// <summary>
/// Instructors' accounts and the one-time codes that make them. The code from the console makes the first instructor, or gives the
/// first a new passphrase; an instructor's invitation makes another, with classes of their own.
/// </summary>
public sealed class InstructorStore
{
    public const int DaysInvited = 14;

    private const string CodeId = "instructor";

    private readonly Database _database;
    private readonly TimeProvider _time;

    internal InstructorStore(Database database, TimeProvider time) => (_database, _time) = (database, time);

    /// <summary>The first there was.</summary>
    public Person? Find() => _database.Read(FindIn);

    /// <summary>Replaces any code not yet used: only a hash is kept, so the old one cannot be shown again.</summary>
    public string NewCode() => _database.Write(db => KeepCode(db, CodeId));

    /// <summary>For another instructor; works once, within <see cref="DaysInvited"/> days.</summary>
    public string Invite() => _database.Write(db => KeepCode(db, RandomId.New()));

    /// <summary>The code would open an account now. Uses nothing up.</summary>
    public bool Opens(string code) => _database.Read(db => GoodCode(db, code) is not null);

    /// <summary>Uses up the code: makes an instructor with a first class, or gives the first instructor a new name and passphrase.</summary>
    /// <param name="name">One that is taken gets a number.</param>
    /// <param name="className">Blank for <see cref="ClassRoom.DefaultName"/>.</param>
    /// <returns>Null when the code is wrong, used up or too old; then nothing changed.</returns>
    public Person? Claim(string code, string? name, string passphraseHash, string? className = null) => _database.Write(db =>
    {
        if (GoodCode(db, code) is not { } kept) return null;
        DateTimeOffset now = _time.GetUtcNow();
        bool fromConsole = IsFromConsole(kept);
        Person before = (fromConsole ? FindIn(db) : null) ?? new Person(RandomId.New(), Role.Instructor, null, null, "", now, now);
        Person instructor = before with
        {
            Name = FreeName(db, PersonStore.CleanName(name) ?? before.Name ?? "Instructor", before.Id),
            PassphraseHash = passphraseHash,
            Stamp = RandomId.New(),
            LastSeenAt = now,
            MustChoosePassphrase = false,
        };
        PersonStore.People(db).Upsert(PersonDocument.From(instructor, secretHash: null));
        if (ClassRoomStore.OfInstructorIn(db, instructor.Id).IsEmpty) ClassRoomStore.CreateIn(db, _time, instructor.Id, className, timeZoneId: null);
        Codes(db).Delete(kept["_id"]);
        return instructor;
    });

    internal static void Prepare(OpenData db, TimeProvider time)
    {
        Codes(db).EnsureIndex("createdTicks", "$.createdTicks");
        Codes(db).EnsureIndex("hash", "$.hash");
        // A data file from before there were classes.
        if (FindIn(db) is { } instructor && ClassRoomStore.OfInstructorIn(db, instructor.Id).IsEmpty)
            ClassRoomStore.CreateIn(db, time, instructor.Id, name: null, timeZoneId: null);
    }

    // Null for one that is wrong, used up or too old.
    private BsonDocument? GoodCode(OpenData db, string code) =>
        Codes(db).FindFirst("hash = @0", OneTimeCode.Hash(code)) is { } kept
        && (IsFromConsole(kept) || _time.GetUtcNow() - kept["createdTicks"].ToTime() <= TimeSpan.FromDays(DaysInvited)) ? kept : null;

    private static bool IsFromConsole(BsonDocument kept) => kept["_id"].AsString == CodeId;

    private string KeepCode(OpenData db, string id)
    {
        string code = OneTimeCode.New();
        Codes(db).Upsert(new BsonDocument
        {
            ["_id"] = id,
            ["hash"] = OneTimeCode.Hash(code),
            ["createdTicks"] = Ticks.From(_time.GetUtcNow()),
        });
        return code;
    }

    private static string FreeName(OpenData db, string name, string personId)
    {
        string free = name;
        for (int i = 2; !AccountStore.NameIsFree(db, free, personId); i++) free = FormattableString.Invariant($"{name} {i}");
        return free;
    }

    private static Person? FindIn(OpenData db) =>
        PersonStore.People(db).FindAll("role = @0", nameof(Role.Instructor)).Select(PersonDocument.ToPerson).OrderBy(p => p.CreatedAt).FirstOrDefault();

    private static Records Codes(OpenData db) => db.Records("one_time_codes");
}
