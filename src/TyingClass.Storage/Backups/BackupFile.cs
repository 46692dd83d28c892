using System.Collections.Immutable;
using System.IO.Compression;
using System.Security.Cryptography;
using LiteDB;
using TyingClass.Storage.Files;
using TyingClass.Storage.Photos;
using TyingClass.Storage.Upgrades;
using JsonSerializer = System.Text.Json.JsonSerializer;

namespace TyingClass.Storage.Backups;

/// <summary>
/// A backup: a zip with the database and a list of what is in it. The database has no checksum of its own, so a damaged copy could open and
/// count well; the list carries one. A file is called a backup only once it has been read back, opened and counted.
/// </summary>
internal static class BackupFile
{
    private const string DatabaseEntry = "class.db";
    private const string PhotoEntries = "photos/";
    private const string ContentsEntry = "contents.json";

    public static BackupContents Write(Database database, DataFolder folder, string path, DateTimeOffset now) => Write(database.CopyTo, folder, path, now);

    /// <param name="copyTo">Copies the whole database to a path.</param>
    public static BackupContents Write(Action<string> copyTo, DataFolder folder, string path, DateTimeOffset now)
    {
        string target = Path.GetFullPath(path);
        string copy = target + ".copy", draft = target + ".part";
        try
        {
            copyTo(copy);
            // After the database: a photo is put in place before an entry names it, so none that is named is missed.
            string[] photos = [.. Directory.EnumerateFiles(folder.PhotosPath, "*.jpg")];
            Looked looked = Look(copy);
            BackupContents contents =
                new(1, now, looked.Counted, Hash(copy), photos.ToImmutableSortedDictionary(p => Path.GetFileName(p), Hash, StringComparer.Ordinal))
                {
                    Damaged = looked.Damaged + photos.Count(p => !PhotoStore.IsWhole(p)),
                };
            Pack(copy, photos, contents, draft);
            Unpack(draft, copy, photosPath: null);
            Durable.Flush(draft);
            File.Move(draft, target, overwrite: true);
            Durable.FlushFolder(Path.GetDirectoryName(target)!);
            return contents;
        }
        catch (Exception e) when (e is not StorageException)
        {
            throw new StorageException($"No backup of {folder.Path} was made at {target}: {e.Message}", e);
        }
        finally
        {
            foreach (string left in new[] { draft, copy }.Where(File.Exists)) File.Delete(left);
        }
    }

    /// <summary>Writes the database out to <paramref name="databasePath"/>, opened and counted.</summary>
    /// <param name="photosPath">A folder for the photos; null to look at them and write none.</param>
    /// <exception cref="BackupDamagedException">The file is no backup, or not whole.</exception>
    public static BackupContents Unpack(string path, string databasePath, string? photosPath)
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
                foreach ((string name, string hash) in contents.Photos) UnpackPhoto(zip, name, hash, photosPath);
            }

            if (Hash(databasePath) != contents.Sha256) throw new BackupDamagedException("It was damaged after it was made: the checksum does not agree.");
            Looked looked = Look(databasePath);
            int format = looked.Format;
            if (format > FileFormat.Current)
                throw new BackupDamagedException(
                    $"It was made by a newer TyingClass than this one: its data are of format {format}, and this one reads up to {FileFormat.Current}. Use "
                        + "the newer one.");
            if (!looked.Counted.SequenceEqual(contents.Documents) || looked.Damaged > contents.Damaged)
                throw new BackupDamagedException("It does not hold what its list of contents says.");
            return contents;
        }
        catch (InvalidDataException e)
        {
            throw new BackupDamagedException(
                "It is not a backup made by TyingClass, or only a part of one: a backup is a zip file, and this cannot be read as a whole one. Choose a file "
                    + "from the page Files or from the folder backups, or copy it here again.", e);
        }
        // A damaged file can make LiteDB throw anything at all.
        catch (Exception e) when (e is not (BackupDamagedException or UnauthorizedAccessException or FileNotFoundException or DirectoryNotFoundException))
        {
            throw new BackupDamagedException($"It cannot be read: {e.Message}", e);
        }
    }

    private static void UnpackPhoto(ZipArchive zip, string name, string hash, string? photosPath)
    {
        // The name comes out of a file: it must not lead anywhere else.
        if (Path.GetFileName(name) != name || zip.GetEntry(PhotoEntries + name) is not { } entry)
            throw new BackupDamagedException($"The photo {name} of its list is missing.");
        using MemoryStream bytes = new();
        using (Stream photo = entry.Open()) photo.CopyTo(bytes);
        if (Convert.ToHexStringLower(SHA256.HashData(bytes.ToArray())) != hash) throw new BackupDamagedException($"The photo {name} was damaged.");
        if (photosPath is not null) File.WriteAllBytes(Path.Combine(photosPath, name), bytes.ToArray());
    }

    private sealed record Looked(ImmutableSortedDictionary<string, int> Counted, int Damaged, int Format);

    // Every document is read, not only the index: a count alone would not notice a broken page. And its checksum, for a broken bit.
    private static Looked Look(string databasePath)
    {
        using LiteDatabase db = DatabaseFile.OpenFile(databasePath, readOnly: true);
        int format = FileFormat.Of(db), damaged = 0;
        SortedDictionary<string, int> counted = new(StringComparer.Ordinal);
        try
        {
            foreach (string name in db.GetCollectionNames().ToList())
            {
                counted[name] = 0;
                foreach (BsonDocument record in db.GetCollection(name).FindAll())
                {
                    counted[name]++;
                    if (format >= FileFormat.WithChecksums && !Checksum.TakeOff(name, record)) damaged++;
                }
            }
        }
        catch
        {
            Dead.Quiet(db);
            throw;
        }

        return new Looked(counted.ToImmutableSortedDictionary(StringComparer.Ordinal), damaged, format);
    }

    private static void Pack(string databasePath, string[] photos, BackupContents contents, string path)
    {
        File.Delete(path);
        using FileStream file = new(path, PrivateNew());
        using ZipArchive zip = new(file, ZipArchiveMode.Create);
        zip.CreateEntryFromFile(databasePath, DatabaseEntry);
        foreach (string photo in photos) zip.CreateEntryFromFile(photo, PhotoEntries + Path.GetFileName(photo), CompressionLevel.NoCompression);
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
