using TyingClass.Storage;
using TyingClass.Storage.Backups;

namespace TyingClass.Web.Hosting;

/// <summary>Backups asked for from a page. A backup is of the whole data file, so this asks for all of it.</summary>
public sealed class PageBackups(ClassStore store, ProgramFolders folders)
{
    /// <summary>Made in the data folder, so that it lies nowhere a stranger reads; gone when it has been sent.</summary>
    public (FileStream File, BackupContents Contents) Make()
    {
        string path = Path.Combine(Directory.CreateDirectory(folders.Data.RequestsPath).FullName, $"page-{Guid.NewGuid():N}.zip");
        BackupContents contents = store.Backup(path);
        FileStreamOptions reading = new() { Mode = FileMode.Open, Access = FileAccess.Read, Options = FileOptions.DeleteOnClose | FileOptions.Asynchronous };
        return (new FileStream(path, reading), contents);
    }
}
