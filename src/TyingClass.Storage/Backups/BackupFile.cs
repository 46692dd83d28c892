using System.Collections.Immutable;
using System.IO.Compression;
using System.Security.Cryptography;
using LiteDB;
using TyingClass.Storage.Files;
using JsonSerializer = System.Text.Json.JsonSerializer;

namespace TyingClass.Storage.Backups;

/// <summary>
/// A backup: a zip with the database and a list of what is in it. The database has no checksum of its own, so a damaged copy could open and
/// count well; the list carries one. A file is called a backup only once it has been read back, opened and counted.
/// </summary>
internal static class BackupFile
{
    private const string DatabaseEntry = "class.db";
    private const string ContentsEntry = "contents.json";

    public static BackupContents Write(Database database, DataFolder folder, string path, DateTimeOffset now)
    {
        string target = Path.GetFullPath(path);
        string copy = target + ".copy", draft = target + ".part";
        try
        {
            database.CopyTo(copy);
            BackupContents contents = new(1, now, Count(copy), Hash(copy));
            Pack(copy, contents, draft);
            Unpack(draft, copy);
            File.Move(draft, target, overwrite: true);
            return contents;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or LiteException or BackupDamagedException)
        {
            throw new StorageException($"No backup of {folder.Path} was made at {target}: {e.Message}", e);
        }
        finally
        {
            foreach (string left in new[] { draft, copy }.Where(File.Exists)) File.Delete(left);
        }
    }

    /// <summary>Writes the database out to <paramref name="databasePath"/>, opened and counted.</summary>
    /// <exception cref="BackupDamagedException">The file is no backup, or not whole.</exception>
    public static BackupContents Unpack(string path, string databasePath)
    {
        try
        {
            BackupContents contents;
            using (ZipArchive zip = ZipFile.OpenRead(path))
            {
                if (zip.GetEntry(ContentsEntry) is not { } list || zip.GetEntry(DatabaseEntry) is not { } database)
                    throw new BackupDamagedException("It is not a backup made by TyingClass.");
                using (Stream text = list.Open())
                    contents = JsonSerializer.Deserialize<BackupContents>(text) ?? throw new BackupDamagedException("Its list of contents is empty.");
                if (contents.Format != 1) throw new BackupDamagedException("It was made by a newer TyingClass than this one.");
                database.ExtractToFile(databasePath, overwrite: true);
            }

            if (Hash(databasePath) != contents.Sha256) throw new BackupDamagedException("It was damaged after it was made: the checksum does not agree.");
            ImmutableSortedDictionary<string, int> counted = Count(databasePath);
            if (!counted.SequenceEqual(contents.Documents)) throw new BackupDamagedException("It does not hold what its list of contents says.");
            return contents;
        }
        // A damaged file can make LiteDB throw anything at all.
        catch (Exception e) when (e is not (BackupDamagedException or UnauthorizedAccessException or FileNotFoundException or DirectoryNotFoundException))
        {
            throw new BackupDamagedException($"It cannot be read: {e.Message}", e);
        }
    }

    // Every document is read, not only the index: a count alone would not notice a broken page.
    private static ImmutableSortedDictionary<string, int> Count(string databasePath)
    {
        using LiteDatabase db = Database.OpenFile(databasePath, readOnly: true);
        return db.GetCollectionNames().ToImmutableSortedDictionary(name => name, name => db.GetCollection(name).FindAll().Count(), StringComparer.Ordinal);
    }

    private static void Pack(string databasePath, BackupContents contents, string path)
    {
        File.Delete(path);
        using FileStream file = new(path, PrivateNew());
        using ZipArchive zip = new(file, ZipArchiveMode.Create);
        zip.CreateEntryFromFile(databasePath, DatabaseEntry);
        using Stream list = zip.CreateEntry(ContentsEntry).Open();
        JsonSerializer.Serialize(list, contents);
    }

    // A backup holds everything about everyone: its owner's alone, like the data folder.
    private static FileStreamOptions PrivateNew()
    {
        FileStreamOptions options = new() { Mode = FileMode.CreateNew, Access = FileAccess.ReadWrite };
        if (!OperatingSystem.IsWindows()) options.UnixCreateMode = UnixFileMode.UserRead | UnixFileMode.UserWrite;
        return options;
    }

    private static string Hash(string path)
    {
        using FileStream file = File.OpenRead(path);
        return Convert.ToHexStringLower(SHA256.HashData(file));
    }
}
