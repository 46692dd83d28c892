using LiteDB;
using TyingClass.Storage.Files;

namespace TyingClass.Storage.Servers;

/// <summary>What the server as a whole remembers about the network it serves.</summary>
public sealed class RoomChoiceStore
{
    private const string Key = "room";

    private readonly Database _database;

    internal RoomChoiceStore(Database database) => _database = database;

    /// <summary>Closed when nobody has decided yet.</summary>
    public RoomChoice Get() => _database.Read(db => Server(db).FindById(Key) is { } found
        ? new RoomChoice(found["open"].AsBoolean, found["address"].TextOrNull(), found["adapter"].TextOrNull())
        : new RoomChoice(IsOpen: false));

    public void Keep(RoomChoice choice)
    {
        ArgumentNullException.ThrowIfNull(choice);
        _database.Write(db => Server(db).Upsert(new BsonDocument
        {
            ["_id"] = Key,
            ["open"] = choice.IsOpen,
            ["address"] = choice.Address,
            ["adapter"] = choice.Adapter,
        }));
    }

    private static Records Server(OpenData db) => db.Records("server");
}
