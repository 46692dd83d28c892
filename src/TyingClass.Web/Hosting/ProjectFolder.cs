using TyingClass.Lessons.Courses;

namespace TyingClass.Web.Hosting;

/// <summary>Where the pages' files stand: the project when run from the repository, else beside the program.</summary>
internal static class ProjectFolder
{
    private const string Project = "TyingClass.Web.csproj";

    /// <summary>Never the current folder: `dotnet run --project` may be called from anywhere.</summary>
    public static string Find() =>
        IsInstalled ? AppContext.BaseDirectory
        : Above(AppContext.BaseDirectory).FirstOrDefault(folder => File.Exists(Path.Combine(folder, Project)))
        // Run by the page tests, the program stands in the tests' own folder.
        ?? Above(AppContext.BaseDirectory).Select(folder => Path.Combine(folder, "src", "TyingClass.Web"))
        .FirstOrDefault(folder => File.Exists(Path.Combine(folder, Project)))
        ?? AppContext.BaseDirectory;

    /// <summary>True for a program that was published: it brings its lessons along, and is no repository's whatever folder it stands in.</summary>
    public static bool IsInstalled { get; } = InstalledProgram.Lessons is not null;

    /// <summary>A folder and all above it, nearest first.</summary>
    public static IEnumerable<string> Above(string folder)
    {
        for (DirectoryInfo? at = new(folder); at is not null; at = at.Parent) yield return at.FullName;
    }
}
