using LiteDB;

namespace TyingClass.Storage.Files;

/// <summary>A copy is called a backup only once it has been opened and counted.</summary>
internal static class Backup
{
    public static IReadOnlyDictionary<string, int> Write(Database database, DataFolder folder, string path)
    {
        string target = Path.GetFullPath(path);
        string draft = target + ".part";
        try
        {
            database.CopyTo(draft);
            Dictionary<string, int> counted;
            using (LiteDatabase copy = Database.OpenFile(draft, readOnly: true)) counted = Count(copy);
            File.Move(draft, target, overwrite: true);
            return counted;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or LiteException)
        {
            throw new StorageException($"No backup of {folder.Path} was made at {target}: {e.Message}", e);
        }
        finally
        {
            if (File.Exists(draft)) File.Delete(draft);
        }
    }

    public static Dictionary<string, int> Count(ILiteDatabase db) =>
        db.GetCollectionNames().ToDictionary(name => name, name => db.GetCollection(name).Count());
}
