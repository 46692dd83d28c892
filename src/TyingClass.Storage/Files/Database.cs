using System.Globalization;
using LiteDB;
using Microsoft.Win32.SafeHandles;

namespace TyingClass.Storage.Files;

/// <summary>
/// The open database behind one gate. Everything runs inside the gate and to its end: LiteDB ties a transaction to a thread,
/// and an instance that met an I/O error must be replaced with nobody in it.
/// </summary>
internal sealed class Database : IDisposable
{
    // Above this the log is folded into the data file, after it is safe on disk: never by LiteDB in the middle of a commit.
    private const long MostLogBytes = 8 << 20;

    private readonly Lock _gate = new();
    private readonly DataFolder _folder;
    private readonly FolderLock _folderLock;
    private readonly Action<ILiteDatabase> _prepare;
    private LiteDatabase? _open;
    private bool _disposed;

    /// <param name="prepare">Creates collections and indexes; runs at every open.</param>
    /// <param name="before">Runs once, when the folder is ours and before the file is opened.</param>
    /// <exception cref="StorageException">The folder is in use or the file cannot be opened.</exception>
    public Database(DataFolder folder, Action<ILiteDatabase> prepare, Action? before = null)
    {
        (_folder, _prepare) = (folder, prepare);
        _folderLock = FolderLock.Take(folder);
        try
        {
            before?.Invoke();
            _open = Open();
        }
        catch
        {
            _folderLock.Dispose();
            throw;
        }
    }

    /// <summary>Results must be complete when the function returns: no lazy query may leave the gate.</summary>
    /// <exception cref="StorageException">The disk failed; the next call opens the file anew.</exception>
    public T Read<T>(Func<ILiteDatabase, T> read)
    {
        lock (_gate) return Guarded(read);
    }

    /// <summary>All or nothing, and on disk when it returns.</summary>
    /// <exception cref="StorageException">The disk failed and nothing was kept; the next call opens the file anew.</exception>
    public T Write<T>(Func<ILiteDatabase, T> write)
    {
        lock (_gate)
        {
            return Guarded(db =>
            {
                db.BeginTrans();
                T result;
                try
                {
                    result = write(db);
                    db.Commit();
                }
                catch
                {
                    db.Rollback();
                    throw;
                }

                FlushLog(db);
                return result;
            });
        }
    }

    /// <summary>Copies the whole database while nobody writes.</summary>
    /// <exception cref="IOException">The copy could not be written; the database itself is unharmed.</exception>
    public void CopyTo(string path)
    {
        lock (_gate)
        {
            Guarded(db =>
            {
                db.Checkpoint();
                return true;
            });
            File.Copy(_folder.DatabasePath, path, overwrite: true);
        }
    }

    public void Dispose()
    {
        lock (_gate)
        {
            if (_disposed) return;
            _disposed = true;
            _open?.Dispose();
            _folderLock.Dispose();
        }
    }

    public static LiteDatabase OpenFile(string path, bool readOnly = false) => new(new ConnectionString
    {
        Filename = path,
        Connection = ConnectionType.Direct,
        Collation = new Collation(CultureInfo.InvariantCulture.LCID, CompareOptions.Ordinal),
        ReadOnly = readOnly,
    });

    private LiteDatabase Open()
    {
        LiteDatabase? db = null;
        try
        {
            db = OpenFile(_folder.DatabasePath);
            db.CheckpointSize = 0;
            _prepare(db);
            db.Checkpoint();
            KeepPrivate();
            return db;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException || e.InnerException is IOException)
        {
            db?.Dispose();
            throw new StorageException(
                $"The database {_folder.DatabasePath} cannot be opened: {e.Message} Make room on the disk, or see who may write there; nothing kept so far "
                    + "is lost.", e);
        }
        catch (Exception e)
        {
            // A damaged file can make LiteDB throw anything at all.
            db?.Dispose();
            throw new StorageException(
                $"The database {_folder.DatabasePath} cannot be opened: {e.Message} Put a backup in its place, or move it away to begin anew.", e);
        }
    }

    private T Guarded<T>(Func<ILiteDatabase, T> work)
    {
        ObjectDisposedException.ThrowIf(_disposed, this);
        _open ??= Open();
        try
        {
            return work(_open);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException || e.InnerException is IOException)
        {
            Abandon();
            throw new StorageException($"The data folder {_folder.Path} could not be read or written, and nothing was kept: {e.Message} Is the disk full?", e);
        }
    }

    // Disposing an instance whose disk failed may fail again; there is nothing more to save in it.
    private void Abandon()
    {
        LiteDatabase? dead = _open;
        _open = null;
        try
        {
            dead?.Dispose();
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or LiteException)
        {
        }
    }

    // LiteDB hands its commits to the operating system and stops there. Windows lets no second handle flush, so there the log is folded in each time.
    private void FlushLog(ILiteDatabase db)
    {
        if (OperatingSystem.IsWindows())
        {
            db.Checkpoint();
            return;
        }

        using SafeFileHandle log = File.OpenHandle(_folder.LogPath, FileMode.Open, FileAccess.Read, FileShare.ReadWrite);
        RandomAccess.FlushToDisk(log);
        if (RandomAccess.GetLength(log) > MostLogBytes) db.Checkpoint();
    }

    private void KeepPrivate()
    {
        if (OperatingSystem.IsWindows()) return;
        foreach (string path in new[] { _folder.DatabasePath, _folder.LogPath }.Where(File.Exists))
            File.SetUnixFileMode(path, UnixFileMode.UserRead | UnixFileMode.UserWrite);
    }
}
