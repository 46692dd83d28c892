using LiteDB;
using TyingClass.Balance.Reports;
using TyingClass.Storage.Files;

namespace TyingClass.Storage.BenchLog;

internal static class LogDocument
{
    public static Records Entries(OpenData db) => db.Records("bench_log");

    public static void Prepare(OpenData db)
    {
        Entries(db).EnsureIndex("personId", "$.personId");
        Entries(db).EnsureIndex("classId", "$.classId");
        Entries(db).EnsureIndex("trashedTicks", "$.trashedTicks");
    }

    public static BsonDocument From(LogEntry entry) => new()
    {
        ["_id"] = entry.Id,
        ["personId"] = entry.PersonId,
        ["classId"] = entry.ClassId,
        ["fly"] = new BsonDocument
        {
            ["name"] = entry.Fly.Name,
            ["recipe"] = entry.Fly.RecipeText,
            ["source"] = entry.Fly.Source.ToString(),
            ["sourceId"] = entry.Fly.SourceId,
            ["revision"] = entry.Fly.Revision,
        },
        ["seen"] = new BsonDocument
        {
            ["hangRad"] = Number(entry.Seen.HangAngleRad),
            ["way"] = entry.Seen.Way?.ToString(),
            ["massKg"] = Number(entry.Seen.MassKg),
            ["sinkTimeS"] = Number(entry.Seen.SinkTimeS),
            ["sinkDepthM"] = Number(entry.Seen.SinkDepthM),
            ["hopM"] = Number(entry.Seen.HopM),
            ["noseDownS"] = Number(entry.Seen.NoseDownS),
            ["state"] = entry.Seen.State.ToString(),
            ["waterC"] = Number(entry.Seen.WaterC),
        },
        ["foreseen"] = new BsonDocument
        {
            ["hangRad"] = entry.Foreseen.HangAngleRad,
            ["way"] = entry.Foreseen.Way,
            ["massKg"] = entry.Foreseen.MassKg,
            ["sinkRateMS"] = Number(entry.Foreseen.SinkRateMS),
            ["hopM"] = Number(entry.Foreseen.HopM),
            ["noseDownS"] = Number(entry.Foreseen.NoseDownS),
            ["engine"] = entry.Foreseen.EngineVersion,
        },
        ["note"] = entry.Note,
        ["atTicks"] = Ticks.From(entry.At),
        ["version"] = entry.Version,
        ["photoId"] = entry.PhotoId,
        ["trashedTicks"] = Ticks.FromOrNull(entry.TrashedAt),
    };

    public static LogEntry ToEntry(BsonDocument document)
    {
        BsonValue fly = document["fly"], seen = document["seen"], foreseen = document["foreseen"];
        return new LogEntry(
            document["_id"].AsString,
            document["personId"].AsString,
            document["classId"].TextOrNull(),
            new TiedFly(fly["name"].AsString, fly["recipe"].AsString, Enum.Parse<FlySource>(fly["source"].AsString), fly["sourceId"].TextOrNull(),
                fly["revision"].AsInt32),
            new Seen
            {
                HangAngleRad = seen["hangRad"].NumberOrNull(),
                Way = seen["way"].TextOrNull() is { } way ? Enum.Parse<SeenWay>(way) : null,
                MassKg = seen["massKg"].NumberOrNull(),
                SinkTimeS = seen["sinkTimeS"].NumberOrNull(),
                SinkDepthM = seen["sinkDepthM"].NumberOrNull(),
                HopM = seen["hopM"].NumberOrNull(),
                NoseDownS = seen["noseDownS"].NumberOrNull(),
                State = Enum.Parse<WetState>(seen["state"].AsString),
                WaterC = seen["waterC"].NumberOrNull(),
            },
            new Foreseen(
                foreseen["hangRad"].AsDouble, foreseen["way"].AsString, foreseen["massKg"].AsDouble, foreseen["sinkRateMS"].NumberOrNull(),
                foreseen["engine"].AsString)
            {
                HopM = foreseen["hopM"].NumberOrNull(),
                NoseDownS = foreseen["noseDownS"].NumberOrNull(),
            },
            document["note"].AsString,
            document["atTicks"].ToTime(),
            document["version"].AsInt32)
        {
            PhotoId = document["photoId"].TextOrNull(),
            TrashedAt = document["trashedTicks"].ToTimeOrNull(),
        };
    }

    private static BsonValue Number(double? value) => value is { } number ? number : BsonValue.Null;
}
