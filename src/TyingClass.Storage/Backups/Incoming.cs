using System.Globalization;
using System.Text;
using TyingClass.Storage.Files;

namespace TyingClass.Storage.Backups;

/// <summary>
/// Data that take the place of others, by one switch. They are laid whole into a folder beside, forced to disk, and then a note is put there under its final
/// name: from that moment on they are the data, whatever happens. Before it, a crash leaves the old ones as they are; after it, whoever opens the folder next
/// finishes the moves.
/// </summary>
internal static class Incoming
{
    private const string NoteName = "take-over";

    /// <summary>An empty place to lay the new data file into, and the photos, if photos are to be replaced too.</summary>
    public static DataFolder Begin(DataFolder folder)
    {
        if (Directory.Exists(folder.IncomingPath)) Directory.Delete(folder.IncomingPath, recursive: true);
        DataFolder.MakePrivate(folder.IncomingPath);
        return DataFolder.Seen(folder.IncomingPath);
    }

    /// <param name="before">Of what the old data are kept: "before-restore".</param>
    /// <returns>Where the old data file is now; null when there was none.</returns>
    public static string? Switch(DataFolder folder, string before, DateTimeOffset now)
    {
        string stem = FreeStem(folder, before, now);
        Durable.Flush(DataFolder.Seen(folder.IncomingPath).DatabasePath);
        string draft = NotePath(folder) + ".draft";
        File.WriteAllText(draft, Path.GetFileName(stem), Encoding.UTF8);
        Durable.Flush(draft);
        Durable.FlushFolder(folder.IncomingPath);
        File.Move(draft, NotePath(folder));
        Durable.FlushFolder(folder.IncomingPath);
        Settle(folder);
        return File.Exists(stem + ".db") ? stem + ".db" : null;
    }

    /// <summary>Finishes a switch that was begun, or forgets what was not ready for one. Every step may be the second time.</summary>
    public static void Settle(DataFolder folder)
    {
        if (!Directory.Exists(folder.IncomingPath)) return;
        if (File.Exists(NotePath(folder)))
        {
            string stem = Path.Combine(folder.Path, Path.GetFileName(File.ReadAllText(NotePath(folder), Encoding.UTF8)));
            DataFolder incoming = DataFolder.Seen(folder.IncomingPath);
            if (File.Exists(incoming.DatabasePath)) TakeOverData(folder, incoming, stem);
            if (Directory.Exists(incoming.PhotosPath)) TakeOverPhotos(folder, incoming, stem);
            Durable.FlushFolder(folder.Path);
        }

        Directory.Delete(folder.IncomingPath, recursive: true);
    }

    // The log goes with its database under the name LiteDB will look for, so that the pair can be put back by renaming both.
    private static void TakeOverData(DataFolder folder, DataFolder incoming, string stem)
    {
        Aside(folder.LogPath, stem + "-log.db");
        Aside(folder.CountPath, stem + ".count");
        Aside(folder.DatabasePath, stem + ".db");
        if (!OperatingSystem.IsWindows()) File.SetUnixFileMode(incoming.DatabasePath, UnixFileMode.UserRead | UnixFileMode.UserWrite);
        File.Move(incoming.DatabasePath, folder.DatabasePath);
    }

    private static void TakeOverPhotos(DataFolder folder, DataFolder incoming, string stem)
    {
        // Whoever opens a folder makes an empty one for photos.
        if (!Directory.Exists(folder.PhotosPath) || !Directory.EnumerateFileSystemEntries(folder.PhotosPath).Any())
        {
            if (Directory.Exists(folder.PhotosPath)) Directory.Delete(folder.PhotosPath);
        }
        else Directory.Move(folder.PhotosPath, stem + "-photos");

        Directory.Move(incoming.PhotosPath, folder.PhotosPath);
    }

    private static void Aside(string path, string keptAs)
    {
        if (File.Exists(path)) File.Move(path, keptAs);
    }

    // Two in one second would meet.
    public static string FreeStem(DataFolder folder, string before, DateTimeOffset now)
    {
        string stem = Path.Combine(folder.Path, $"{before}-{now.UtcDateTime.ToString("yyyyMMdd-HHmmss", CultureInfo.InvariantCulture)}"), free = stem;
        for (int i = 2; Directory.EnumerateFileSystemEntries(folder.Path, Path.GetFileName(free) + "*").Any(); i++)
            free = string.Create(CultureInfo.InvariantCulture, $"{stem}-{i}");
        return free;
    }

    private static string NotePath(DataFolder folder) => Path.Combine(folder.IncomingPath, NoteName);
}
