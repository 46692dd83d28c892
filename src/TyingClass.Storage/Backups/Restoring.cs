using TyingClass.Storage.Files;

namespace TyingClass.Storage.Backups;

/// <param name="KeptAs">Where the data that stood there before are now; null when there were none.</param>
public sealed record Restored(BackupContents Contents, string? KeptAs);

/// <summary>Puts a backup in the place of a stopped server's data, by one switch. What stood there is kept beside it.</summary>
public static class Restoring
{
    /// <exception cref="StorageException">The folder is in use, or cannot be written; then nothing was changed.</exception>
    /// <exception cref="BackupDamagedException">The file is no whole backup; nothing was changed.</exception>
    public static Restored Restore(DataFolder folder, string path, DateTimeOffset now)
    {
        ArgumentNullException.ThrowIfNull(folder);
        using FolderLock held = FolderLock.Take(folder);
        try
        {
            // A switch that an earlier run began is finished first: what it put in place is then what is kept aside.
            Incoming.Settle(folder);
            DataFolder incoming = Incoming.Begin(folder);
            DataFolder.MakePrivate(incoming.PhotosPath);
            BackupContents contents = BackupFile.Unpack(path, incoming.DatabasePath, incoming.PhotosPath);
            Restored restored = new(contents, Incoming.Switch(folder, "before-restore", now));
            // What was damaged is no longer the data.
            if (File.Exists(folder.DamagePath)) File.Move(folder.DamagePath, Path.ChangeExtension(restored.KeptAs ?? folder.DamagePath, ".damage.txt"));
            return restored;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new StorageException($"{path} was not restored into {folder.Path}: {e.Message}", e);
        }
        finally
        {
            Incoming.Settle(folder);
        }
    }
}
