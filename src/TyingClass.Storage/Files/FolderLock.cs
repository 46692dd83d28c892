namespace TyingClass.Storage.Files;

/// <summary>Keeps a second process out of the data folder: LiteDB itself does not, on Linux.</summary>
internal sealed class FolderLock : IDisposable
{
    private readonly FileStream _held;

    private FolderLock(FileStream held) => _held = held;

    /// <exception cref="StorageException">Another process, or another store in this one, has the folder.</exception>
    public static FolderLock Take(DataFolder folder)
    {
        try
        {
            return new FolderLock(new FileStream(folder.LockPath, FileMode.OpenOrCreate, FileAccess.ReadWrite, FileShare.None));
        }
        catch (UnauthorizedAccessException e)
        {
            throw new StorageException($"The data folder {folder.Path} cannot be written to: {e.Message} Give another one with --data DIR.", e);
        }
        catch (IOException e)
        {
            throw new StorageException(
                $"The data folder {folder.Path} is in use by another TyingClass. Stop that one first, or give this one a folder of its own with --data DIR.", e)
            { FolderInUse = true };
        }
    }

    public void Dispose() => _held.Dispose();
}
