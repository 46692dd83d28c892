using LiteDB;
using TyingClass.Storage.Damages;

namespace TyingClass.Storage.Files;

/// <summary>The open file, as everything but the file's own keeping sees it: collections whose records carry a checksum.</summary>
internal sealed class OpenData(LiteDatabase file, DamageBook damage) : IDisposable
{
    /// <summary>For upgrades, counts and transactions; not for records.</summary>
    public LiteDatabase File => file;

    public Records Records(string collection) => new(file.GetCollection(collection), damage);

    public void Dispose() => file.Dispose();
}
