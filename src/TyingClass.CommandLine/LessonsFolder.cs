using System.CommandLine;

namespace TyingClass.CommandLine;

/// <summary>Where the lessons are: as told, else the folder "lessons" here or above.</summary>
internal static class LessonsFolder
{
    public static Option<DirectoryInfo?> Option() => new("--lessons")
    {
        Description = "The lessons folder; left out, the nearest folder named lessons, here or above.",
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

        for (DirectoryInfo? at = new(Directory.GetCurrentDirectory()); at is not null; at = at.Parent)
        {
            string lessons = Path.Combine(at.FullName, "lessons");
            if (Directory.Exists(lessons))
            {
                return lessons;
            }
        }

        errors.WriteLine("lessons:1:1: There is no folder named lessons here or above. Say where it is with --lessons.");
        return null;
    }
}
