using System.CommandLine;
using TyingClass.Lessons.Checking;
using TyingClass.Lessons.Courses;

namespace TyingClass.CommandLine;

/// <summary>Where the lessons are: as told, else the folder "lessons" here, those that came with the program, or those above.</summary>
internal static class LessonsFolder
{
    private const string Name = "lessons";

    public static Option<DirectoryInfo?> Option() => new("--lessons")
    {
        Description = "The lessons folder; left out, the folder named lessons here, else the program's own, else the nearest above.",
    };

    public static string? Find(DirectoryInfo? told, TextWriter errors)
    {
        if (told is not null)
        {
            if (told.Exists)
            {
                return told.FullName;
            }

            errors.WriteLine($"{told}:1:1: There is no such folder.");
            return null;
        }

        string here = Path.Combine(Directory.GetCurrentDirectory(), Name);
        if (IsBegun(here))
        {
            return here;
        }

        if ((InstalledProgram.Lessons ?? Above(Directory.GetCurrentDirectory()).FirstOrDefault(IdList.IsCourse)) is { } found)
        {
            return found;
        }

        errors.WriteLine("lessons:1:1: There is no folder of lessons here or above. Say where it is with --lessons.");
        return null;
    }

    // A course that is being written has no list of published exercises yet.
    private static bool IsBegun(string folder) =>
        Directory.Exists(folder) && (IdList.IsCourse(folder) || Directory.EnumerateFiles(folder, "??-*.md").Any());

    private static IEnumerable<string> Above(string folder)
    {
        for (DirectoryInfo? at = new(folder); at is not null; at = at.Parent)
        {
            yield return Path.Combine(at.FullName, Name);
        }
    }
}
