using LiteDB;
using TyingClass.Storage.Files;

namespace TyingClass.Storage.Attempts;

internal static class StandingDocument
{
    public const string Collection = "standings";

    public static Records Standings(OpenData db) => db.Records(Collection);

    public static void Prepare(OpenData db)
    {
        Standings(db).EnsureIndex("personId", "$.personId");
        // Kept before they held the last try: made up for once, from the notes of the attempts.
        foreach (BsonDocument old in Standings(db).FindAll("failed > @0 AND lastFailed = null", 0).ToList())
        {
            if (AttemptStore.LastFailedIn(db, old["_id"].AsString) is not { } last) continue;
            old["lastFailed"] = From(last);
            Standings(db).Update(old);
        }
    }

    public static void Keep(OpenData db, Standing standing)
    {
        StandingMemory.Forget(db, standing.PersonId);
        Standings(db).Upsert(From(standing));
    }

    public static void DeleteOf(OpenData db, string personId)
    {
        StandingMemory.Forget(db, personId);
        Standings(db).DeleteMany("personId = @0", personId);
    }

    public static void Delete(OpenData db, string personId, string exerciseId)
    {
        StandingMemory.Forget(db, personId);
        Standings(db).Delete(AttemptDocument.Slot(personId, exerciseId));
    }

    private static BsonDocument From(Standing standing) => new()
    {
        ["_id"] = AttemptDocument.Slot(standing.PersonId, standing.ExerciseId),
        ["personId"] = standing.PersonId,
        ["exerciseId"] = standing.ExerciseId,
        ["attempts"] = standing.Attempts,
        ["failed"] = standing.Failed,
        ["passed"] = standing.Passed,
        ["awaitsReview"] = standing.AwaitsReview,
        ["lastTicks"] = Ticks.From(standing.LastAt),
        ["handedInTicks"] = Ticks.FromOrNull(standing.HandedInAt),
        ["lastFailed"] = From(standing.LastFailed),
    };

    public static Standing ToStanding(BsonDocument document) => new(document["personId"].AsString, document["exerciseId"].AsString)
    {
        Attempts = document["attempts"].AsInt32,
        Failed = document["failed"].AsInt32,
        Passed = document["passed"].AsBoolean,
        AwaitsReview = document["awaitsReview"].AsBoolean,
        LastAt = document["lastTicks"].ToTime(),
        HandedInAt = document["handedInTicks"].ToTimeOrNull(),
        LastFailed = ToFailed(document["lastFailed"]),
    };

    private static BsonValue From(FailedTry? failed) => failed is null ? BsonValue.Null : new BsonDocument
    {
        ["id"] = failed.AttemptId,
        ["number"] = failed.Number,
        ["atTicks"] = Ticks.From(failed.At),
        ["answerKey"] = failed.AnswerKey,
        ["misreading"] = failed.Misreading,
        ["misreadConcept"] = failed.MisreadConcept,
        ["missed"] = failed.Missed,
    };

    private static FailedTry? ToFailed(BsonValue document) => document.IsNull ? null : new FailedTry(
        document["id"].AsString, document["number"].AsInt32, document["atTicks"].ToTime(), document["answerKey"].AsString,
        document["misreading"].TextOrNull(), document["misreadConcept"].TextOrNull(), document["missed"].TextOrNull());
}
