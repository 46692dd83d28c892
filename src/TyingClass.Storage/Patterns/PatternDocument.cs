using LiteDB;
using TyingClass.Storage.Files;

namespace TyingClass.Storage.Patterns;

internal static class PatternDocument
{
    public static Records Patterns(OpenData db) => db.Records("patterns");

    public static Records Revisions(OpenData db) => db.Records("pattern_revisions");

    public static void Prepare(OpenData db)
    {
        Patterns(db).EnsureIndex("ownerId", "$.ownerId");
        Patterns(db).EnsureIndex("bookClassId", "$.bookClassId");
        Patterns(db).EnsureIndex("trashedTicks", "$.trashedTicks");
        Revisions(db).EnsureIndex("patternId", "$.patternId");
    }

    public static Pattern? Find(OpenData db, string patternId) => Patterns(db).FindById(patternId) is { } found ? ToPattern(found) : null;

    public static Pattern Keep(OpenData db, Pattern pattern)
    {
        Patterns(db).Upsert(From(pattern));
        return pattern;
    }

    public static BsonDocument From(Pattern pattern) => new()
    {
        ["_id"] = pattern.Id,
        ["ownerId"] = pattern.OwnerId,
        ["name"] = pattern.Name,
        ["revision"] = pattern.Revision,
        ["state"] = pattern.State.ToString(),
        ["createdTicks"] = Ticks.From(pattern.CreatedAt),
        ["changedTicks"] = Ticks.From(pattern.ChangedAt),
        ["signedOffRevision"] = pattern.SignedOffRevision is { } revision ? revision : BsonValue.Null,
        ["bookClassId"] = pattern.BookClassId,
        ["trashedTicks"] = Ticks.FromOrNull(pattern.TrashedAt),
    };

    public static Pattern ToPattern(BsonDocument document) => new(
        document["_id"].AsString,
        document["ownerId"].AsString,
        document["name"].AsString,
        document["revision"].AsInt32,
        Enum.Parse<PatternState>(document["state"].AsString),
        document["createdTicks"].ToTime(),
        document["changedTicks"].ToTime())
    {
        SignedOffRevision = document["signedOffRevision"].IsNull ? null : document["signedOffRevision"].AsInt32,
        BookClassId = document["bookClassId"].TextOrNull(),
        TrashedAt = document["trashedTicks"].ToTimeOrNull(),
    };

    /// <summary>The key is also the database's own word that no two revisions share a number.</summary>
    public static BsonDocument From(PatternRevision revision) => new()
    {
        ["_id"] = Key(revision.PatternId, revision.Number),
        ["patternId"] = revision.PatternId,
        ["number"] = revision.Number,
        ["recipe"] = revision.RecipeText,
        ["note"] = revision.Note,
        ["atTicks"] = Ticks.From(revision.At),
    };

    public static PatternRevision ToRevision(BsonDocument document) => new(
        document["patternId"].AsString, document["number"].AsInt32, document["recipe"].AsString, document["note"].AsString, document["atTicks"].ToTime());

    public static string Key(string patternId, int number) => $"{patternId}/{number}";
}
