using LiteDB;
using TyingClass.Recipes.Supplies;
using TyingClass.Storage.Files;

namespace TyingClass.Storage.Classes;

internal static class ClassRoomDocument
{
    public static BsonDocument From(ClassRoom room) => new()
    {
        ["_id"] = room.Id,
        ["name"] = room.Name,
        ["instructorIds"] = Documents.ToArray(room.InstructorIds, id => new BsonValue(id)),
        ["code"] = room.Code,
        ["codeKey"] = ClassCode.Key(room.Code),
        ["timeZone"] = room.TimeZoneId,
        ["createdTicks"] = Ticks.From(room.CreatedAt),
        ["version"] = room.Version,
        ["archivedTicks"] = Ticks.FromOrNull(room.ArchivedAt),
        ["deputies"] = Documents.ToArray(room.Deputies, d => new BsonDocument
        {
            ["personId"] = d.PersonId,
            ["everything"] = d.Everything,
            ["evenings"] = Documents.ToArray(d.Evenings, n => new BsonValue(n)),
        }),
        ["packets"] = room.Packets is { } packets ? From(packets) : BsonValue.Null,
        ["everyDays"] = room.Rhythm is { } rhythm ? rhythm.EveryDays : BsonValue.Null,
        ["skippedDays"] = room.Rhythm?.Skipped,
    };

    public static ClassRoom ToRoom(BsonDocument document) => new(
        document["_id"].AsString,
        document["name"].AsString,
        document["instructorIds"].ToList(id => id.AsString),
        document["code"].AsString,
        document["timeZone"].AsString,
        document["createdTicks"].ToTime(),
        document["version"].AsInt32)
    {
        // None of these in a file from before there were any: a missing field reads as null.
        ArchivedAt = document["archivedTicks"].ToTimeOrNull(),
        Deputies = document["deputies"].ToList(d => new Deputy(d["personId"].AsString, d["everything"].AsBoolean, d["evenings"].ToList(n => n.AsInt32))),
        Packets = document["packets"] is { IsNull: false } packets ? ToPackets(packets) : null,
        Rhythm = document["everyDays"] is { IsInt32: true } every ? new EveningRhythm(every.AsInt32, document["skippedDays"].AsString ?? "") : null,
    };

    private static BsonDocument From(Packets packets) => new()
    {
        ["hooks"] = packets.Hooks,
        ["beads"] = packets.Beads,
        ["pairsOfEyes"] = packets.PairsOfEyes,
        ["wireM"] = packets.WireM,
        ["dressingKg"] = packets.DressingKg,
        ["sparePieces"] = packets.SparePieces,
        ["waste"] = packets.Waste,
    };

    private static Packets ToPackets(BsonValue packets) => new()
    {
        Hooks = packets["hooks"].AsInt32,
        Beads = packets["beads"].AsInt32,
        PairsOfEyes = packets["pairsOfEyes"].AsInt32,
        WireM = packets["wireM"].AsDouble,
        DressingKg = packets["dressingKg"].AsDouble,
        SparePieces = packets["sparePieces"].AsDouble,
        Waste = packets["waste"].AsDouble,
    };
}
