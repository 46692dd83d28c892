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
        long missing = beside.Writes - held.Writes;
        string writes = missing == 1 ? $"1 write that was acknowledged, at {Utc(beside.At)}, is"
            : $"{missing} writes that were acknowledged, the last at {Utc(beside.At)}, are";
        return new StorageException(
            $"{writes} missing{since}: {log}. Nothing was changed. If the missing file is in the trash of this machine, put it back and start again. "
                + WayBack(folder))
        { IsLoss = true };
    }

    /// <summary>Keeps what is there beside, and lets the next opening go on with it.</summary>
    public static void Accept(DataFolder folder, DamageBook damage, StorageException why, DateTimeOffset now)
    {
        string stem = Incoming.FreeStem(folder, "before-loss", now);
        Copy(folder.DatabasePath, stem + ".db");
        Copy(folder.LogPath, stem + "-log.db");
        Copy(folder.CountPath, stem + ".count");
        File.Delete(folder.CountPath);
        damage.Note($"Gone on after a loss, as asked for. What was there is kept as {stem}.db. What was lost: {why.Message}");
        if (FileLength.IsShort(folder)) Mending.Run(folder, damage, now);
    }

    /// <summary>The latest backup by name, or how to go on without one.</summary>
    public static string WayBack(DataFolder folder) =>
        $"{LastBackup(folder)} To go on with what can be read, start it once with --accept-loss: what is there now is kept beside it, whole.";

    public static string LastBackup(DataFolder folder) =>
        KeptBackups.Latest(folder) is { } latest
            ? $"To go back to the last backup, stop the server and run: restore \"{latest}\" --data \"{folder.Path}\"."
            : "To go back to a backup, stop the server and run: restore FILE (there is none in its own folder).";

    private static void Copy(string path, string to)
    {
        if (!File.Exists(path)) return;
        File.Copy(path, to);
        Durable.Flush(to);
    }

    private static string Utc(DateTimeOffset time) => time.UtcDateTime.ToString("yyyy-MM-dd HH:mm:ss", CultureInfo.InvariantCulture) + " UTC";
}
