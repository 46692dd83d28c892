using System.Globalization;
using LiteDB;
using TyingClass.Storage.Classes;
using TyingClass.Storage.Files;

namespace TyingClass.Storage.People;

internal static class PersonDocument
{
    public const string Collection = "people";

    /// <param name="secretHash">Of the secret in a guest's cookie; null for those who sign in.</param>
    public static BsonDocument From(Person person, string? secretHash) => new()
    {
        ["_id"] = person.Id,
        ["role"] = person.Role.ToString(),
        ["name"] = person.Name,
        ["passphraseHash"] = person.PassphraseHash,
        ["stamp"] = person.Stamp,
        ["secretHash"] = secretHash,
        ["createdTicks"] = Ticks.From(person.CreatedAt),
        ["lastSeenTicks"] = Ticks.From(person.LastSeenAt),
        ["classId"] = person.ClassId,
        ["nameKey"] = person.Role == Role.Guest ? null : NameKey(person.Name ?? ""),
        ["guestMark"] = person.GuestMark,
        ["guestMarkKey"] = person.GuestMark is { } mark ? GuestMark.Key(mark) : null,
        ["removedTicks"] = person.RemovedAt is { } removed ? Ticks.From(removed) : BsonValue.Null,
        ["mustChoose"] = person.MustChoosePassphrase,
    };

    public static Person ToPerson(BsonDocument document) => new(
        document["_id"].AsString,
        Enum.Parse<Role>(document["role"].AsString),
        document["name"].TextOrNull(),
        document["passphraseHash"].TextOrNull(),
        document["stamp"].AsString,
        document["createdTicks"].ToTime(),
        document["lastSeenTicks"].ToTime())
    {
        ClassId = document["classId"].TextOrNull(),
        GuestMark = document["guestMark"].TextOrNull(),
        RemovedAt = document["removedTicks"].IsNull ? null : document["removedTicks"].ToTime(),
        MustChoosePassphrase = document["mustChoose"].IsBoolean && document["mustChoose"].AsBoolean,
    };

    /// <summary>Case, runs of spaces, characters without ink, letters that look alike and the spelling of a marked letter make no other name.</summary>
    public static string NameKey(string name) => Lookalikes.Fold(SpelledKey(Letters.Compose(name)));

    /// <summary>As <see cref="NameKey"/>, but with marked letters as they were typed: the key of accounts that could not be given the other.</summary>
    public static string SpelledKey(string name) =>
        string.Join(' ', string.Concat(name.ToUpperInvariant().Where(c => char.GetUnicodeCategory(c) != UnicodeCategory.Format))
            .Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
}
