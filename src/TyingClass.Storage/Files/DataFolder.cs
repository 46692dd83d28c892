namespace TyingClass.Storage.Files;

/// <summary>The one folder in which a running TyingClass keeps everything: database, keys, lock.</summary>
public sealed record DataFolder
{
    private const UnixFileMode OwnerOnly = UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute;

    private DataFolder(string path) => Path = path;

    /// <summary>Absolute.</summary>
    public string Path { get; }

    public string DatabasePath => System.IO.Path.Combine(Path, "class.db");

    /// <summary>LiteDB names its log after the database.</summary>
    public string LogPath => System.IO.Path.Combine(Path, "class-log.db");

    /// <summary>How many writes were acknowledged, beside the data that hold them.</summary>
    public string CountPath => System.IO.Path.Combine(Path, "class.count");

    /// <summary>What was found damaged, one line each; there only if something was.</summary>
    public string DamagePath => System.IO.Path.Combine(Path, "damage.txt");

    /// <summary>Backups the server makes by itself; readable by the owner only.</summary>
    public string BackupsPath => System.IO.Path.Combine(Path, "backups");

    /// <summary>What is about to take the place of the data: there only while a backup is restored or the file is mended.</summary>
    public string IncomingPath => System.IO.Path.Combine(Path, "incoming");

    public string LockPath => System.IO.Path.Combine(Path, "in-use.lock");

    /// <summary>Notes by which the command line asks a running server for a backup, and the server's answers.</summary>
    public string RequestsPath => System.IO.Path.Combine(Path, "requests");

    /// <summary>The last good version of each lesson: texts of the course, nothing of anyone.</summary>
    public string KeptLessonsPath => System.IO.Path.Combine(Path, "lessons-last-good");

    /// <summary>Keys that protect cookies and form tokens; readable by the owner only.</summary>
    public string KeysPath => System.IO.Path.Combine(Path, "keys");

    /// <summary>Photos of tied flies; readable by the owner only.</summary>
    public string PhotosPath => System.IO.Path.Combine(Path, "photos");

    /// <summary>
    /// Where an installed program keeps its data: ~/.local/share/TyingClass on Linux (XDG_DATA_HOME is heeded), %LOCALAPPDATA%\TyingClass
    /// on Windows, ~/Library/Application Support/TyingClass on macOS. A folder made by nobody yet counts as well.
    /// </summary>
    public static string OfUser => System.IO.Path.Combine(
        Environment.GetFolderPath(Environment.SpecialFolder.LocalApplicationData, Environment.SpecialFolderOption.DoNotVerify) is { Length: > 0 } own ? own
            : AppContext.BaseDirectory,
        "TyingClass");

    /// <summary>Creates what is missing.</summary>
    /// <param name="path">Absolute, or relative to the current folder.</param>
    /// <exception cref="StorageException">The folder cannot be made or written to.</exception>
    public static DataFolder At(string path)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(path);
        DataFolder folder = new(System.IO.Path.GetFullPath(path));
        try
        {
            MakePrivate(folder.Path);
            MakePrivate(folder.KeysPath);
            MakePrivate(folder.PhotosPath);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            // A backup restored with sudo belongs to root, and the server's own user may not touch it.
            string way = e is UnauthorizedAccessException && Directory.Exists(folder.Path) && !OperatingSystem.IsWindows()
                ? $"Something in it belongs to another user. To give it back: sudo chown -R --reference=\"{folder.Path}/.\" \"{folder.Path}/\". Or give"
                : "Give";
            throw new StorageException($"The data folder {folder.Path} cannot be made: {e.Message} {way} another one with --data DIR.", e);
        }

        return folder;
    }

    /// <summary>A folder as it is: nothing is made.</summary>
    internal static DataFolder Seen(string path) => new(path);

    /// <summary>Something in it was found damaged, and nobody has dealt with it yet.</summary>
    internal bool HasDamage => File.Exists(DamagePath);

    // An existing folder keeps the mode its owner gave it; the keys and photos never do.
    internal static void MakePrivate(string path)
    {
        if (OperatingSystem.IsWindows())
        {
            Directory.CreateDirectory(path);
            return;
        }

        Directory.CreateDirectory(path, OwnerOnly);
        if (System.IO.Path.GetFileName(path) is "keys" or "photos" or "backups") File.SetUnixFileMode(path, OwnerOnly);
    }
}
