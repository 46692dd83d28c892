using System.Globalization;
using LiteDB;
using Microsoft.Win32.SafeHandles;

namespace TyingClass.Storage.Files;

/// <summary>The data file as LiteDB opens, flushes and closes it: what <see cref="Database"/> does with an instance, whoever is in it.</summary>
internal static class DatabaseFile
{
    // Above this the log is folded into the data file, after it is safe on disk: never by LiteDB in the middle of a commit.
    private const long MostLogBytes = 8 << 20;

    public static Collation Spelling { get; } = new(CultureInfo.InvariantCulture.LCID, CompareOptions.Ordinal);

    public static LiteDatabase OpenFile(string path, bool readOnly = false) => new(new ConnectionString
    {
        Filename = path,
        Connection = ConnectionType.Direct,
        Collation = Spelling,
        ReadOnly = readOnly,
    });

    public static bool IsOfTheDisk(Exception e) => e is IOException or UnauthorizedAccessException || e.InnerException is IOException;

    // An instance that cannot even take back what it began is of no more use, whatever it says of the reason.
    public static void RollBack(OpenData db)
    {
        try
        {
            db.File.Rollback();
        }
        catch (Exception e) when (e is not IOException)
        {
            throw new IOException(e.Message, e);
        }
    }

    // What fails while it closes an instance, on a disk that failed before, LiteDB keeps to itself; there is nothing more to save in it.
    public static void Discard(ref OpenData? database)
    {
        OpenData? dead = database;
        database = null;
        if (dead is null) return;
        Dead.Quiet(dead.File);
        dead.Dispose();
    }

    // LiteDB hands its commits to the operating system and stops there. Windows lets no second handle flush, so there the log is folded in each time.
    public static void FlushLog(OpenData db, DataFolder folder)
    {
        if (OperatingSystem.IsWindows())
        {
            db.File.Checkpoint();
            return;
        }

        using SafeFileHandle log = File.OpenHandle(folder.LogPath, FileMode.Open, FileAccess.Read, FileShare.ReadWrite);
        RandomAccess.FlushToDisk(log);
        if (RandomAccess.GetLength(log) > MostLogBytes) db.File.Checkpoint();
    }

    public static void KeepPrivate(DataFolder folder)
    {
        if (OperatingSystem.IsWindows()) return;
        foreach (string path in new[] { folder.DatabasePath, folder.LogPath }.Where(File.Exists))
            File.SetUnixFileMode(path, UnixFileMode.UserRead | UnixFileMode.UserWrite);
    }
}
