using System.Diagnostics;
using LiteDB;
using TyingClass.Storage.Attempts;
using TyingClass.Storage.Files;

namespace TyingClass.Storage.Damages;

/// <summary>Reads every record once, for its checksum: records that nobody opens would keep their damage to themselves.</summary>
internal static class Verification
{
    // So many while others wait: a few milliseconds. Then others have twice as long.
    private const int AtOnce = 50;
    private const int RestTimes = 2;

    public static int Run(Database database, CancellationToken cancel)
    {
        int read = 0;
        foreach (string name in database.Read(db => db.File.GetCollectionNames().ToList()))
        {
            foreach (BsonValue[] some in database.Read(db => db.Records(name).Ids()).Chunk(AtOnce))
            {
                cancel.ThrowIfCancellationRequested();
                long began = Stopwatch.GetTimestamp();
                List<BsonValue> damaged = [], unsealed = [];
                database.Read(db => Look(db, name, some, damaged, unsealed));
                read += some.Length;
                if (unsealed.Count > 0) database.Write(db => AttemptStore.SealNotes(db, unsealed));
                // A sum of attempts can be worked out anew. One that is gone by now was deleted meanwhile, and has no attempts either.
                if (name == StandingDocument.Collection && damaged.Count > 0) database.Write(db => Recount(db, damaged));
                cancel.WaitHandle.WaitOne(RestTimes * Stopwatch.GetElapsedTime(began));
            }
        }

        return read;
    }

    private static int Look(OpenData db, string name, BsonValue[] some, List<BsonValue> damaged, List<BsonValue> unsealed)
    {
        foreach (BsonValue id in some)
        {
            if (db.Records(name).FindById(id) is not { } record) damaged.Add(id);
            else if (name == AttemptDocument.Collection && !AttemptNote.HasSum(record)) unsealed.Add(id);
        }

        return some.Length;
    }

    private static int Recount(OpenData db, List<BsonValue> slots)
    {
        foreach (BsonValue slot in slots) AttemptStore.Recount(db, slot.AsString);
        return slots.Count;
    }
}
