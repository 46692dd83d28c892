using LiteDB;
using TyingClass.Lessons.Grading;
using TyingClass.Storage.Files;

namespace TyingClass.Storage.Attempts;

internal static class AttemptDocument
{
    public const string Collection = "attempts";

    /// <summary>What <see cref="AttemptNote.From"/> reads: the rest of the document is skipped over.</summary>
    public const string NoteFields = "{ _id, personId, exerciseId, number, atTicks, note }";

    /// <summary>One person's work on one exercise; neither id may hold the separator.</summary>
    public static string Slot(string personId, string exerciseId) => $"{personId}/{exerciseId}";

    /// <summary>Of one attempt in its slot: no two have the same.</summary>
    public static string Place(string personId, string exerciseId, int number) => $"{Slot(personId, exerciseId)}/{number}";

    public static BsonDocument From(Attempt attempt) => new()
    {
        ["_id"] = attempt.Id,
        ["personId"] = attempt.PersonId,
        ["exerciseId"] = attempt.ExerciseId,
        ["slot"] = Slot(attempt.PersonId, attempt.ExerciseId),
        ["place"] = Place(attempt.PersonId, attempt.ExerciseId, attempt.Number),
        ["number"] = attempt.Number,
        ["atTicks"] = Ticks.From(attempt.At),
        ["answer"] = attempt.AnswerText,
        ["engine"] = attempt.EngineVersion,
        ["exerciseVersion"] = attempt.ExerciseVersion,
        ["form"] = attempt.Form,
        ["passed"] = attempt.Passed,
        ["awaitsReview"] = attempt.AwaitsReview,
        ["judgments"] = Documents.ToArray(attempt.Judgments, j => new BsonDocument
        {
            ["byId"] = j.ByPersonId,
            ["byName"] = j.ByName,
            ["atTicks"] = Ticks.From(j.At),
            ["accepted"] = j.Accepted,
            ["reason"] = j.Reason,
        }),
        ["note"] = AttemptNote.Of(attempt).ToDocument(),
        ["feedback"] = FeedbackDocument.From(attempt.Feedback),
        ["figures"] = Documents.ToArray(attempt.Figures, f => new BsonDocument { ["name"] = f.Name, ["value"] = f.Value }),
        ["graded"] = Documents.ToArray(attempt.GradedFigures, g => new BsonDocument { ["quantity"] = g.Quantity, ["si"] = g.Si }),
        ["observations"] = Documents.ToArray(attempt.Observations, o => new BsonDocument
        {
            ["quantity"] = o.Quantity,
            ["predictedSi"] = o.PredictedSi,
            ["observedSi"] = o.ObservedSi,
            ["predicted"] = o.Predicted,
            ["observed"] = o.Observed,
        }),
    };

    public static Attempt ToAttempt(BsonDocument document) => new()
    {
        Id = document["_id"].AsString,
        PersonId = document["personId"].AsString,
        ExerciseId = document["exerciseId"].AsString,
        Number = document["number"].AsInt32,
        At = document["atTicks"].ToTime(),
        AnswerText = document["answer"].AsString,
        EngineVersion = document["engine"].AsString,
        ExerciseVersion = document["exerciseVersion"].AsString,
        Form = document["form"].TextOrNull(),
        Passed = document["passed"].AsBoolean,
        AwaitsReview = document["awaitsReview"].AsBoolean,
        Judgments = document["judgments"].ToList(j => new Judgment(
            j["byId"].AsString, j["byName"].AsString, j["atTicks"].ToTime(), j["accepted"].AsBoolean, j["reason"].AsString)),
        Feedback = FeedbackDocument.ToFeedback(document["feedback"]),
        Figures = document["figures"].ToList(f => new KeptFigure(f["name"].AsString, f["value"].AsDouble)),
        GradedFigures = document["graded"].ToList(g => new GradedFigure(g["quantity"].AsString, g["si"].NumberOrNull())),
        Observations = document["observations"].ToList(o => new Observation(
            o["quantity"].AsString, o["predictedSi"].NumberOrNull(), o["observedSi"].NumberOrNull(), o["predicted"].AsString, o["observed"].AsString)),
    };
}
