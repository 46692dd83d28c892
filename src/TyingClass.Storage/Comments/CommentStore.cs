using System.Collections.Immutable;
using LiteDB;
using TyingClass.Storage.Files;

namespace TyingClass.Storage.Comments;

public sealed class CommentStore
{
    public const int MostTextLength = 4000;

    private readonly Database _database;
    private readonly TimeProvider _time;

    internal CommentStore(Database database, TimeProvider time) => (_database, _time) = (database, time);

    /// <param name="text">Not blank; cut at <see cref="MostTextLength"/>.</param>
    public Comment Add(string toPersonId, string byPersonId, string byName, string? exerciseId, string text)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(text);
        return _database.Write(db =>
        {
            Comment comment =
                new(RandomId.New(), toPersonId, byPersonId, byName, exerciseId, _time.GetUtcNow(), CleanText.Lines(text, MostTextLength), SeenAt: null);
            Comments(db).Insert(From(comment));
            return comment;
        });
    }

    public Comment? Find(string commentId) => _database.Read(db => Find(db, commentId));

    /// <summary>All to one person, the latest first.</summary>
    public ImmutableArray<Comment> To(string personId) => _database.Read(db => ToIn(db, personId));

    /// <summary>Those not yet said to be read, the oldest first.</summary>
    public ImmutableArray<Comment> UnseenBy(string personId) => _database.Read(db =>
        Comments(db).FindAll("unseenBy = @0", personId).Select(ToComment).OrderBy(c => c.At).ToImmutableArray());

    /// <returns>False when there is no such comment to that person.</returns>
    public bool MarkSeen(string commentId, string personId) => _database.Write(db =>
    {
        if (Find(db, commentId) is not { } comment || comment.PersonId != personId) return false;
        return Comments(db).Update(From(comment with { SeenAt = comment.SeenAt ?? _time.GetUtcNow() }));
    });

    /// <summary>By its writer only. Whoever has read it is shown it again.</summary>
    /// <returns>False when there is no such comment of this person's, or nothing was written.</returns>
    public bool Correct(string commentId, string byPersonId, string? text) => _database.Write(db =>
    {
        if (Find(db, commentId) is not { } comment || comment.ByPersonId != byPersonId
            || CleanText.Lines(text ?? "", MostTextLength) is not { Length: > 0 } words) return false;
        return words == comment.Text || Comments(db).Update(From(comment with { Text = words, SeenAt = null, CorrectedAt = _time.GetUtcNow() }));
    });

    internal static void Prepare(OpenData db)
    {
        Comments(db).EnsureIndex("personId", "$.personId");
        Comments(db).EnsureIndex("unseenBy", "$.unseenBy");
    }

    internal static ImmutableArray<Comment> ToIn(OpenData db, string personId) =>
        [.. Comments(db).FindAll("personId = @0", personId).Select(ToComment).OrderByDescending(c => c.At)];

    internal static void InsertIn(OpenData db, Comment comment) => Comments(db).Insert(From(comment));

    internal static void DeleteOf(OpenData db, string personId) => Comments(db).DeleteMany("personId = @0", personId);

    /// <returns>The ids of what was moved.</returns>
    internal static ImmutableArray<string> Move(OpenData db, string fromPersonId, string toPersonId)
    {
        ImmutableArray<string> ids = [.. Comments(db).FindAll("personId = @0", fromPersonId).Select(d => d["_id"].AsString)];
        Readdress(db, toPersonId, ids);
        return ids;
    }

    internal static void Readdress(OpenData db, string toPersonId, IEnumerable<string> commentIds)
    {
        foreach (string id in commentIds)
        {
            if (Find(db, id) is { } comment) Comments(db).Update(From(comment with { PersonId = toPersonId }));
        }
    }

    private static Comment? Find(OpenData db, string commentId) => Comments(db).FindById(commentId) is { } found ? ToComment(found) : null;

    private static BsonDocument From(Comment comment) => new()
    {
        ["_id"] = comment.Id,
        ["personId"] = comment.PersonId,
        ["unseenBy"] = comment.SeenAt is null ? comment.PersonId : BsonValue.Null,
        ["byId"] = comment.ByPersonId,
        ["byName"] = comment.ByName,
        ["exerciseId"] = comment.ExerciseId,
        ["atTicks"] = Ticks.From(comment.At),
        ["text"] = comment.Text,
        ["seenTicks"] = comment.SeenAt is { } seen ? Ticks.From(seen) : BsonValue.Null,
        ["correctedTicks"] = Ticks.FromOrNull(comment.CorrectedAt),
    };

    private static Comment ToComment(BsonDocument document) => new(
        document["_id"].AsString,
        document["personId"].AsString,
        document["byId"].AsString,
        document["byName"].AsString,
        document["exerciseId"].TextOrNull(),
        document["atTicks"].ToTime(),
        document["text"].AsString,
        document["seenTicks"].IsNull ? null : document["seenTicks"].ToTime())
    {
        CorrectedAt = document["correctedTicks"].ToTimeOrNull(),
    };

    private static Records Comments(OpenData db) => db.Records("comments");
}
