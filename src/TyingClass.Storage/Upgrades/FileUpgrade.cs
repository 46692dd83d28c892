using System.Collections.Immutable;
using System.Globalization;
using LiteDB;
using TyingClass.Storage.Backups;
using TyingClass.Storage.Files;

namespace TyingClass.Storage.Upgrades;

/// <summary>Before a data file is opened for use: brings an older one up to date after a verified backup, and refuses a newer one.</summary>
internal static class FileUpgrade
{
    /// <param name="steps">All there are, oldest first.</param>
    /// <returns>Null when there was nothing to do.</returns>
    /// <exception cref="StorageException">The file is newer than this program, or could not be upgraded; either way it is as it was.</exception>
    public static Upgraded? Run(DataFolder folder, DateTimeOffset now, ImmutableArray<UpgradeStep> steps)
    {
        if (!File.Exists(folder.DatabasePath)) return null;
        int newest = steps[^1].To;
        if (FormatOf(folder.DatabasePath, newest) is not { } format || format == newest) return null;
        if (format > newest) throw new StorageException(Newer(folder.DatabasePath, format, newest));
        try
        {
            string stamp = now.UtcDateTime.ToString("yyyyMMdd-HHmmss", CultureInfo.InvariantCulture);
            string backup = Path.Combine(folder.Path, string.Create(CultureInfo.InvariantCulture, $"before-upgrade-{format}-to-{newest}-{stamp}.zip"));
            BackupFile.Write(path => File.Copy(folder.DatabasePath, path, overwrite: true), folder, backup, now);
            RunOnACopy(folder.DatabasePath, steps.Where(s => s.To > format), newest);
            return new Upgraded(format, newest, backup);
        }
        // A step that fails can throw anything at all; whatever it is, the file is as it was.
        catch (Exception e)
        {
            throw new StorageException(
                $"The data file {folder.DatabasePath} is of an older format ({format}) and could not be upgraded to {newest}: {e.Message} It is as it was. "
                    + "Is the disk full?", e);
        }
    }

    /// <summary>What to say of a file that a later program made.</summary>
    public static string Newer(string path, int format, int newest) => string.Create(
        CultureInfo.InvariantCulture,
        $"{path} was kept by a newer TyingClass: its format is {format}, and this one reads up to {newest}. Start the newer TyingClass, or restore a "
            + $"backup from before. Nothing was changed.");

    // Folds what the log still holds into the file, so that the file alone is the whole. Null for one that is empty, or cannot be read: opening it for use says
    // why.
    private static int? FormatOf(string path, int newest)
    {
        try
        {
            using LiteDatabase db = DatabaseFile.OpenFile(path);
            int format = FileFormat.Of(db);
            if (format == 0) return null;
            if (format < newest) db.Checkpoint();
            return format;
        }
        catch (Exception)
        {
            return null;
        }
    }

    private static void RunOnACopy(string path, IEnumerable<UpgradeStep> steps, int newest)
    {
        string stem = Path.Combine(Path.GetDirectoryName(path)!, "class-upgrading"), copy = stem + ".db", log = stem + "-log.db";
        try
        {
            // Left over from an upgrade that was cut off, LiteDB would take it for this copy's own.
            File.Delete(log);
            File.Copy(path, copy, overwrite: true);
            using (LiteDatabase db = DatabaseFile.OpenFile(copy))
            {
                foreach (UpgradeStep step in steps) step.Run(db);
                db.UserVersion = newest;
                db.Checkpoint();
            }

            using (FileStream whole = new(copy, FileMode.Open, FileAccess.ReadWrite)) whole.Flush(flushToDisk: true);
            File.Move(copy, path, overwrite: true);
        }
        finally
        {
            File.Delete(copy);
            File.Delete(log);
        }
    }
}
