using LiteDB;
using TyingClass.Storage.Files;

namespace TyingClass.Storage.People;

/// <summary>
/// Visits that were ended by signing out. The browser is told to forget its sign-in, but a copy of it (a shared machine, a saved page) would still open the
/// door: it is refused by this list until it would have run out by itself.
/// </summary>
public sealed class LeftVisits
{
    private readonly Database _database;
    private readonly TimeProvider _time;

    internal LeftVisits(Database database, TimeProvider time) => (_database, _time) = (database, time);

    /// <summary>A name for a visit that begins. Nothing is written.</summary>
    public static string NewVisit() => RandomId.NewSecret();

    /// <param name="lasts">How long a sign-in of this visit could still be used.</param>
    public void Leave(string visit, TimeSpan lasts)
    {
        DateTimeOffset now = _time.GetUtcNow();
        _database.Write(db =>
        {
            Visits(db).DeleteMany("untilTicks <= @0", Ticks.From(now));
            return Visits(db).Upsert(new BsonDocument { ["_id"] = RandomId.Hash(visit), ["untilTicks"] = Ticks.From(now + lasts) });
        });
    }

    public bool HasLeft(string visit) => _database.Read(db => Visits(db).FindById(RandomId.Hash(visit)) is not null);

    internal static void Prepare(OpenData db) => Visits(db).EnsureIndex("untilTicks", "$.untilTicks");

    private static Records Visits(OpenData db) => db.Records("left_visits");
}
