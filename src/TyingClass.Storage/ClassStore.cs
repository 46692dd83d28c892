using LiteDB;
using TyingClass.Storage.Attempts;
using TyingClass.Storage.Backups;
using TyingClass.Storage.Files;
using TyingClass.Storage.Instructors;
using TyingClass.Storage.People;

namespace TyingClass.Storage;

/// <summary>Everything kept about a class. One per process and folder; all members may be called from any thread.</summary>
public sealed class ClassStore : IDisposable
{
    private readonly Database database;
    private readonly DataFolder folder;
    private readonly TimeProvider time;

    /// <exception cref="StorageException">The folder is in use by another process, or the database cannot be opened.</exception>
    public ClassStore(DataFolder folder, TimeProvider time)
    {
        ArgumentNullException.ThrowIfNull(folder);
        ArgumentNullException.ThrowIfNull(time);
        (this.folder, this.time) = (folder, time);
        database = new Database(folder, Prepare);
        Attempts = new AttemptStore(database, time);
        People = new PersonStore(database, time);
        Instructors = new InstructorStore(database, time);
    }

    public AttemptStore Attempts { get; }

    public PersonStore People { get; }

    public InstructorStore Instructors { get; }

    /// <summary>Writes a backup that has been read back, opened and counted.</summary>
    /// <param name="path">A new file, or one to be replaced once the backup has proved good.</param>
    /// <exception cref="StorageException">The backup could not be made, or does not hold what the original does.</exception>
    public BackupContents Backup(string path) => BackupFile.Write(database, folder, path, time.GetUtcNow());

    public void Dispose() => database.Dispose();

    // All at once, at the start: a collection first made under load is a race.
    private static void Prepare(ILiteDatabase db)
    {
        AttemptStore.Prepare(db);
        StandingDocument.Prepare(db);
        PersonStore.Prepare(db);
        InstructorStore.Prepare(db);
    }
}
