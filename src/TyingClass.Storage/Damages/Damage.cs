using System.Globalization;
using LiteDB;
using TyingClass.Storage.Attempts;
using TyingClass.Storage.Photos;

namespace TyingClass.Storage.Damages;

public enum DamageKind
{
    /// <summary>The record is there and says something else than was written.</summary>
    ChecksumDisagrees,

    /// <summary>The record could not be read at all; the file was mended without it.</summary>
    Unreadable,
}

/// <param name="Collection">Where the record stands: "attempts".</param>
public sealed record Damage(string Collection, string Id, DamageKind Kind)
{
    internal static Damage Changed(string collection, BsonValue id) => new(collection, NameOf(id), DamageKind.ChecksumDisagrees);

    /// <summary>As a person looks for it: LiteDB's own words put a text into quotation marks.</summary>
    internal static string NameOf(BsonValue id) => Convert.ToString(id.RawValue, CultureInfo.InvariantCulture) ?? "";

    /// <summary>For the person who runs the server.</summary>
    public string Said => (Collection, Kind) switch
    {
        (StandingDocument.Collection, DamageKind.ChecksumDisagrees) =>
            $"A sum of attempts ({Id}) was not what was written. It is worked out anew from the attempts.",
        (StandingDocument.Collection, _) => $"A sum of attempts ({Id}) could not be read. It is worked out anew from the attempts.",
        (PhotoStore.Collection, DamageKind.ChecksumDisagrees) =>
            $"A photo of the bench log ({Id}.jpg) is not what was written. It is no longer shown; the entry it belongs to stays.",
        (PhotoStore.Collection, _) => $"A photo of the bench log ({Id}.jpg) is missing or cannot be read. The entry it belongs to stays.",
        (_, DamageKind.ChecksumDisagrees) => $"A record of {Collection} ({Id}) is not what was written. It is left out everywhere.",
        _ => $"A record of {Collection} ({Id}) could not be read and was left behind when the file was mended.",
    };
}

/// <summary>A page of the data file is not what it should be.</summary>
internal sealed class BrokenFileException(string message, Exception cause) : Exception(message, cause);
