using LiteDB;
using LiteDB.Engine;
using TyingClass.Storage.Attempts;
using TyingClass.Storage.Backups;
using TyingClass.Storage.Files;
using TyingClass.Storage.Upgrades;

namespace TyingClass.Storage.Damages;

/// <summary>
/// Makes a whole file of a broken one: every record that can still be read, page by page, whether or not the way to it is broken. The broken file is kept
/// beside as it was; what was left behind is named.
/// </summary>
internal static class Mending
{
    /// <exception cref="StorageException">The file cannot be mended; it is as it was.</exception>
    public static void Run(DataFolder folder, DamageBook damage, DateTimeOffset now)
    {
        try
        {
            DataFolder incoming = Incoming.Begin(folder);
            File.Copy(folder.DatabasePath, incoming.DatabasePath);
            if (File.Exists(folder.LogPath)) File.Copy(folder.LogPath, incoming.LogPath);
            // Of a file that is shorter than it says nothing at all would be read.
            FileLength.Pad(incoming);
            Dictionary<string, HashSet<string>> before = Ids(incoming.DatabasePath);
            Rebuild(incoming.DatabasePath);
            Dictionary<string, HashSet<string>> after = Ids(incoming.DatabasePath);
            if (after.Values.All(ids => ids.Count == 0)) throw new InvalidDataException("Not one record in it can be read.");
            RecountLost(incoming);
            string? keptAs = Incoming.Switch(folder, "damaged", now);
            damage.Note($"The data file was damaged and has been mended with all that could be read. As it was, it is kept as {keptAs}. {LastBackup(folder)}");
            foreach ((string collection, HashSet<string> ids) in before)
                foreach (string id in ids.Where(id => !after.GetValueOrDefault(collection, []).Contains(id)).Order(StringComparer.Ordinal))
                    damage.Note(new Damage(collection, id, DamageKind.Unreadable));
        }
        // A damaged file can make LiteDB throw anything at all.
        catch (Exception e) when (e is not StorageException)
        {
            throw new StorageException(
                $"The data file {folder.DatabasePath} is damaged and cannot be mended: {e.Message} {Loss.LastBackup(folder)} "
                    + "Or begin anew in another folder, with --data DIR.", e);
        }
        finally
        {
            Incoming.Settle(folder);
        }
    }

    private static void Rebuild(string path)
    {
        using LiteDatabase db = DatabaseFile.OpenFile(path);
        db.Rebuild(new RebuildOptions { Collation = DatabaseFile.Spelling, IncludeErrorReport = false });
    }

    // Records it finds damaged are noted in a book that goes with the folder: whoever reads them in their place finds them again, and says so in the right one.
    private static void RecountLost(DataFolder incoming)
    {
        using OpenData db = new(DatabaseFile.OpenFile(incoming.DatabasePath), new DamageBook(incoming, TimeProvider.System));
        // Without checksums, before its upgrade, a file would look damaged all over.
        if (FileFormat.Of(db.File) < FileFormat.WithChecksums) return;
        AttemptStore.RecountLost(db);
        db.File.Checkpoint();
    }

    // Out of the index, which may itself be broken: then nobody knows what stood there.
    private static Dictionary<string, HashSet<string>> Ids(string path)
    {
        Dictionary<string, HashSet<string>> found = [];
        foreach (string name in Names(path))
        {
            // A broken page ends the instance: each collection is asked through one of its own.
            using LiteDatabase db = DatabaseFile.OpenFile(path);
            try
            {
                found[name] = [.. db.GetCollection(name).Query().Select(BsonExpression.Create("$._id")).ToEnumerable().Select(d => Damage.NameOf(d["_id"]))];
            }
            catch (Exception e) when (e is not (IOException or UnauthorizedAccessException))
            {
                Dead.Quiet(db);
                found[name] = [];
            }
        }

        return found;
    }

    private static List<string> Names(string path)
    {
        using LiteDatabase db = DatabaseFile.OpenFile(path);
        return [.. db.GetCollectionNames()];
    }

    private static string LastBackup(DataFolder folder) => KeptBackups.Latest(folder) is { } latest
        ? $"What is missing below may stand in the last backup, {latest}."
        : "There is no backup in its own folder.";
}
