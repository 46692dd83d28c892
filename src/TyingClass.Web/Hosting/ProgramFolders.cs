using TyingClass.Lessons.Checking;
using TyingClass.Lessons.Courses;
using TyingClass.Storage.Files;

namespace TyingClass.Web.Hosting;

/// <summary>Where data are kept and lessons are read, as asked for on the command line, in the environment, or by default.</summary>
/// <param name="LessonsPath">Absolute.</param>
public sealed record ProgramFolders(DataFolder Data, string LessonsPath)
{
    /// <exception cref="StorageException">The data folder cannot be made.</exception>
    /// <exception cref="LessonsNotFoundException">No lessons folder.</exception>
    public static ProgramFolders From(IConfiguration configuration, string contentRoot)
    {
        string data = configuration["data"] ?? (ProjectFolder.IsInstalled ? DataFolder.OfUser : Path.Combine(contentRoot, "data"));
        return new ProgramFolders(DataFolder.At(data), FindLessons(configuration["lessons"], contentRoot));
    }

    private static string FindLessons(string? asked, string contentRoot)
    {
        if (asked is not null)
        {
            string full = Path.GetFullPath(asked);
            return Directory.Exists(full) ? full
                : throw new LessonsNotFoundException($"There is no folder {full} to read lessons from. Give another one with --lessons DIR.");
        }

        // The program's own first; a folder that only happens to be called so is nobody's course.
        return InstalledProgram.Lessons
            ?? ProjectFolder.Above(contentRoot).Select(folder => Path.Combine(folder, "lessons")).FirstOrDefault(IdList.IsCourse)
            ?? throw new LessonsNotFoundException(
            $"There is no folder of lessons (with {IdList.FileName} in it) at or above {contentRoot}. Say where it is with --lessons DIR.");
    }
}

/// <summary>The message says where was looked and what to do.</summary>
public sealed class LessonsNotFoundException(string message) : Exception(message);
