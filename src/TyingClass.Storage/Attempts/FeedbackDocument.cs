using LiteDB;
using TyingClass.Lessons.Grading;
using TyingClass.Storage.Files;
using TyingClass.Telling.Reasons;

namespace TyingClass.Storage.Attempts;

internal static class FeedbackDocument
{
    public static BsonValue From(Feedback? feedback) => feedback is null ? BsonValue.Null : new BsonDocument
    {
        ["reply"] = feedback.Reply,
        ["first"] = feedback.First,
        ["whatItWouldDo"] = feedback.WhatItWouldDo,
        ["goals"] = Documents.ToArray(feedback.Goals, g => new BsonDocument { ["asked"] = g.Asked, ["reached"] = g.Reached, ["met"] = g.Met }),
        ["why"] = feedback.Why,
        ["whereToLook"] = feedback.WhereToLook,
        ["misreading"] = feedback.Misreading,
        ["remark"] = feedback.Remark,
        ["misreadConcept"] = feedback.MisreadConcept,
        ["picture"] = From(feedback.Picture),
        ["cautions"] = Documents.ToArray(feedback.Cautions, c => new BsonValue(c)),
    };

    public static Feedback? ToFeedback(BsonValue document) => document.IsNull ? null : new Feedback
    {
        Reply = document["reply"].TextOrNull(),
        First = document["first"].TextOrNull(),
        WhatItWouldDo = document["whatItWouldDo"].AsString,
        Goals = document["goals"].ToList(g => new GoalResult(g["asked"].AsString, g["reached"].AsString, g["met"].AsBoolean)),
        Why = document["why"].AsString,
        WhereToLook = document["whereToLook"].TextOrNull(),
        Misreading = document["misreading"].TextOrNull(),
        Remark = document["remark"].TextOrNull(),
        MisreadConcept = document["misreadConcept"].TextOrNull(),
        Picture = ToPicture(document["picture"]),
        Cautions = document["cautions"].ToList(c => c.AsString),
    };

    private static BsonValue From(AskedPicture? picture) => picture is null ? BsonValue.Null : new BsonDocument
    {
        ["view"] = picture.View.ToString(),
        ["pair"] = picture.Pair.ToString(),
        ["part"] = picture.Part,
        ["words"] = picture.Words,
        ["slowMS"] = picture.Speeds?.SlowMS,
        ["fastMS"] = picture.Speeds?.FastMS,
        ["speedMS"] = picture.SpeedMS,
    };

    // A view that a later program knew and this one does not is drawn as it always was.
    private static AskedPicture? ToPicture(BsonValue document) =>
        !document.IsNull && Enum.TryParse(document["view"].AsString, out FlyView view) && Enum.TryParse(document["pair"].AsString, out FlyPair pair)
            ? new AskedPicture(view, pair, document["part"].TextOrNull(), document["words"].TextOrNull())
            {
                Speeds = document["slowMS"] is { IsDouble: true } slow && document["fastMS"] is { IsDouble: true } fast ? (slow.AsDouble, fast.AsDouble) : null,
                SpeedMS = document["speedMS"] is { IsDouble: true } speed ? speed.AsDouble : null,
            }
            : null;
}
