using System.Collections.Immutable;

namespace TyingClass.Storage.Backups;

/// <summary>What a backup holds.</summary>
/// <param name="Format">1.</param>
/// <param name="Documents">How many in each collection.</param>
/// <param name="Sha256">Of the database inside, in hexadecimal.</param>
/// <param name="Photos">By file name, the SHA-256 of each.</param>
public sealed record BackupContents(
    int Format, DateTimeOffset MadeAt, ImmutableSortedDictionary<string, int> Documents, string Sha256, ImmutableSortedDictionary<string, string> Photos)
{
    /// <summary>How many of its records were damaged already when it was made: they are in it as they were found.</summary>
    public int Damaged { get; init; }

    /// <summary>"14 people, 231 attempts": what a person can check at a glance.</summary>
    public string Said =>
        $"{Of("people")} people, {Of("attempts")} attempts, {Photos.Count} photos, {Documents.Values.Sum()} records in all"
        + (Damaged == 0 ? "" : $", {Damaged} of them damaged");

    private int Of(string collection) => Documents.GetValueOrDefault(collection);
}

/// <summary>The message says what is wrong with the file, for the person who tried to restore it.</summary>
public sealed class BackupDamagedException : Exception
{
    public BackupDamagedException(string message)
        : base(message)
    {
    }

    public BackupDamagedException(string message, Exception cause)
        : base(message, cause)
    {
    }
}
