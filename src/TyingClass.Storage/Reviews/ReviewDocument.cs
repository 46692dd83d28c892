using LiteDB;
using TyingClass.Storage.Files;
using TyingClass.Storage.Patterns;

namespace TyingClass.Storage.Reviews;

internal static class ReviewDocument
{
    public static Records Reviews(OpenData db) => db.Records("reviews");

    public static Records Comments(OpenData db) => db.Records("review_comments");

    public static void Prepare(OpenData db)
    {
        Reviews(db).EnsureIndex("patternId", "$.patternId");
        // One value to find the queue of a class, or all that was decided in it.
        Reviews(db).EnsureIndex("shelf", "$.shelf");
        Comments(db).EnsureIndex("patternId", "$.patternId");
    }

    public static string Shelf(string classId, ReviewState state) => $"{classId}/{state}";

    public static Review? Find(OpenData db, string reviewId) => Reviews(db).FindById(reviewId) is { } found ? ToReview(found) : null;

    /// <summary>First to last.</summary>
    public static IEnumerable<Review> Of(OpenData db, string patternId) =>
        Reviews(db).FindAll("patternId = @0", patternId).Select(ToReview).OrderBy(r => r.AskedAt).ThenBy(r => r.Id, StringComparer.Ordinal);

    public static Review? WaitingIn(OpenData db, string patternId) => Of(db, patternId).FirstOrDefault(r => r.State == ReviewState.Waiting);

    /// <summary>By the latest round that was not withdrawn.</summary>
    public static PatternState StateOf(OpenData db, string patternId) =>
        Of(db, patternId).LastOrDefault(r => r.State != ReviewState.Withdrawn)?.State switch
        {
            ReviewState.Waiting => PatternState.Waiting,
            ReviewState.Returned => PatternState.Returned,
            ReviewState.SignedOff => PatternState.SignedOff,
            _ => PatternState.Own,
        };

    /// <summary>Writes it under its next version.</summary>
    public static Review Keep(OpenData db, Review review)
    {
        Review kept = review with { Version = review.Version + 1 };
        Reviews(db).Upsert(From(kept));
        return kept;
    }

    public static void RemoveIn(OpenData db, string patternId)
    {
        Reviews(db).DeleteMany("patternId = @0", patternId);
        Comments(db).DeleteMany("patternId = @0", patternId);
    }

    private static BsonDocument From(Review review) => new()
    {
        ["_id"] = review.Id,
        ["patternId"] = review.PatternId,
        ["ownerId"] = review.OwnerId,
        ["classId"] = review.ClassId,
        ["shelf"] = Shelf(review.ClassId, review.State),
        ["revision"] = review.Revision,
        ["question"] = review.Question,
        ["askedTicks"] = Ticks.From(review.AskedAt),
        ["state"] = review.State.ToString(),
        ["version"] = review.Version,
        ["decidedById"] = review.DecidedById,
        ["decidedTicks"] = Ticks.FromOrNull(review.DecidedAt),
        ["words"] = review.Words,
        ["proposal"] = review.Proposal,
        ["despite"] = review.Despite,
    };

    public static Review ToReview(BsonDocument document) => new(
        document["_id"].AsString,
        document["patternId"].AsString,
        document["ownerId"].AsString,
        document["classId"].AsString,
        document["revision"].AsInt32,
        document["question"].AsString,
        document["askedTicks"].ToTime(),
        Enum.Parse<ReviewState>(document["state"].AsString),
        document["version"].AsInt32)
    {
        DecidedById = document["decidedById"].TextOrNull(),
        DecidedAt = document["decidedTicks"].ToTimeOrNull(),
        Words = document["words"].AsString,
        Proposal = document["proposal"].TextOrNull(),
        Despite = document["despite"].TextOrNull(),
    };

    public static BsonDocument From(ReviewComment comment) => new()
    {
        ["_id"] = comment.Id,
        ["patternId"] = comment.PatternId,
        ["reviewId"] = comment.ReviewId,
        ["revision"] = comment.Revision,
        ["byId"] = comment.ById,
        ["atTicks"] = Ticks.From(comment.At),
        ["subject"] = comment.Subject.ToString(),
        ["about"] = comment.About,
        ["text"] = comment.Text,
        ["correctedTicks"] = Ticks.FromOrNull(comment.CorrectedAt),
    };

    public static ReviewComment ToComment(BsonDocument document) => new(
        document["_id"].AsString,
        document["patternId"].AsString,
        document["reviewId"].AsString,
        document["revision"].AsInt32,
        document["byId"].AsString,
        document["atTicks"].ToTime(),
        Enum.Parse<CommentSubject>(document["subject"].AsString),
        document["about"].AsString,
        document["text"].AsString)
    {
        CorrectedAt = document["correctedTicks"].ToTimeOrNull(),
    };
}
