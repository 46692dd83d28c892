using TyingClass.Lessons.Checking;
using TyingClass.Lessons.Courses;
using Xunit;

namespace TyingClass.Lessons.Tests.Checking;

/// <summary>A folder with three recipes, in which a test writes lessons and has them checked.</summary>
public abstract class CheckedFolder : IDisposable
{
    internal const string Head = "---\ntitle: T\nsummary: S\nconcepts: [keel side]\nminutes: 4\n---\n\n";

    private protected TemporaryFolder Folder { get; } = new();

    protected CheckedFolder()
    {
        foreach (string name in new[] { "slate-minnow", "reed-darter", "alder-jig" })
        {
            Folder.Write($"recipes/{name}.fly.yaml", Repo.Recipe($"recipes/{name}.fly.yaml")!);
        }
    }

    public void Dispose()
    {
        Folder.Dispose();
        GC.SuppressFinalize(this);
    }

    private protected void AssertFinds(string lesson, string text)
    {
        Folder.Write("01-a.md", lesson);

        CheckResult result = CourseChecker.Check(Folder.Path);

        AuthorError error = Assert.Single(result.Errors);
        Assert.Equal("01-a.md", error.File);
        Assert.Contains(text, error.Text, StringComparison.Ordinal);
    }

    private protected static string Exercise(string kind, string rest) =>
        $"{Head}{Words(400)}\n```exercise\nid: x-1\nkind: {kind}\ntitle: T\nconcepts: [keel side]\nprompt: P\n{rest.TrimEnd()}\n```\n";

    // About what the stated minutes call for.
    private protected static string Words(int count = 800) => " " + string.Concat(Enumerable.Repeat("word ", count)) + "\n";

    private protected static string Question(string id, string prompt) =>
        $"```exercise\nid: {id}\nkind: predict\ntitle: T\nconcepts: [keel side]\nprompt: {prompt}\n"
        + "file: recipes/slate-minnow.fly.yaml\nask: which way up\n```\n\n";
}
