using System.CommandLine;
using TyingClass.Lessons.Courses;
using TyingClass.Storage.Files;

namespace TyingClass.CommandLine;

/// <summary>Where the data are: as told, else TYINGCLASS_DATA, else where the server beside this program keeps them.</summary>
internal static class DataOption
{
    public static Option<DirectoryInfo?> Create() => new("--data")
    {
        Description = "The server's data folder; left out, the one named in TYINGCLASS_DATA, or that of the server beside this program.",
    };

    /// <param name="mustExist">False where a folder may be made.</param>
    public static DataFolder? Find(DirectoryInfo? told, bool mustExist, TextWriter errors)
    {
        string? path =
            told?.FullName ?? Environment.GetEnvironmentVariable("TYINGCLASS_DATA") ?? (InstalledProgram.Lessons is null ? InRepository() : DataFolder.OfUser);
        if (path is null || (mustExist && !File.Exists(Path.Combine(path, "class.db"))))
        {
            errors.WriteLine(
                $"{path ?? "data"}:1:1: There is no class kept here. Say where the server's data folder is with --data DIR; the server prints it when it "
                    + "starts.");
            return null;
        }

        return DataFolder.At(path);
    }

    private static string? InRepository()
    {
        for (DirectoryInfo? at = new(Directory.GetCurrentDirectory()); at is not null; at = at.Parent)
        {
            string data = Path.Combine(at.FullName, "src", "TyingClass.Web", "data");
            if (Directory.Exists(data))
            {
                return data;
            }
        }

        return null;
    }
}
