using TyingClass.Lessons.Checking;

namespace TyingClass.Lessons.Courses;

/// <summary>The published program as it was unpacked: its files in a folder of their own, the lessons beside that folder.</summary>
public static class InstalledProgram
{
    /// <summary>The lessons that came with the program; null when it runs from a repository.</summary>
    public static string? Lessons { get; } = LessonsOf(AppContext.BaseDirectory);

    /// <param name="programFolder">Where the program's files stand.</param>
    internal static string? LessonsOf(string programFolder)
    {
        string folder = Path.TrimEndingDirectorySeparator(Path.GetFullPath(programFolder));
        return Path.GetFileName(folder) == FolderName && Path.GetDirectoryName(folder) is { } top && Path.Combine(top, "lessons") is var lessons
            && IdList.IsCourse(lessons)
            ? lessons
            : null;
    }

    /// <summary>As the publishing of the web project names it.</summary>
    private const string FolderName = "program";
}
