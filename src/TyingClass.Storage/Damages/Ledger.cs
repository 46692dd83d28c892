using System.Globalization;
using System.Text;
using LiteDB;
using Microsoft.Win32.SafeHandles;
using TyingClass.Storage.Files;

namespace TyingClass.Storage.Damages;

/// <param name="Writes">How many writes were acknowledged so far.</param>
/// <param name="At">When the last one was.</param>
internal readonly record struct Acknowledged(long Writes, DateTimeOffset At);

/// <summary>
/// How many writes were acknowledged: counted in the data with each of them, and once more in a file beside. Data that count fewer than the file have lost
/// some: their log was deleted or cut, or an older file stands in their place. The other way round is no loss: the file beside is written last, and not
/// forced to disk.
/// </summary>
internal sealed class Ledger(DataFolder folder) : IDisposable
{
    private const string Collection = "ledger";
    private const string Key = "writes";

    private SafeFileHandle? _beside;

    /// <summary>Part of the write it counts.</summary>
    public static Acknowledged CountIn(OpenData data, DateTimeOffset now)
    {
        Acknowledged next = new(Of(data).Writes + 1, now);
        data.Records(Collection).Upsert(new BsonDocument { ["_id"] = Key, ["count"] = next.Writes, ["atTicks"] = Ticks.From(now) });
        return next;
    }

    public static Acknowledged Of(OpenData data) =>
        data.Records(Collection).FindById(Key) is { } kept ? new Acknowledged(kept["count"].AsInt64, kept["atTicks"].ToTime()) : default;

    /// <summary>After the write is on disk.</summary>
    public void NoteBeside(Acknowledged last)
    {
        try
        {
            _beside ??= File.OpenHandle(folder.CountPath, FileMode.OpenOrCreate, FileAccess.Write, FileShare.ReadWrite);
            RandomAccess.Write(_beside, Encoding.ASCII.GetBytes(Line(last)), 0);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            // The write stands; only a loss of it would go unnoticed.
            Dispose();
        }
    }

    /// <summary>Null when it is not there or says nothing.</summary>
    public Acknowledged? Beside()
    {
        try
        {
            string[] words = ReadShared().Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries);
            return words is [var count, var at] && long.TryParse(count, CultureInfo.InvariantCulture, out long writes)
                && long.TryParse(at, CultureInfo.InvariantCulture, out long ticks) && ticks >= 0 && ticks <= DateTimeOffset.MaxValue.UtcTicks
                ? new Acknowledged(writes, new DateTimeOffset(ticks, TimeSpan.Zero)) : null;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }

    public void Dispose()
    {
        _beside?.Dispose();
        _beside = null;
    }

    // Of fixed length, so that it is overwritten in place, on a full disk too.
    private static string Line(Acknowledged last) => string.Create(CultureInfo.InvariantCulture, $"{last.Writes:D19} {last.At.UtcTicks:D19}\n");

    private string ReadShared()
    {
        using FileStream file = new(folder.CountPath, FileMode.Open, FileAccess.Read, FileShare.ReadWrite);
        using StreamReader reader = new(file, Encoding.ASCII);
        return reader.ReadToEnd();
    }
}
