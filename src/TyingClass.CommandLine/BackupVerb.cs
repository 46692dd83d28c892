using System.CommandLine;
using TyingClass.Storage.Backups;
using TyingClass.Storage.Files;

namespace TyingClass.CommandLine;

/// <summary>backup FILE [--data DIR]: everything a server keeps in one file, also while it runs.</summary>
internal static class BackupVerb
{
    public static Command Command()
    {
        Argument<FileInfo> file = new("FILE") { Description = "The backup to write, such as winter.zip." };
        Option<DirectoryInfo?> data = DataOption.Create();
        Command command = new("backup", "Back up all classes of a server, running or stopped; the file is read back and counted.") { file, data };
        command.SetAction(parsed => Run(parsed.GetRequiredValue(file), parsed.GetValue(data), Console.Out, Console.Error));
        return command;
    }

    private static int Run(FileInfo file, DirectoryInfo? data, TextWriter output, TextWriter errors)
    {
        if (DataOption.Find(data, mustExist: true, errors) is not { } folder)
        {
            return ExitCodes.InputError;
        }

        try
        {
            BackupContents contents = FolderBackup.Write(folder, file.FullName);
            output.WriteLine($"{file.FullName}: read back and counted, {contents.Said}.");
            return ExitCodes.AllIsWell;
        }
        catch (StorageException e)
        {
            errors.WriteLine($"{file}:1:1: {e.Message}");
            return ExitCodes.InputError;
        }
    }
}
