using System.Collections.Immutable;
using TyingClass.Storage.Editing;
using TyingClass.Storage.Files;
using TyingClass.Storage.Photos;

namespace TyingClass.Storage.BenchLog;

/// <summary>What tied flies really did. One person's entries; a class's, for its mentors and instructors.</summary>
public sealed class BenchLogStore
{
    public const int MostNoteLength = 4000;

    private readonly Database _database;
    private readonly TimeProvider _time;
    private readonly PhotoStore _photos;

    internal BenchLogStore(Database database, TimeProvider time, PhotoStore photos) => (_database, _time, _photos) = (database, time, photos);

    public LogEntry Add(string personId, string? classId, TiedFly fly, Seen seen, Foreseen foreseen, string? note) => _database.Write(db =>
    {
        LogEntry entry = new(RandomId.New(), personId, classId, fly, seen, foreseen, Clean(note), _time.GetUtcNow(), 1);
        LogDocument.Entries(db).Insert(LogDocument.From(entry));
        return entry;
    });

    /// <summary>Corrects what was seen; the fly stays the one that was tied.</summary>
    /// <returns>Null when this person has no such entry, or it lies in the trash.</returns>
    public EditOutcome<LogEntry>? Correct(string entryId, string personId, int expectedVersion, Seen seen, Foreseen foreseen, string? note) =>
        _database.Write(db =>
    {
        if (Owned(db, entryId, personId) is not { TrashedAt: null } entry) return null;
        if (entry.Version != expectedVersion) return new EditOutcome<LogEntry>(false, entry);
        return new EditOutcome<LogEntry>(true, Keep(db, entry with { Seen = seen, Foreseen = foreseen, Note = Clean(note) }));
    });

    /// <summary>Puts a photo to an entry, or takes it away with null; the one before is removed for good.</summary>
    /// <returns>False when this person has no such entry.</returns>
    public bool SetPhoto(string entryId, string personId, byte[]? jpeg)
    {
        if (Find(entryId) is not { TrashedAt: null } found || found.PersonId != personId) return false;
        string? added = jpeg is null ? null : _photos.Add(jpeg);
        (bool kept, string? before) = _database.Write(db =>
        {
            if (Owned(db, entryId, personId) is not { TrashedAt: null } entry) return (false, null);
            Keep(db, entry with { PhotoId = added });
            return (true, entry.PhotoId);
        });
        if ((kept ? before : added) is { } orphan) _photos.Remove(orphan);
        return kept;
    }

    public LogEntry? Find(string entryId) => _database.Read(db => LogDocument.Entries(db).FindById(entryId) is { } found ? LogDocument.ToEntry(found) : null);

    /// <summary>The latest first, the trash left out.</summary>
    public ImmutableArray<LogEntry> Of(string personId) => Where("personId = @0", personId, inTrash: false);

    public ImmutableArray<LogEntry> TrashOf(string personId) => Where("personId = @0", personId, inTrash: true);

    /// <summary>The latest first, the trash left out.</summary>
    public ImmutableArray<LogEntry> OfClass(string classId) => Where("classId = @0", classId, inTrash: false);

    /// <returns>False when this person has no such entry.</returns>
    public bool Trash(string entryId, string personId) => Move(entryId, personId, _time.GetUtcNow());

    /// <returns>False when this person has no such entry.</returns>
    public bool Restore(string entryId, string personId) => Move(entryId, personId, null);

    /// <summary>Removes for good what has lain in the trash too long, photos too.</summary>
    /// <returns>How many entries.</returns>
    public int EmptyTrash()
    {
        DateTimeOffset before = _time.GetUtcNow().AddDays(-LogEntry.DaysInTrash);
        ImmutableArray<LogEntry> old = _database.Write(db =>
        {
            ImmutableArray<LogEntry> found =
                [.. LogDocument.Entries(db).FindAll("trashedTicks > 0 AND trashedTicks <= @0", Ticks.From(before)).Select(LogDocument.ToEntry)];
            foreach (LogEntry entry in found) LogDocument.Entries(db).Delete(entry.Id);
            return found;
        });
        foreach (string photoId in old.Select(e => e.PhotoId).OfType<string>()) _photos.Remove(photoId);
        return old.Length;
    }

