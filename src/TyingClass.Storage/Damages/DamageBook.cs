using System.Collections.Immutable;
using System.Globalization;
using LiteDB;
using TyingClass.Storage.Files;

namespace TyingClass.Storage.Damages;

/// <summary>
/// What was found damaged. It stands in a file of its own beside the data too, so that a restart does not forget it; whoever has dealt with it deletes that
/// file, and restoring a backup puts it aside.
/// </summary>
public sealed class DamageBook
{
    private const int Most = 1000;

    private readonly Lock _gate = new();
    private readonly HashSet<Damage> _known = [];
    private readonly DataFolder _folder;
    private readonly TimeProvider _time;
    private ImmutableList<string> _lines;

    internal DamageBook(DataFolder folder, TimeProvider time)
    {
        (_folder, _time) = (folder, time);
        _lines = Read(folder.DamagePath);
    }

    /// <summary>Called once for each new finding, whoever is reading then: for the console.</summary>
    public event Action<string>? Found;

    /// <summary>One line for each finding, the first found first.</summary>
    public ImmutableList<string> Lines => Volatile.Read(ref _lines);

    public string Path => _folder.DamagePath;

    /// <summary>A record found damaged since the start: what of it could be read by itself is left out too.</summary>
    internal bool Knows(string collection, BsonValue id)
    {
        lock (_gate) return _known.Count > 0 && _known.Contains(Damage.Changed(collection, id));
    }

    internal void Note(Damage damage)
    {
        lock (_gate)
        {
            if (_known.Count < Most && _known.Add(damage)) Add(damage.Said);
        }
    }

    /// <param name="said">About the file as a whole.</param>
    internal void Note(string said)
    {
        lock (_gate) Add(said);
    }

    private void Add(string said)
    {
        if (_lines.Any(l => l.EndsWith(said, StringComparison.Ordinal))) return;
        string line = $"{_time.GetUtcNow().ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture)} UTC: {said}";
        Volatile.Write(ref _lines, _lines.Add(line));
        try
        {
            File.AppendAllLines(_folder.DamagePath, [line]);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            // It is told all the same, and found again at the next start.
        }

        Found?.Invoke(line);
    }

    private static ImmutableList<string> Read(string path)
    {
        try
        {
            return [.. File.ReadLines(path).Take(Most)];
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            // Mostly it is not there.
            return [];
        }
    }
}
