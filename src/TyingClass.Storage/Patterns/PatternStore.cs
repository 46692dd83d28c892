using System.Collections.Immutable;
using LiteDB;
using TyingClass.Storage.Editing;
using TyingClass.Storage.Files;
using TyingClass.Storage.Reviews;

namespace TyingClass.Storage.Patterns;

/// <summary>Patterns and their revisions. A revision is added and never changed.</summary>
public sealed class PatternStore
{
    public const int MostNoteLength = 2000;
    public const int MostNameLength = 100;

    private readonly Database _database;
    private readonly TimeProvider _time;

    internal PatternStore(Database database, TimeProvider time) => (_database, _time) = (database, time);

    /// <param name="name">As the recipe names the fly.</param>
    /// <param name="recipeText">Kept character by character.</param>
    public Pattern Create(string ownerId, string name, string recipeText, string? note = null) => _database.Write(db =>
    {
        DateTimeOffset now = _time.GetUtcNow();
        Pattern pattern = new(RandomId.New(), ownerId, Clean(name), 1, PatternState.Own, now, now);
        AddRevision(db, pattern, recipeText, note);
        return PatternDocument.Keep(db, pattern);
    });

    /// <summary>Adds a revision; a text that is the latest one's already adds none.</summary>
    /// <param name="expectedRevision">The latest when the editor was opened.</param>
    /// <returns>Null when this person has no such pattern, or it lies in the trash.</returns>
    public EditOutcome<Pattern>? Save(string patternId, string ownerId, int expectedRevision, string name, string recipeText, string? note = null) =>
        _database.Write(db =>
    {
        if (Owned(db, patternId, ownerId) is not { TrashedAt: null } pattern) return null;
        if (RevisionIn(db, patternId, pattern.Revision)!.RecipeText == recipeText) return new EditOutcome<Pattern>(true, pattern);
        if (pattern.Revision != expectedRevision) return new EditOutcome<Pattern>(false, pattern);
        Pattern changed = pattern with { Revision = pattern.Revision + 1, Name = Clean(name), ChangedAt = _time.GetUtcNow() };
        AddRevision(db, changed, recipeText, note);
        return new EditOutcome<Pattern>(true, PatternDocument.Keep(db, changed));
    });

    public Pattern? Find(string patternId) => _database.Read(db => PatternDocument.Find(db, patternId));

    /// <summary>Those not in the trash, the latest changed first.</summary>
    public ImmutableArray<Pattern> Of(string ownerId) => _database.Read(db => OfIn(db, ownerId).Where(p => p.TrashedAt is null).ToImmutableArray());

    /// <summary>Those in the trash, the latest changed first.</summary>
    public ImmutableArray<Pattern> TrashOf(string ownerId) => _database.Read(db => OfIn(db, ownerId).Where(p => p.TrashedAt is not null).ToImmutableArray());

    /// <summary>The signed-off patterns of a class, by name.</summary>
    public ImmutableArray<Pattern> Book(string classId) => _database.Read(db => PatternDocument.Patterns(db).FindAll("bookClassId = @0", classId)
        .Select(PatternDocument.ToPattern).Where(p => p is { TrashedAt: null, SignedOffRevision: not null })
        .OrderBy(p => p.Name, StringComparer.OrdinalIgnoreCase).ThenBy(p => p.Id, StringComparer.Ordinal).ToImmutableArray());

    public PatternRevision? Revision(string patternId, int number) => _database.Read(db => RevisionIn(db, patternId, number));

    /// <summary>First to last.</summary>
    public ImmutableArray<PatternRevision> Revisions(string patternId) =>
        _database.Read(db => PatternDocument.Revisions(db).FindAll("patternId = @0", patternId)
        .Select(PatternDocument.ToRevision).OrderBy(r => r.Number).ToImmutableArray());

    /// <summary>
    /// Into the trash for <see cref="Pattern.DaysInTrash"/> days; a review that waits is withdrawn, and the pattern leaves the book meanwhile.
    /// </summary>
    /// <returns>False when this person has no such pattern.</returns>
    public bool Trash(string patternId, string ownerId) => _database.Write(db =>
    {
        if (Owned(db, patternId, ownerId) is not { TrashedAt: null } pattern) return false;
        PatternState state = pattern.State;
        if (ReviewDocument.WaitingIn(db, patternId) is { } waiting)
        {
            ReviewDocument.Keep(db, waiting with { State = ReviewState.Withdrawn, DecidedAt = _time.GetUtcNow() });
            state = ReviewDocument.StateOf(db, patternId);
        }

        PatternDocument.Keep(db, pattern with { TrashedAt = _time.GetUtcNow(), State = state });
        return true;
    });

    /// <returns>False when this person has no such pattern in the trash.</returns>
    public bool Restore(string patternId, string ownerId) => _database.Write(db =>
    {
        if (Owned(db, patternId, ownerId) is not { TrashedAt: not null } pattern) return false;
        PatternDocument.Keep(db, pattern with { TrashedAt = null });
        return true;
    });

    /// <summary>Removes for good what has lain in the trash too long, with its revisions and reviews.</summary>
    /// <returns>How many patterns.</returns>
    public int EmptyTrash() => _database.Write(db =>
    {
        DateTimeOffset before = _time.GetUtcNow().AddDays(-Pattern.DaysInTrash);
        List<BsonDocument> old = PatternDocument.Patterns(db).FindAll("trashedTicks > 0 AND trashedTicks <= @0", Ticks.From(before));
        foreach (BsonDocument pattern in old) RemoveIn(db, pattern["_id"].AsString);
        return old.Count;
    });

    /// <summary>Everything of one person, for good.</summary>
    internal static void DeleteOf(OpenData db, string ownerId)
    {
        foreach (Pattern pattern in OfIn(db, ownerId)) RemoveIn(db, pattern.Id);
    }

    private static void RemoveIn(OpenData db, string patternId)
    {
        PatternDocument.Revisions(db).DeleteMany("patternId = @0", patternId);
        ReviewDocument.RemoveIn(db, patternId);
        PatternDocument.Patterns(db).Delete(patternId);
    }

    internal static IEnumerable<Pattern> OfIn(OpenData db, string ownerId) =>
        PatternDocument.Patterns(db).FindAll("ownerId = @0", ownerId).Select(PatternDocument.ToPattern)
            .OrderByDescending(p => p.ChangedAt).ThenBy(p => p.Id, StringComparer.Ordinal);

    private static Pattern? Owned(OpenData db, string patternId, string ownerId) =>
        PatternDocument.Find(db, patternId) is { } pattern && pattern.OwnerId == ownerId ? pattern : null;

    private static PatternRevision? RevisionIn(OpenData db, string patternId, int number) =>
        PatternDocument.Revisions(db).FindById(PatternDocument.Key(patternId, number)) is { } found ? PatternDocument.ToRevision(found) : null;

    private void AddRevision(OpenData db, Pattern pattern, string recipeText, string? note) =>
        PatternDocument.Revisions(db).Insert(PatternDocument.From(
            new PatternRevision(pattern.Id, pattern.Revision, recipeText, CleanText.Lines(note ?? "", MostNoteLength), _time.GetUtcNow())));

    private static string Clean(string name) => CleanText.Line(name, MostNameLength) ?? "A fly";
}
