using LiteDB;
using TyingClass.Storage.Files;
using TyingClass.Storage.People;

namespace TyingClass.Storage.Instructors;

/// <summary>The instructor's account and the one-time code that makes it, or gives it a new passphrase.</summary>
public sealed class InstructorStore
{
    private const string CodeId = "instructor";

    private readonly Database database;
    private readonly TimeProvider time;

    internal InstructorStore(Database database, TimeProvider time) => (this.database, this.time) = (database, time);

    public Person? Find() => database.Read(FindIn);

    /// <summary>True while a code is out that has not been used.</summary>
    public bool AwaitsCode() => database.Read(db => Codes(db).FindById(CodeId) is not null);

    /// <summary>Replaces any code not yet used: only a hash is kept, so the old one cannot be shown again.</summary>
    public string NewCode() => database.Write(db =>
    {
        string code = OneTimeCode.New();
        Codes(db).Upsert(new BsonDocument
        {
            ["_id"] = CodeId,
            ["hash"] = OneTimeCode.Hash(code),
            ["createdTicks"] = Ticks.From(time.GetUtcNow()),
        });
        return code;
    });

    /// <summary>Uses up the code: makes the instructor, or gives the one there is a new name and passphrase.</summary>
    /// <returns>Null when the code is wrong or used up; then nothing changed.</returns>
    public Person? Claim(string code, string? name, string passphraseHash) => database.Write(db =>
    {
        if (Codes(db).FindById(CodeId) is not { } kept || kept["hash"].AsString != OneTimeCode.Hash(code)) return null;
        DateTimeOffset now = time.GetUtcNow();
        Person instructor = (FindIn(db) ?? new Person(RandomId.New(), Role.Instructor, null, null, "", now, now)) with
        {
            Name = PersonStore.CleanName(name) ?? "Instructor",
            PassphraseHash = passphraseHash,
            Stamp = RandomId.New(),
            LastSeenAt = now,
        };
        PersonStore.People(db).Upsert(PersonDocument.From(instructor, secretHash: null));
        Codes(db).Delete(CodeId);
        return instructor;
    });

    internal static void Prepare(ILiteDatabase db) => Codes(db).EnsureIndex("createdTicks", "$.createdTicks");

    private static Person? FindIn(ILiteDatabase db) =>
        PersonStore.People(db).FindFirst("role = @0", nameof(Role.Instructor)) is { } found ? PersonDocument.ToPerson(found) : null;

    private static ILiteCollection<BsonDocument> Codes(ILiteDatabase db) => db.GetCollection("one_time_codes");
}
