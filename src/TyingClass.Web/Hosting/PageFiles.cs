using TyingClass.Storage;
using TyingClass.Storage.Backups;
using TyingClass.Storage.Exchange;
using TyingClass.Storage.Files;

namespace TyingClass.Web.Hosting;

/// <summary>Files made for a page. A backup is of the whole data file, so this asks for all of it.</summary>
public sealed class PageFiles(ClassStore store, ProgramFolders folders)
{
    /// <summary>Made in the data folder, so that it lies nowhere a stranger reads; gone when it has been sent.</summary>
    public (FileStream File, BackupContents Contents) Make()
    {
        string path = NewPath(".zip");
        BackupContents contents = store.Backup(path);
        return (Open(path), contents);
    }

    /// <summary>One class as JSON, in the same place.</summary>
    /// <exception cref="StorageException">It could not be written whole.</exception>
    public async Task<FileStream> MakeAsync(ClassExport export, CancellationToken cancel)
    {
        string path = NewPath(".json");
        try
        {
            await ExportJson.WriteFileAsync(path, export, cancel);
            return Open(path);
        }
        catch
        {
            File.Delete(path);
            throw;
        }
    }

    private string NewPath(string ending) =>
        Path.Combine(Directory.CreateDirectory(folders.Data.RequestsPath).FullName, $"page-{Guid.NewGuid():N}{ending}");

    private static FileStream Open(string path) => new(
        path, new FileStreamOptions { Mode = FileMode.Open, Access = FileAccess.Read, Options = FileOptions.DeleteOnClose | FileOptions.Asynchronous });
}
