using LiteDB;
using TyingClass.Lessons.Grading;
using TyingClass.Storage.Files;

namespace TyingClass.Storage.Attempts;

internal static class FeedbackDocument
{
    public static BsonValue From(Feedback? feedback) => feedback is null ? BsonValue.Null : new BsonDocument
    {
        ["first"] = feedback.First,
        ["whatItWouldDo"] = feedback.WhatItWouldDo,
        ["goals"] = Documents.ToArray(feedback.Goals, g => new BsonDocument { ["asked"] = g.Asked, ["reached"] = g.Reached, ["met"] = g.Met }),
        ["why"] = feedback.Why,
        ["whereToLook"] = feedback.WhereToLook,
        ["misreading"] = feedback.Misreading,
        ["misreadConcept"] = feedback.MisreadConcept,
        ["cautions"] = Documents.ToArray(feedback.Cautions, c => new BsonValue(c)),
    };

    public static Feedback? ToFeedback(BsonValue document) => document.IsNull ? null : new Feedback
    {
        First = document["first"].TextOrNull(),
        WhatItWouldDo = document["whatItWouldDo"].AsString,
        Goals = document["goals"].ToList(g => new GoalResult(g["asked"].AsString, g["reached"].AsString, g["met"].AsBoolean)),
        Why = document["why"].AsString,
        WhereToLook = document["whereToLook"].TextOrNull(),
        Misreading = document["misreading"].TextOrNull(),
        MisreadConcept = document["misreadConcept"].TextOrNull(),
        Cautions = document["cautions"].ToList(c => c.AsString),
    };
}
