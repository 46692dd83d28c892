using TyingClass.Storage;
using TyingClass.Storage.Backups;
using TyingClass.Storage.Files;

namespace TyingClass.CommandLine;

/// <summary>A backup of a data folder, whether a server has it open or not.</summary>
internal static class FolderBackup
{
    // A large class on a slow disk; the server gives up on a note only after longer.
    private static readonly TimeSpan Patience = TimeSpan.FromMinutes(5);

    /// <exception cref="StorageException">No backup was made.</exception>
    public static BackupContents Write(DataFolder folder, string path)
    {
        try
        {
            using ClassStore store = new(folder, TimeProvider.System);
            return store.Backup(path);
        }
        catch (StorageException e) when (e.FolderInUse)
        {
            return BackupRequests.Ask(folder, path, TimeProvider.System, Patience);
        }
    }
}
