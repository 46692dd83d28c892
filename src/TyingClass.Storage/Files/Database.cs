using LiteDB;
using TyingClass.Storage.Backups;
using TyingClass.Storage.Damages;

namespace TyingClass.Storage.Files;

/// <summary>
/// The open database behind one gate. Everything runs inside the gate and to its end: LiteDB ties a transaction to a thread,
/// and an instance that met an I/O error must be replaced with nobody in it.
/// </summary>
/// <remarks>A disk that takes nothing more still gives back what is on it. Then the file is opened for reading only, so that everyone can read on;
/// every write tries the whole opening again, and so does a read from time to time, until the disk has room.</remarks>
internal sealed class Database : IDisposable
{
    // How long a disk that took nothing is left alone by those who only read.
    private static readonly TimeSpan Rest = TimeSpan.FromSeconds(2);

    private readonly Lock _gate = new();
    private readonly DataFolder _folder;
    private readonly FolderLock _folderLock;
    private readonly Action<OpenData> _prepare;
    private readonly Ledger _ledger;
    private readonly TimeProvider _time;
    private OpenData? _open;
    private OpenData? _reading;
    private long _triedAt;
    private bool _mended;
    private bool _disposed;

    /// <param name="prepare">Creates collections and indexes; runs at every open.</param>
    /// <param name="before">Runs once, when the folder is ours and before the file is opened.</param>
    /// <param name="acceptLoss">Goes on where something that was acknowledged is missing, with what is there now kept beside.</param>
    /// <exception cref="StorageException">The folder is in use, the file cannot be opened, or something is missing in it.</exception>
    public Database(DataFolder folder, Action<OpenData> prepare, Action? before = null, TimeProvider? time = null, bool acceptLoss = false)
    {
        (_folder, _prepare, _time) = (folder, prepare, time ?? TimeProvider.System);
        (_ledger, Damage) = (new Ledger(folder), new DamageBook(folder, _time));
        _folderLock = FolderLock.Take(folder);
        try
        {
            Incoming.Settle(folder);
            // Before anything opens it: LiteDB cuts off what is no whole page.
            UnlessAccepted(acceptLoss, () =>
            {
                FileLength.Check(folder);
                Loss.RefuseNothing(folder, _ledger.Beside());
            });
            before?.Invoke();
            _open = OpenWhole(acceptLoss);
        }
        catch
        {
            _folderLock.Dispose();
            throw;
        }
    }

    /// <summary>What was found damaged, now or earlier.</summary>
    public DamageBook Damage { get; }

    /// <summary>Grows with each write, and with each that was taken back.</summary>
    public WriteCount Writes { get; } = new();

    /// <summary>False while the disk takes nothing and the file is open for reading only. Asking looks for room.</summary>
    public bool TakesWrites
    {
        get
        {
            lock (_gate)
            {
                try
                {
                    return Guarded(ForReading, db => db == _open && File.Exists(_folder.DatabasePath));
                }
                catch (Exception e) when (e is StorageException or BrokenFileException or ObjectDisposedException)
                {
                    return false;
                }
            }
        }
    }

    /// <summary>Results must be complete when the function returns: no lazy query may leave the gate.</summary>
    /// <exception cref="StorageException">Not even reading is possible; the next call opens the file anew.</exception>
    public T Read<T>(Func<OpenData, T> read)
    {
        lock (_gate) return Mended(() => Guarded(ForReading, read));
    }

    /// <summary>All or nothing, and on disk when it returns.</summary>
    /// <exception cref="StorageException">The disk failed and nothing was kept; the next call opens the file anew.</exception>
    public T Write<T>(Func<OpenData, T> write)
    {
        lock (_gate)
        {
            return Mended(() => Guarded(ForWriting, db =>
            {
                // A folder that was moved away would take the write and never show it again.
                if (!File.Exists(_folder.DatabasePath)) throw new FileNotFoundException($"{_folder.DatabasePath} is no longer there.");
                db.File.BeginTrans();
                T result;
                Acknowledged last;
                try
                {
                    result = write(db);
                    last = Ledger.CountIn(db, _time.GetUtcNow());
                    db.File.Commit();
                }
                catch
                {
                    DatabaseFile.RollBack(db);
                    throw;
                }
                finally
                {
                    Writes.Add();
                }

                DatabaseFile.FlushLog(db, _folder);
                _ledger.NoteBeside(last);
                return result;
            }));
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
                db.File.Checkpoint();
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
            FoldLog();
            DatabaseFile.Discard(ref _open);
            DatabaseFile.Discard(ref _reading);
            _ledger.Dispose();
            _folderLock.Dispose();
        }
    }

