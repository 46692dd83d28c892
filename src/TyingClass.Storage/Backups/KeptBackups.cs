using System.Collections.Immutable;
using System.Globalization;
using TyingClass.Storage.Files;

namespace TyingClass.Storage.Backups;

/// <summary>
/// The backups a server makes by itself, night by night, and which of them it keeps: the last seven, and before those the last of each of four more weeks. By
/// their order, never by their age: a clock that jumps ahead throws nothing away.
/// </summary>
public static class KeptBackups
{
    public const int Nights = 7;
    public const int Weeks = 4;

    private const string Prefix = "nightly-";
    private const string Stamp = "yyyyMMdd-HHmmss";

    /// <summary>Full path; null when there is none.</summary>
    public static string? Latest(DataFolder folder) => All(folder).LastOrDefault();

    /// <summary>When the last one was made, as its name says.</summary>
    public static DateTimeOffset? LatestAt(DataFolder folder) => Latest(folder) is { } latest ? TimeOf(latest) : null;

    /// <summary>Makes one, read back and counted, and only then lets older ones go.</summary>
    /// <exception cref="StorageException">None was made, and none was let go.</exception>
    public static BackupContents Make(DataFolder folder, Func<string, BackupContents> backup, DateTimeOffset now)
    {
        ArgumentNullException.ThrowIfNull(folder);
        ArgumentNullException.ThrowIfNull(backup);
        DataFolder.MakePrivate(folder.BackupsPath);
        string stamp = now.UtcDateTime.ToString(Stamp, CultureInfo.InvariantCulture);
        BackupContents made = backup(Path.Combine(folder.BackupsPath, $"{Prefix}{stamp}{(folder.HasDamage ? "-damaged" : "")}.zip"));
        foreach (string old in TooMany(All(folder))) File.Delete(old);
        return made;
    }

    /// <summary>The last that was whole stays, however many damaged ones followed it.</summary>
    internal static ImmutableArray<string> TooMany(ImmutableArray<string> oldestFirst)
    {
        HashSet<string> kept = [.. oldestFirst.TakeLast(Nights)];
        IEnumerable<string> weekly = oldestFirst.Where(p => !kept.Contains(p)).GroupBy(Week).Select(g => g.Last()).TakeLast(Weeks);
        kept.UnionWith(weekly.ToList());
        if (oldestFirst.LastOrDefault(p => !p.EndsWith("-damaged.zip", StringComparison.Ordinal)) is { } whole) kept.Add(whole);
        return [.. oldestFirst.Where(p => !kept.Contains(p))];
    }

    private static ImmutableArray<string> All(DataFolder folder) => !Directory.Exists(folder.BackupsPath) ? []
        : [.. Directory.EnumerateFiles(folder.BackupsPath, Prefix + "*.zip").Where(p => TimeOf(p) is not null).Order(StringComparer.Ordinal)];

    private static int Week(string path) => TimeOf(path) is { } at ? (int)(at.UtcTicks / TimeSpan.TicksPerDay / 7) : 0;

    private static DateTimeOffset? TimeOf(string path) =>
        Path.GetFileName(path) is { } name && name.Length >= Prefix.Length + Stamp.Length && DateTimeOffset.TryParseExact(
            name.AsSpan(Prefix.Length, Stamp.Length), Stamp, CultureInfo.InvariantCulture, DateTimeStyles.AssumeUniversal, out DateTimeOffset at) ? at : null;
}
