using System.Globalization;
using LiteDB;
using Microsoft.Win32.SafeHandles;

namespace TyingClass.Storage.Files;

/// <summary>
/// The open database behind one gate. Everything runs inside the gate and to its end: LiteDB ties a transaction to a thread,
/// and an instance that met an I/O error must be replaced with nobody in it.
/// </summary>
/// <remarks>A disk that takes nothing more still gives back what is on it. Then the file is opened for reading only, so that everyone can read on;
/// every write tries the whole opening again, and so does a read from time to time, until the disk has room.</remarks>
internal sealed class Database : IDisposable
{
    // Above this the log is folded into the data file, after it is safe on disk: never by LiteDB in the middle of a commit.
    private const long MostLogBytes = 8 << 20;

    // How long a disk that took nothing is left alone by those who only read.
    private static readonly TimeSpan Rest = TimeSpan.FromSeconds(2);

    private readonly Lock _gate = new();
    private readonly DataFolder _folder;
    private readonly FolderLock _folderLock;
    private readonly Action<ILiteDatabase> _prepare;
    private readonly TimeProvider _time;
    private LiteDatabase? _open;
    private LiteDatabase? _reading;
    private long _triedAt;
    private bool _disposed;

    /// <param name="prepare">Creates collections and indexes; runs at every open.</param>
    /// <param name="before">Runs once, when the folder is ours and before the file is opened.</param>
    /// <exception cref="StorageException">The folder is in use or the file cannot be opened.</exception>
    public Database(DataFolder folder, Action<ILiteDatabase> prepare, Action? before = null, TimeProvider? time = null)
    {
        (_folder, _prepare, _time) = (folder, prepare, time ?? TimeProvider.System);
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
    /// <exception cref="StorageException">Not even reading is possible; the next call opens the file anew.</exception>
    public T Read<T>(Func<ILiteDatabase, T> read)
    {
        lock (_gate) return Guarded(ForReading, read);
    }

    /// <summary>All or nothing, and on disk when it returns.</summary>
    /// <exception cref="StorageException">The disk failed and nothing was kept; the next call opens the file anew.</exception>
    public T Write<T>(Func<ILiteDatabase, T> write)
    {
        lock (_gate)
        {
            return Guarded(ForWriting, db =>
            {
                // A folder that was moved away would take the write and never show it again.
                if (!File.Exists(_folder.DatabasePath)) throw new FileNotFoundException($"{_folder.DatabasePath} is no longer there.");
                db.BeginTrans();
                T result;
                try
                {
                    result = write(db);
                    db.Commit();
                }
                catch
                {
                    RollBack(db);
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
            Guarded(ForWriting, db =>
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
            _reading?.Dispose();
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
        catch (Exception e) when (IsOfTheDisk(e))
        {
            Discard(ref db);
            throw new StorageException(
                $"The database {_folder.DatabasePath} cannot be opened: {e.Message} Make room on the disk, or see who may write there; nothing kept so far "
                    + "is lost.", e);
        }
        catch (Exception e)
        {
            // A damaged file can make LiteDB throw anything at all.
            Discard(ref db);
            throw new StorageException(
                $"The database {_folder.DatabasePath} cannot be opened: {e.Message} Put a backup in its place, or move it away to begin anew.", e);
        }
    }

    // An instance that cannot even take back what it began is of no more use, whatever it says of the reason.
    private static void RollBack(ILiteDatabase db)
    {
        try
        {
            db.Rollback();
        }
        catch (Exception e) when (e is not IOException)
        {
            throw new IOException(e.Message, e);
        }
    }

    private LiteDatabase ForWriting()
    {
        if (_open is not null) return _open;
        _triedAt = _time.GetTimestamp();
        // First: LiteDB removes an empty log as it closes, and it would be the log of the new one.
        Discard(ref _reading);
        return _open = Open();
    }

    private LiteDatabase ForReading()
    {
        if (_open is not null) return _open;
        if (_reading is not null && _time.GetElapsedTime(_triedAt) < Rest) return _reading;
        try
        {
            return ForWriting();
        }
        catch (StorageException)
        {
            // It was open before, so it can be read, unless the reading says otherwise.
            return _reading ??= OpenFile(_folder.DatabasePath, readOnly: true);
        }
    }

    private static bool IsOfTheDisk(Exception e) => e is IOException or UnauthorizedAccessException || e.InnerException is IOException;

    private T Guarded<T>(Func<LiteDatabase> opened, Func<ILiteDatabase, T> work)
    {
        ObjectDisposedException.ThrowIf(_disposed, this);
        try
        {
            return work(opened());
        }
        catch (Exception e) when (e is not StorageException && IsOfTheDisk(e))
        {
            Discard(ref _open);
            Discard(ref _reading);
            throw new StorageException($"The data folder {_folder.Path} could not be read or written, and nothing was kept: {e.Message} Is the disk full?", e);
        }
    }

    // Disposing an instance whose disk failed may fail again; there is nothing more to save in it.
    private static void Discard(ref LiteDatabase? database)
    {
        LiteDatabase? dead = database;
        database = null;
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
