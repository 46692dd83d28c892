using System.CommandLine;
using System.Globalization;
using TyingClass.Storage.Backups;
using TyingClass.Storage.Files;

namespace TyingClass.CommandLine;

/// <summary>restore FILE [--data DIR]: puts a backup in the place of a stopped server's data, which are kept beside it.</summary>
internal static class RestoreVerb
{
    public static Command Command()
    {
        Argument<FileInfo> file = new("FILE") { Description = "The backup to put back." };
        Option<DirectoryInfo?> data = DataOption.Create();
        Command command =
            new("restore", "Put a backup in the place of a stopped server's data. The file is checked first, and what stood there is kept.") { file, data };
        command.SetAction(parsed => Run(parsed.GetRequiredValue(file), parsed.GetValue(data), Console.Out, Console.Error));
        return command;
    }

    private static int Run(FileInfo file, DirectoryInfo? data, TextWriter output, TextWriter errors)
    {
        if (!file.Exists)
        {
            errors.WriteLine($"{file}:1:1: There is no such file.");
            return ExitCodes.InputError;
        }

        try
        {
            if (DataOption.Find(data, mustExist: false, errors) is not { } folder)
            {
                return ExitCodes.InputError;
            }

            Restored restored = Restoring.Restore(folder, file.FullName, TimeProvider.System.GetUtcNow());
            output.WriteLine(
                $"{folder.Path}: restored as of {restored.Contents.MadeAt.UtcDateTime.ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture)} "
                    + $"UTC, {restored.Contents.Said}.");
            if (restored.KeptAs is { } kept)
            {
                output.WriteLine($"What stood there before is kept as {kept}.");
            }

            return ExitCodes.AllIsWell;
        }
        catch (BackupDamagedException e)
        {
            errors.WriteLine($"{file}:1:1: {e.Message} Nothing was changed.");
            return ExitCodes.InputError;
        }
        catch (StorageException e)
        {
            errors.WriteLine($"{file}:1:1: {e.Message} Nothing was changed.");
            return ExitCodes.InputError;
        }
    }
}