    // At the end nothing is left in the log that could be deleted with it.
    private void FoldLog()
    {
        try
        {
            _open?.File.Checkpoint();
        }
        catch (Exception e) when (DatabaseFile.IsOfTheDisk(e) || e is LiteException)
        {
            // It stays where it is.
        }
    }

    // At the start a file may turn out broken while it is prepared.
    private OpenData OpenWhole(bool acceptLoss)
    {
        while (true)
        {
            try
            {
                UnlessAccepted(acceptLoss, () => _open = Open());
                return _open ?? Open();
            }
            catch (BrokenFileException e)
            {
                Mend(e);
            }
        }
    }

    private void UnlessAccepted(bool acceptLoss, Action work)
    {
        try
        {
            work();
        }
        catch (StorageException e) when (e.IsLoss && acceptLoss)
        {
            _ledger.Dispose();
            Loss.Accept(_folder, Damage, e, _time.GetUtcNow());
        }
    }

    private OpenData Open()
    {
        OpenData? db = null;
        try
        {
            db = new OpenData(DatabaseFile.OpenFile(_folder.DatabasePath), Damage);
            db.File.CheckpointSize = 0;
            if (_ledger.Beside() is { } beside && Ledger.Of(db) is var held && held.Writes < beside.Writes) throw Loss.Of(_folder, held, beside);
            _prepare(db);
            db.File.Checkpoint();
            DatabaseFile.KeepPrivate(_folder);
            return db;
        }
        catch (Exception e) when (e is BrokenFileException or StorageException)
        {
            DatabaseFile.Discard(ref db);
            throw;
        }
        catch (Exception e) when (DatabaseFile.IsOfTheDisk(e))
        {
            DatabaseFile.Discard(ref db);
            throw new StorageException(
                $"The database {_folder.DatabasePath} cannot be opened: {e.Message} Make room on the disk, or see who may write there; nothing kept so far "
                    + "is lost.", e);
        }
        catch (Exception e)
        {
            // A damaged file can make LiteDB throw anything at all.
            DatabaseFile.Discard(ref db);
            throw new StorageException(
                $"The database {_folder.DatabasePath} cannot be opened: {e.Message} {Loss.LastBackup(_folder)} Or begin anew in another folder, with "
                    + "--data DIR.", e);
        }
    }

    private OpenData ForWriting()
    {
        if (_open is not null) return _open;
        _triedAt = _time.GetTimestamp();
        // First: LiteDB removes an empty log as it closes, and it would be the log of the new one.
        DatabaseFile.Discard(ref _reading);
        return _open = Open();
    }

    private OpenData ForReading()
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
            return _reading ??= new OpenData(DatabaseFile.OpenFile(_folder.DatabasePath, readOnly: true), Damage);
        }
    }

    // A page that is not what it should be ends the instance. The file is mended once, with what cannot be read left behind and named, and the work done again.
    private T Mended<T>(Func<T> work)
    {
        try
        {
            return work();
        }
        catch (BrokenFileException e)
        {
            Mend(e);
            try
            {
                return work();
            }
            catch (BrokenFileException again)
            {
                throw StillBroken(again);
            }
        }
    }

    private void Mend(BrokenFileException why)
    {
        DatabaseFile.Discard(ref _open);
        DatabaseFile.Discard(ref _reading);
        _ledger.Dispose();
        Writes.Add();
        if (_mended) throw StillBroken(why);
        _mended = true;
        Mending.Run(_folder, Damage, _time.GetUtcNow());
    }

    private StorageException StillBroken(BrokenFileException why) =>
        new($"The data file {_folder.DatabasePath} is damaged: {why.Message} {Loss.WayBack(_folder)}", why);

    private T Guarded<T>(Func<OpenData> opened, Func<OpenData, T> work)
    {
        ObjectDisposedException.ThrowIf(_disposed, this);
        try
        {
            return work(opened());
        }
        catch (Exception e) when (e is not StorageException && DatabaseFile.IsOfTheDisk(e))
        {
            DatabaseFile.Discard(ref _open);
            DatabaseFile.Discard(ref _reading);
            throw new StorageException($"The data folder {_folder.Path} could not be read or written, and nothing was kept: {e.Message} Is the disk full?", e);
        }
    }
}
