using TyingClass.Storage.Files;

namespace TyingClass.Storage.Backups;

/// <summary>
/// How the command line gets a backup from a server that is running: it leaves a note in the data folder, and the server, which alone may
/// read the database, writes the backup beside it. Only who may write to the folder can ask, and that person owns the data anyway.
/// </summary>
public static class BackupRequests
{
    /// <summary>How often the server looks; the command line waits a little less between its own looks.</summary>
    public static readonly TimeSpan LookEvery = TimeSpan.FromSeconds(1);

    private const string Asked = ".asked";
    private const string Failed = ".failed";
    private const string Made = ".zip";

    /// <summary>
    /// Makes the folder of the notes, so that it is the server's own: one made by whoever asks with sudo would take no answer from a server that runs as
    /// another user.
    /// </summary>
    public static void Open(DataFolder folder)
    {
        ArgumentNullException.ThrowIfNull(folder);
        // In a data folder that was moved away nothing is made anew.
        if (Directory.Exists(folder.Path)) Directory.CreateDirectory(folder.RequestsPath);
    }

    /// <summary>Answers every note left so far; a note older than <paramref name="patience"/> has been given up and is only swept away.</summary>
    public static void Answer(DataFolder folder, Func<string, BackupContents> backup, DateTimeOffset now, TimeSpan patience)
    {
        ArgumentNullException.ThrowIfNull(folder);
        ArgumentNullException.ThrowIfNull(backup);
        if (!Directory.Exists(folder.RequestsPath)) return;
        foreach (string left in Directory.EnumerateFiles(folder.RequestsPath).Where(f => now - File.GetLastWriteTimeUtc(f) > patience).ToList())
            File.Delete(left);
        foreach (string note in Directory.EnumerateFiles(folder.RequestsPath, "*" + Asked).ToList())
        {
            string stem = note[..^Asked.Length];
            File.Delete(note);
            try
            {
                backup(stem + Made);
            }
            catch (StorageException e)
            {
                File.WriteAllText(stem + ".draft", e.Message);
                File.Move(stem + ".draft", stem + Failed);
            }
        }
    }

    /// <summary>Asks the running server, waits, and moves what it made to <paramref name="path"/>.</summary>
    /// <exception cref="StorageException">No server answered in time, it could not make a backup, or the file cannot be put there.</exception>
    public static BackupContents Ask(DataFolder folder, string path, TimeProvider time, TimeSpan patience)
    {
        ArgumentNullException.ThrowIfNull(folder);
        ArgumentNullException.ThrowIfNull(time);
        string stem = Path.Combine(Directory.CreateDirectory(folder.RequestsPath).FullName, RandomId.New());
        File.WriteAllText(stem + Asked, "");
        long began = time.GetTimestamp();
        while (!File.Exists(stem + Made) && !File.Exists(stem + Failed))
        {
            if (time.GetElapsedTime(began) > patience)
            {
                File.Delete(stem + Asked);
                throw new StorageException(
                    $"The TyingClass that holds {folder.Path} did not answer within {patience.TotalSeconds:0} s. Is it hanging, or an older version? Stop "
                        + "it and try again.");
            }

            Thread.Sleep(LookEvery / 5);
        }

        return File.Exists(stem + Failed) ? throw Complaint(stem + Failed) : Take(stem + Made, path);
    }

    private static StorageException Complaint(string file)
    {
        string message = File.ReadAllText(file);
        File.Delete(file);
        return new StorageException(message);
    }

    private static BackupContents Take(string made, string path)
    {
        string check = made + ".check";
        try
        {
            BackupContents contents = BackupFile.Unpack(made, check, photosPath: null);
            File.Move(made, Path.GetFullPath(path), overwrite: true);
            return contents;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException or BackupDamagedException)
        {
            throw new StorageException($"No backup was made at {path}: {e.Message}", e);
        }
        finally
        {
            File.Delete(check);
            File.Delete(made);
        }
    }
}
