using LiteDB;
using TyingClass.Storage.Damages;
using TyingClass.Storage.Files;

namespace TyingClass.Storage.People;

/// <summary>
/// Whether the machine's clock may be believed when something is to be deleted for its age. After a leap of more than two weeks, as of a clock that was set
/// wrong or a server that stood still all summer, it is believed again only when the server has run on three different days.
/// </summary>
internal static class ClockWatch
{
    public const int DaysToBelieve = 3;

    private static readonly TimeSpan Leap = TimeSpan.FromDays(14);

    private const string Key = "clock";

    public static bool MayBelieve(OpenData db, DateTimeOffset now)
    {
        BsonDocument? kept = db.Records("clock").FindById(Key);
        // Before it was first looked at, the last write says when this server last ran.
        DateTimeOffset last = kept?["seenTicks"].ToTime() ?? (Ledger.Of(db) is { Writes: > 0 } ledger ? ledger.At : now);
        int days = kept?["days"].AsInt32 ?? DaysToBelieve;
        if (now - last > Leap) days = 1;
        // Put back: what was ahead is over.
        else if (last - now > Leap) days = DaysToBelieve;
        else if (now.UtcDateTime.Date != last.UtcDateTime.Date) days = Math.Min(days + 1, DaysToBelieve);
        db.Records("clock").Upsert(new BsonDocument { ["_id"] = Key, ["seenTicks"] = Ticks.From(now), ["days"] = days });
        return days >= DaysToBelieve;
    }
}
