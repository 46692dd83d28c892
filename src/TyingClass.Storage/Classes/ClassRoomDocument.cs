using LiteDB;
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
    };

    public static ClassRoom ToRoom(BsonDocument document) => new(
        document["_id"].AsString,
        document["name"].AsString,
        document["instructorIds"].ToList(id => id.AsString),
        document["code"].AsString,
        document["timeZone"].AsString,
        document["createdTicks"].ToTime(),
        document["version"].AsInt32);
}
