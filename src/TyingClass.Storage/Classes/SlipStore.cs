using LiteDB;
using TyingClass.Storage.Files;

namespace TyingClass.Storage.Classes;

/// <summary>Slips with passphrases to hand over, sealed by whoever lays them here: the store cannot read them.</summary>
/// <param name="Ticket">What they are asked for with.</param>
/// <param name="ByPersonId">Who made them, and alone may see them.</param>
public sealed record SealedSlips(string Ticket, string ByPersonId, DateTimeOffset Until, string Sealed);

/// <summary>
/// Slips between the form that made them and the page that shows them. They are written together with the accounts they are for: a server that is stopped right
/// after would else leave accounts whose passphrases nobody knows.
/// </summary>
public sealed class SlipStore
{
    private readonly Database _database;
    private readonly TimeProvider _time;

    internal SlipStore(Database database, TimeProvider time) => (_database, _time) = (database, time);

    public SealedSlips? Find(string ticket) => _database.Read(db =>
        Slips(db).FindById(ticket) is { } found && To(found) is var slips && IsHere(slips) ? slips : null);

    /// <summary>The last ones this person made that are still here.</summary>
    public SealedSlips? LatestOf(string personId) => _database.Read(db =>
        Slips(db).FindAll("byId = @0", personId).Select(To).Where(IsHere).OrderByDescending(s => s.Until).FirstOrDefault());

    /// <summary>Removes those whose time is over.</summary>
    public void Sweep() => _database.Write(db => Slips(db).DeleteMany("untilTicks < @0", Ticks.From(_time.GetUtcNow())));

    internal static void Prepare(OpenData db) => Slips(db).EnsureIndex("byId", "$.byId");

    internal static void KeepIn(OpenData db, SealedSlips slips) => Slips(db).Upsert(new BsonDocument
    {
        ["_id"] = slips.Ticket,
        ["byId"] = slips.ByPersonId,
        ["untilTicks"] = Ticks.From(slips.Until),
        ["sealed"] = slips.Sealed,
    });

    private bool IsHere(SealedSlips slips) => slips.Until >= _time.GetUtcNow();

    private static SealedSlips To(BsonDocument d) => new(d["_id"].AsString, d["byId"].AsString, d["untilTicks"].ToTime(), d["sealed"].AsString);

    private static Records Slips(OpenData db) => db.Records("slips");
}
