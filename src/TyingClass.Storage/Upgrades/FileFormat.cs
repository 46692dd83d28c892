using System.Collections.Immutable;
using LiteDB;
using TyingClass.Storage.Files;

namespace TyingClass.Storage.Upgrades;

/// <summary>One step from the format before to <paramref name="To"/>.</summary>
/// <param name="Run">Works on a copy of the file, which takes the file's place only when all steps are done.</param>
internal sealed record UpgradeStep(int To, Action<ILiteDatabase> Run);

/// <summary>
/// The version of the data file, kept in the file's own head (LiteDB's USER_VERSION). It goes up when an older program would misread a
/// file or lose something of it; a field that older programs leave alone needs no new version.
/// </summary>
internal static class FileFormat
{
    /// <summary>Files made before there was a version carry none.</summary>
    public const int Unmarked = 1;

    /// <summary>The first in which every record has a checksum.</summary>
    public const int WithChecksums = 3;

    /// <summary>What this program writes.</summary>
    public static int Current => Steps[^1].To;

    /// <summary>Oldest first; none is ever taken out.</summary>
    public static ImmutableArray<UpgradeStep> Steps { get; } =
    [
        // From 2 on a file says what it is; nothing in it changes.
        new(2, _ => { }),
        // From 3 on every record carries its checksum; a program of before would leave it out as it writes.
        new(WithChecksums, PutChecksums),
    ];

    /// <summary>0 for a file in which nothing was ever kept.</summary>
    public static int Of(ILiteDatabase db) => db.UserVersion > 0 ? db.UserVersion : db.GetCollectionNames().Any() ? Unmarked : 0;

    private static void PutChecksums(ILiteDatabase db)
    {
        foreach (string name in db.GetCollectionNames().ToList())
        {
            ILiteCollection<BsonDocument> collection = db.GetCollection(name);
            List<BsonValue> ids = [.. collection.Query().Select(BsonExpression.Create("$._id")).ToEnumerable().Select(d => d["_id"])];
            // Some at a time: a large class need not fit into memory.
            foreach (BsonValue[] some in ids.Chunk(500)) collection.Update(some.Select(id => Checksum.Put(name, collection.FindById(id))).ToList());
        }
    }

    /// <summary>A file begun now is of this version.</summary>
    public static void MarkNew(ILiteDatabase db)
    {
        if (db.UserVersion == 0) db.UserVersion = Current;
    }
}
