using System.Globalization;
using TyingClass.Storage.Files;

namespace TyingClass.Storage.Backups;

/// <param name="KeptAs">Where the data that stood there before are now; null when there were none.</param>
public sealed record Restored(BackupContents Contents, string? KeptAs);

/// <summary>Puts a backup in the place of a stopped server's data. What stood there is kept beside it.</summary>
public static class Restoring
{
    /// <exception cref="StorageException">The folder is in use, or cannot be written; then nothing was changed.</exception>
    /// <exception cref="BackupDamagedException">The file is no whole backup; nothing was changed.</exception>
    public static Restored Restore(DataFolder folder, string path, DateTimeOffset now)
    {
        ArgumentNullException.ThrowIfNull(folder);
        using FolderLock held = FolderLock.Take(folder);
        string draft = folder.DatabasePath + ".restoring", photos = folder.PhotosPath + ".restoring";
        try
        {
            DataFolder.MakePrivate(photos);
            BackupContents contents = BackupFile.Unpack(path, draft, photos);
            string? kept = SetAside(folder, now);
            File.Move(draft, folder.DatabasePath);
            Directory.Move(photos, folder.PhotosPath);
            if (!OperatingSystem.IsWindows()) File.SetUnixFileMode(folder.DatabasePath, UnixFileMode.UserRead | UnixFileMode.UserWrite);
            return new Restored(contents, kept);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new StorageException($"{path} was not restored into {folder.Path}: {e.Message}", e);
        }
        finally
        {
            File.Delete(draft);
            if (Directory.Exists(photos)) Directory.Delete(photos, recursive: true);
        }
    }

    // The log goes with its database under the name LiteDB will look for, so that the pair can be put back by renaming both.
    private static string? SetAside(DataFolder folder, DateTimeOffset now)
    {
        string stem = Path.Combine(folder.Path, $"before-restore-{now.UtcDateTime.ToString("yyyyMMdd-HHmmss", CultureInfo.InvariantCulture)}");
        if (Directory.Exists(folder.PhotosPath) && Directory.EnumerateFileSystemEntries(folder.PhotosPath).Any())
            Directory.Move(folder.PhotosPath, stem + "-photos");
        else if (Directory.Exists(folder.PhotosPath)) Directory.Delete(folder.PhotosPath);
        if (!File.Exists(folder.DatabasePath)) return null;
        // The log first: should the second move fail, the first is undone and the pair is whole again.
        bool hasLog = File.Exists(folder.LogPath);
        if (hasLog) File.Move(folder.LogPath, stem + "-log.db");
        try
        {
            File.Move(folder.DatabasePath, stem + ".db");
        }
        catch
        {
            if (hasLog) File.Move(stem + "-log.db", folder.LogPath);
            throw;
        }

        return stem + ".db";
    }
}
