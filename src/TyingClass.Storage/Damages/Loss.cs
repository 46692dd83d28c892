using System.Globalization;
using TyingClass.Storage.Backups;
using TyingClass.Storage.Files;

namespace TyingClass.Storage.Damages;

/// <summary>Says what of a data folder is lost, and how it can be brought back.</summary>
internal static class Loss
{
    /// <param name="held">What the data hold.</param>
    /// <param name="beside">What was acknowledged.</param>
    public static StorageException Of(DataFolder folder, Acknowledged held, Acknowledged beside)
    {
        string since = held.At == default ? "" : $", everything after {Utc(held.At)}";
        bool hasLog = File.Exists(folder.LogPath) && new FileInfo(folder.LogPath).Length > 0;
        string log = hasLog ? $"{folder.DatabasePath} or {folder.LogPath} is older or shorter than it was"
            : $"{folder.LogPath} was deleted or emptied while it was needed, or {folder.DatabasePath} is an older one";
        string lost = $"{Missing(beside.Writes - held.Writes, beside)}{since}: {log}.";
        return new StorageException(
            $"{lost} Nothing was changed. If the missing file is in the trash of this machine, put it back and start again. {WayBack(folder)}")
        { Lost = lost };
    }

    /// <summary>Asked before anything opens the file: LiteDB would make another, and a log for it that spoils the one that is put back.</summary>
    /// <exception cref="StorageException">Writes were acknowledged, and there is no file that could hold them.</exception>
    public static void RefuseNothing(DataFolder folder, Acknowledged? beside)
    {
        if (beside is not { Writes: > 0 } acknowledged || !FileLength.IsNothing(folder)) return;
        string lost = $"{Missing(acknowledged.Writes, acknowledged)}: {folder.DatabasePath} is {(File.Exists(folder.DatabasePath) ? "empty" : "not there")}.";
        throw new StorageException(
            $"{lost} Nothing was changed. If the missing file is in the trash of this machine, put it back and start again. {LastBackup(folder)} To begin anew "
                + "without it, start it once with --accept-loss.")
        { Lost = lost };
    }

    /// <summary>Keeps what is there beside, and lets the next opening go on with it.</summary>
    public static void Accept(DataFolder folder, DamageBook damage, StorageException why, DateTimeOffset now)
    {
        string stem = Incoming.FreeStem(folder, "before-loss", now);
        Copy(folder.DatabasePath, stem + ".db");
        Copy(folder.LogPath, stem + "-log.db");
        Copy(folder.CountPath, stem + ".count");
        if (FileLength.IsShort(folder)) MendOrForget(folder, damage, now, stem);
        // The log of a file that is not there fits no other.
        if (FileLength.IsNothing(folder)) File.Delete(folder.LogPath);
        File.Delete(folder.CountPath);
        damage.Note($"Gone on after a loss, as asked for. What was there is kept as {stem}.db. What was lost: {why.Lost}");
    }

    // Where nothing can be read the start is refused with all as it was: no copy of it for each try, and no note that it went on.
    private static void MendOrForget(DataFolder folder, DamageBook damage, DateTimeOffset now, string stem)
    {
        try
        {
            Mending.Run(folder, damage, now);
        }
        catch (StorageException)
        {
            foreach (string end in (string[])[".db", "-log.db", ".count"]) File.Delete(stem + end);
            throw;
        }
    }

    /// <summary>The latest backup by name, or how to go on without one.</summary>
    public static string WayBack(DataFolder folder) =>
        $"{LastBackup(folder)} To go on with what can be read, start it once with --accept-loss: what is there now is kept beside it, whole.";

    public static string LastBackup(DataFolder folder) =>
        KeptBackups.Latest(folder) is { } latest
            ? $"To go back to the last backup, stop the server and run: tying restore \"{latest}\" --data \"{folder.Path}\"."
            : $"To go back to a backup, stop the server and run: tying restore FILE --data \"{folder.Path}\" (there is none in its own folder).";

    private static string Missing(long writes, Acknowledged beside) => writes == 1 ? $"1 write that was acknowledged, at {Utc(beside.At)}, is missing"
        : $"{writes} writes that were acknowledged, the last at {Utc(beside.At)}, are missing";

    private static void Copy(string path, string to)
    {
        if (!File.Exists(path)) return;
        File.Copy(path, to);
        Durable.Flush(to);
    }

    private static string Utc(DateTimeOffset time) => time.UtcDateTime.ToString("yyyy-MM-dd HH:mm:ss", CultureInfo.InvariantCulture) + " UTC";
}
