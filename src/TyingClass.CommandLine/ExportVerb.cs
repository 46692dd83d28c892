using System.CommandLine;
using TyingClass.Storage;
using TyingClass.Storage.Backups;
using TyingClass.Storage.Classes;
using TyingClass.Storage.Exchange;
using TyingClass.Storage.Files;

namespace TyingClass.CommandLine;

/// <summary>export DIR [--data DIR]: every class of a server as JSON, with the schema beside it.</summary>
internal static class ExportVerb
{
    public static Command Command()
    {
        Argument<DirectoryInfo> directory = new("DIR") { Description = "Where the files go; made if it is missing." };
        Option<DirectoryInfo?> data = DataOption.Create();
        Command command = new("export", "Write every class of a server, running or stopped, as JSON with its schema.") { directory, data };
        command.SetAction((parsed, cancel) => RunAsync(parsed.GetRequiredValue(directory), parsed.GetValue(data), Console.Out, Console.Error, cancel));
        return command;
    }

    private static async Task<int> RunAsync(DirectoryInfo directory, DirectoryInfo? data, TextWriter output, TextWriter errors, CancellationToken cancel)
    {
        if (DataOption.Find(data, mustExist: true, errors) is not { } folder)
        {
            return ExitCodes.InputError;
        }

        // A copy of everyone's work, for as long as it takes to read it: a folder of its own that only its owner can open.
        DirectoryInfo scratch = Directory.CreateTempSubdirectory("tyingclass-export-");
        try
        {
            string backup = Path.Combine(scratch.FullName, "backup.zip");
            FolderBackup.Write(folder, backup);
            DataFolder copy = DataFolder.At(Path.Combine(scratch.FullName, "data"));
            Restoring.Restore(copy, backup, TimeProvider.System.GetUtcNow());
            using ClassStore store = new(copy, TimeProvider.System);
            directory.Create();
            await File.WriteAllTextAsync(Path.Combine(directory.FullName, ExportJson.SchemaId), ExportJson.Schema(), cancel).ConfigureAwait(false);
            foreach (ClassRoom room in store.Classes.All())
            {
                string path = Path.Combine(directory.FullName, $"class-{room.Id}.json");
                await ExportJson.WriteFileAsync(path, store.Exchange.Export(room.Id)!, cancel).ConfigureAwait(false);
                output.WriteLine($"{path}: {room.Name}");
            }

            return ExitCodes.AllIsWell;
        }
        catch (Exception e) when (e is StorageException or BackupDamagedException or IOException or UnauthorizedAccessException)
        {
            errors.WriteLine($"{directory}:1:1: {e.Message}");
            return ExitCodes.InputError;
        }
        finally
        {
            scratch.Delete(recursive: true);
        }
    }
}
