using TyingClass.Lessons.Courses;
using TyingClass.Lessons.Exercises;
using Xunit;

namespace TyingClass.Lessons.Tests;

/// <summary>Files of the repository, and lessons written inside tests.</summary>
internal static class Repo
{
    private const string FrontMatter = "---\ntitle: A test\nsummary: For tests.\nconcepts: [keel side, mass center]\nminutes: 5\n---\n\n";

    /// <summary>Lines in front of a fence's first line of text in <see cref="Fence"/>.</summary>
    public static int LinesBeforeFence { get; } = FrontMatter.Count(c => c == '\n') + 1;

    public static string Root { get; } = FindRoot();

    public static string Lessons => Path.Combine(Root, "lessons");

    public static string Spec(string name) => File.ReadAllText(Path.Combine(Root, "tests", "TyingClass.Lessons.Tests", "Specs", name));

    public static string? Recipe(string name) => File.Exists(Path.Combine(Lessons, name)) ? File.ReadAllText(Path.Combine(Lessons, name)) : null;

    public static LessonResult Read(string markdown) => LessonReader.Read("01-test.md", FrontMatter + markdown, Recipe);

    public static LessonResult Fence(string kind, string body) => Read($"```{kind}\n{body.TrimEnd('\n')}\n```\n");

    public static Exercise Exercise(string body)
    {
        LessonResult result = Fence("exercise", body);
        Assert.Empty(result.Errors);
        return result.Lesson!.Exercises.Single();
    }

    private static string FindRoot()
    {
        DirectoryInfo? folder = new(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "TyingClass.sln"))) folder = folder.Parent;
        return folder?.FullName ?? throw new DirectoryNotFoundException("TyingClass.sln is above none of the test's folders.");
    }
}
