using LiteDB;
using TyingClass.Storage.Attempts;
using TyingClass.Storage.Backups;
using TyingClass.Storage.BenchLog;
using TyingClass.Storage.Classes;
using TyingClass.Storage.Comments;
using TyingClass.Storage.Damages;
using TyingClass.Storage.Dates;
using TyingClass.Storage.Evenings;
using TyingClass.Storage.Exchange;
using TyingClass.Storage.Files;
using TyingClass.Storage.Instructors;
using TyingClass.Storage.Patterns;
using TyingClass.Storage.People;
using TyingClass.Storage.Photos;
using TyingClass.Storage.Phrases;
using TyingClass.Storage.Practice;
using TyingClass.Storage.Reviews;
using TyingClass.Storage.Servers;
using TyingClass.Storage.Starts;
using TyingClass.Storage.Upgrades;

namespace TyingClass.Storage;

/// <summary>Everything kept about a class. One per process and folder; all members may be called from any thread.</summary>
public sealed class ClassStore : IDisposable
{
    private const string InventedMark = "invented";

    private readonly Database _database;
    private readonly DataFolder _folder;
    private readonly TimeProvider _time;

    /// <param name="acceptLoss">Goes on where something that was acknowledged is missing, with what is there now kept beside.</param>
    /// <exception cref="StorageException">The folder is in use by another process, the database cannot be opened, or something is missing in it.</exception>
    public ClassStore(DataFolder folder, TimeProvider time, bool acceptLoss = false)
    {
        ArgumentNullException.ThrowIfNull(folder);
        ArgumentNullException.ThrowIfNull(time);
        (_folder, _time) = (folder, time);
        _database = new Database(
            folder, db => Prepare(db, time), () => Upgraded = FileUpgrade.Run(folder, time.GetUtcNow(), FileFormat.Steps), time, acceptLoss);
        Attempts = new AttemptStore(_database, time);
        Practice = new PracticeStore(_database, time);
        People = new PersonStore(_database, time);
        Patterns = new PatternStore(_database, time);
        Reviews = new ReviewStore(_database, time);
        Photos = new PhotoStore(folder, _database.Damage);
        BenchLog = new BenchLogStore(_database, time, Photos);
        Accounts = new AccountStore(_database, time);
        Instructors = new InstructorStore(_database, time);
        Classes = new ClassRoomStore(_database, time);
        Dates = new ClassDatesStore(_database);
        Evenings = new EveningStore(_database);
        RoomQuestions = new RoomQuestionStore(_database, time);
        Exchange = new ClassExchange(_database, time);
        Comments = new CommentStore(_database, time);
        GuestMoves = new GuestMoves(_database, time);
        Trash = new Trash(_database, time);
        Starts = new ClassStartStore(_database);
        Phrases = new PhraseStore(_database);
        LeftVisits = new LeftVisits(_database, time);
        Slips = new SlipStore(_database, time);
        RoomChoice = new RoomChoiceStore(_database);
        IsInvented = _database.Read(db => Marks(db).FindById(InventedMark) is not null);
    }

    public AttemptStore Attempts { get; }

    public PracticeStore Practice { get; }

    public PersonStore People { get; }

    public PatternStore Patterns { get; }

    public ReviewStore Reviews { get; }

    public PhotoStore Photos { get; }

    public BenchLogStore BenchLog { get; }

    public AccountStore Accounts { get; }

    public InstructorStore Instructors { get; }

    public ClassRoomStore Classes { get; }

    public ClassDatesStore Dates { get; }

    public EveningStore Evenings { get; }

    public RoomQuestionStore RoomQuestions { get; }

    public ClassExchange Exchange { get; }

    public CommentStore Comments { get; }

    public GuestMoves GuestMoves { get; }

    public Trash Trash { get; }

    public ClassStartStore Starts { get; }

    public PhraseStore Phrases { get; }

    public LeftVisits LeftVisits { get; }

    public SlipStore Slips { get; }

    public RoomChoiceStore RoomChoice { get; }

    /// <summary>What was done to an older file when it was opened; null when it was of this version.</summary>
    public Upgraded? Upgraded { get; private set; }

    /// <summary>Writes a backup that has been read back, opened and counted.</summary>
    /// <param name="path">A new file, or one to be replaced once the backup has proved good.</param>
    /// <exception cref="StorageException">The backup could not be made, or does not hold what the original does.</exception>
    public BackupContents Backup(string path) => BackupFile.Write(_database, _folder, path, _time.GetUtcNow());

    /// <summary>For what is worked out of the store and remembered.</summary>
    public WriteCount Writes => _database.Writes;

    /// <summary>What was found damaged, now or before, and not dealt with yet.</summary>
    public DamageBook Damage => _database.Damage;

    /// <summary>The file is open for writing: false on a full disk, until there is room again.</summary>
    public bool TakesWrites => _database.TakesWrites;

    /// <summary>Reads every record and photo, some at a time so that nobody waits, and notes those that are damaged in <see cref="Damage"/>.</summary>
    /// <returns>How many records were read.</returns>
    /// <exception cref="StorageException">The file cannot be read.</exception>
    public int Verify(CancellationToken cancel = default)
    {
        int read = Verification.Run(_database, cancel);
        BenchLog.VerifyPhotos(cancel);
        return read;
    }

    /// <summary>True when what is kept here was made up by <c>--demo</c>: every page says so.</summary>
    public bool IsInvented { get; private set; }

    /// <summary>True before anyone has an account or has left work here.</summary>
    public bool IsEmpty => People.All().IsEmpty;

    /// <summary>For good: a class that was made up never turns into a real one.</summary>
    public void MarkInvented()
    {
        _database.Write(db => Marks(db).Upsert(new BsonDocument { ["_id"] = InventedMark }));
        IsInvented = true;
    }

    public void Dispose() => _database.Dispose();

    // All at once, at the start: a collection first made under load is a race.
    private static void Prepare(OpenData db, TimeProvider time)
    {
        FileFormat.MarkNew(db.File);
        AttemptStore.Prepare(db);
        PracticeStore.Prepare(db);
        StandingDocument.Prepare(db);
        PersonStore.Prepare(db);
        PatternDocument.Prepare(db);
        ReviewDocument.Prepare(db);
        LogDocument.Prepare(db);
        AccountStore.Prepare(db);
        ClassRoomStore.Prepare(db);
        ClassDatesStore.Prepare(db);
        EveningStore.Prepare(db);
        RoomQuestionStore.Prepare(db);
        InstructorStore.Prepare(db, time);
        CommentStore.Prepare(db);
        GuestMoves.Prepare(db);
        ClassStartStore.Prepare(db);
        LeftVisits.Prepare(db);
        SlipStore.Prepare(db);
    }

    private static Records Marks(OpenData db) => db.Records("marks");
}