    /// <summary>Removes photos that no entry names any more: left by a removed person, or by a write that failed halfway.</summary>
    public void SweepPhotos()
    {
        ImmutableArray<string> old = [.. _photos.OlderThan(_time.GetUtcNow().AddDays(-1))];
        if (old.IsEmpty) return;
        HashSet<string> named =
            _database.Read(db => LogDocument.Entries(db).FindAll().Select(e => e["photoId"].TextOrNull()).OfType<string>().ToHashSet(StringComparer.Ordinal));
        foreach (string photoId in old.Where(id => !named.Contains(id))) _photos.Remove(photoId);
    }

    /// <summary>Looks at every photo an entry names: is it there, and what was written? One kept before names held a checksum gets such a name.</summary>
    internal void VerifyPhotos(CancellationToken cancel)
    {
        foreach ((string entryId, string photoId) in _database.Read(db => LogDocument.Entries(db).FindAll().Select(LogDocument.ToEntry)
            .Where(e => e.PhotoId is not null).Select(e => (e.Id, e.PhotoId!)).ToList()))
        {
            cancel.ThrowIfCancellationRequested();
            byte[]? jpeg = _photos.Find(photoId);
            if (jpeg is null && !_photos.IsThere(photoId) && Find(entryId)?.PhotoId == photoId) _photos.Miss(photoId);
            if (jpeg is not null && !PhotoStore.HasSum(photoId)) Rename(entryId, photoId, _photos.Add(jpeg));
        }
    }

    // The same photo under another name is no change of the entry: whoever edits it meanwhile may go on.
    private void Rename(string entryId, string photoId, string renamed)
    {
        bool done = _database.Write(db =>
        {
            if (LogDocument.Entries(db).FindById(entryId) is not { } found || found["photoId"].TextOrNull() != photoId) return false;
            found["photoId"] = renamed;
            return LogDocument.Entries(db).Update(found);
        });
        // The old file is swept away like any that no entry names: a backup that is being made may still want it.
        if (!done) _photos.Remove(renamed);
    }

    /// <summary>Everything of one person, for good; <see cref="SweepPhotos"/> takes the photos along.</summary>
    internal static void DeleteOf(OpenData db, string personId) => LogDocument.Entries(db).DeleteMany("personId = @0", personId);

    private ImmutableArray<LogEntry> Where(string where, string id, bool inTrash) => _database.Read(db => LogDocument.Entries(db).FindAll(where, id)
        .Select(LogDocument.ToEntry).Where(e => e.TrashedAt is not null == inTrash)
        .OrderByDescending(e => e.At).ThenBy(e => e.Id, StringComparer.Ordinal).ToImmutableArray());

    private bool Move(string entryId, string personId, DateTimeOffset? trashedAt) => _database.Write(db =>
    {
        if (Owned(db, entryId, personId) is not { } entry || entry.TrashedAt is null == trashedAt is null) return false;
        Keep(db, entry with { TrashedAt = trashedAt });
        return true;
    });

    private static LogEntry? Owned(OpenData db, string entryId, string personId) =>
        LogDocument.Entries(db).FindById(entryId) is { } found && LogDocument.ToEntry(found) is var entry && entry.PersonId == personId ? entry : null;

    private static LogEntry Keep(OpenData db, LogEntry entry)
    {
        LogEntry kept = entry with { Version = entry.Version + 1 };
        LogDocument.Entries(db).Update(LogDocument.From(kept));
        return kept;
    }

    private static string Clean(string? note) => CleanText.Lines(note ?? "", MostNoteLength);
}
