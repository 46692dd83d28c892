using Microsoft.Extensions.Time.Testing;
using TyingClass.Lessons.Courses;
using Xunit;

namespace TyingClass.Lessons.Tests.Courses;

public sealed class CourseFolderTests : IDisposable
{
    private readonly TemporaryFolder _folder = new();

    public void Dispose() => _folder.Dispose();

    [Fact]
    public void Current_FileSaved_ShowsTheNewTextWithoutARestart()
    {
        _folder.Write("01-a.md", Lesson("First"));
        using CourseFolder course = new(_folder.Path);
        Assert.Equal("First", course.Current.Lessons.Single().Title);

        _folder.Write("01-a.md", Lesson("Second"));

        Assert.True(SpinWait.SpinUntil(() => course.Current.Lessons.Single().Title == "Second", TimeSpan.FromSeconds(30)));
    }

    [Fact]
    public void Current_EventLost_IsFoundByTheSlowLook()
    {
        FakeTimeProvider time = new();
        string late = Path.Combine(_folder.Path, "late");
        using CourseFolder course = new(late, time);
        Assert.Empty(course.Current.Lessons);

        // The folder did not exist, so nothing watches it: only the look can find the file.
        _folder.Write("late/01-a.md", Lesson("Found"));
        time.Advance(TimeSpan.FromSeconds(2));

        Assert.Equal("Found", course.Current.Lessons.Single().Title);
    }

    [Fact]
    public void Reload_LessonBroken_KeepsTheLastGoodVersionAndSaysWhy()
    {
        _folder.Write("01-a.md", Lesson("Good"));
        _folder.Write("02-b.md", Lesson("Other"));
        using CourseFolder course = new(_folder.Path, new FakeTimeProvider());

        _folder.Write("01-a.md", Lesson("Bad").Replace("minutes: 5", "minutes: five", StringComparison.Ordinal));
        _folder.Write("02-b.md", Lesson("Newer"));
        course.Reload();

        Assert.Equal(["Good", "Newer"], course.Current.Lessons.Select(l => l.Title));
        AuthorError problem = Assert.Single(course.Current.Problems);
        Assert.Equal(("01-a.md", 5), (problem.File, problem.Line));

        _folder.Write("01-a.md", Lesson("Mended"));
        course.Reload();
        Assert.Equal(["Mended", "Newer"], course.Current.Lessons.Select(l => l.Title));
        Assert.Empty(course.Current.Problems);
    }

    [Fact]
    public void Start_LessonBrokenMeanwhile_ShowsTheLastGoodVersionThatWasKept()
    {
        string kept = Path.Combine(_folder.Path, "kept");
        _folder.Write("01-a.md", Lesson("Good"));
        using (CourseFolder before = new(_folder.Path, new FakeTimeProvider(), kept)) Assert.Empty(before.Current.Problems);
        _folder.Write("01-a.md", Lesson("\"Bad"));
        _folder.Write("02-b.md", Lesson("Newer"));

        using CourseFolder after = new(_folder.Path, new FakeTimeProvider(), kept);

        Assert.Equal(["Good", "Newer"], after.Current.Lessons.Select(l => l.Title));
        AuthorError problem = Assert.Single(after.Current.Problems);
        Assert.Equal(("01-a.md", 2, "title: \"Bad"), (problem.Lesson, problem.Line, problem.Source));
        Assert.Contains("never closed", problem.Text, StringComparison.Ordinal);
        Assert.DoesNotContain("YAML", problem.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Start_PlanOfEveningsBrokenMeanwhile_ShowsTheLastGoodOneThatWasKept()
    {
        const string plan = "evenings:\n  - evening: 1\n    title: Good\n    plan: Hang a fly.\n";
        string kept = Path.Combine(_folder.Path, "kept");
        _folder.Write("01-a.md", Lesson("A"));
        _folder.Write("evenings.yaml", plan);
        using (CourseFolder before = new(_folder.Path, new FakeTimeProvider(), kept)) Assert.Empty(before.Current.Problems);
        _folder.Write("evenings.yaml", plan.Replace("Good", "\"Bad", StringComparison.Ordinal));

        using (CourseFolder broken = new(_folder.Path, new FakeTimeProvider(), kept))
        {
            Assert.Equal("Good", Assert.Single(broken.Current.Evenings).Title);
            Assert.Equal("    title: \"Bad", Assert.Single(broken.Current.Problems).Source);
        }

        _folder.Delete("evenings.yaml");
        using CourseFolder without = new(_folder.Path, new FakeTimeProvider(), kept);
        Assert.Empty(without.Current.Evenings);
        Assert.False(File.Exists(Path.Combine(kept, "evenings.yaml")));
    }

    [Fact]
    public void Current_NamesThatNothingBears_AreToldWithTheirLineAndHoldNothingBack()
    {
        _folder.Write("01-a.md", Lesson("First", Explain("own-1")).Replace("minutes: 5", "minutes: 5\nevening: 1", StringComparison.Ordinal));
        using CourseFolder course = new(_folder.Path, new FakeTimeProvider());
        Assert.Empty(course.Current.Problems);

        _folder.Write("01-a.md", Lesson("Second", Explain("own-1") + "\nSee [it](/exercises/nowhere-9).\n")
            .Replace("minutes: 5", "minutes: 5\nevening: 1", StringComparison.Ordinal));
        _folder.Write("evenings.yaml", "evenings:\n  - evening: 1\n    title: T\n    plan: P\n    in the room: [own-1, none-2]\n");
        course.Reload();

        Assert.Equal("Second", Assert.Single(course.Current.Lessons).Title);
        Assert.All(course.Current.Problems, p => Assert.True(p.IsShown));
        Assert.Collection(course.Current.Problems,
            p =>
            {
                Assert.Equal(("01-a.md", "See [it](/exercises/nowhere-9)."), (p.Lesson, p.Source));
                Assert.Contains("There is no exercise nowhere-9", p.Text, StringComparison.Ordinal);
            },
            p => Assert.Equal(("evenings.yaml", 5, true), (p.Lesson, p.Line, p.Text.Contains("none-2", StringComparison.Ordinal))));
    }

    [Fact]
    public void Start_LessonTakenOut_IsForgotten()
    {
        string kept = Path.Combine(_folder.Path, "kept");
        _folder.Write("01-a.md", Lesson("A"));
        using (new CourseFolder(_folder.Path, new FakeTimeProvider(), kept)) _folder.Delete("01-a.md");
        using (new CourseFolder(_folder.Path, new FakeTimeProvider(), kept)) _folder.Write("01-a.md", Lesson("A", "```exercise\nid: [\n```\n"));

        using CourseFolder after = new(_folder.Path, new FakeTimeProvider(), kept);

        Assert.Empty(after.Current.Lessons);
    }

    [Fact]
    public void Reload_LessonDeleted_IsGone()
    {
        _folder.Write("01-a.md", Lesson("A"));
        using CourseFolder course = new(_folder.Path, new FakeTimeProvider());

        _folder.Delete("01-a.md");
        course.Reload();

        Assert.Empty(course.Current.Lessons);
        Assert.Empty(course.Current.Problems);
    }

    [Fact]
    public void Reload_IdTakenTwice_KeepsTheOneThatWasThere()
    {
        _folder.Write("01-a.md", Lesson("A", Explain("same-1")));
        _folder.Write("02-b.md", Lesson("B", Explain("own-1")));
        using CourseFolder course = new(_folder.Path, new FakeTimeProvider());

        _folder.Write("02-b.md", Lesson("B2", Explain("same-1")));
        course.Reload();

        Assert.Equal(["same-1", "own-1"], course.Current.Exercises.Select(e => e.Id));
        Assert.Contains("is taken by an exercise in 01-a.md", Assert.Single(course.Current.Problems).Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Reload_RecipeFileChanged_ChangesTheExerciseVersion()
    {
        const string Measure =
            "\n```exercise\nid: m-1\nkind: measure\ntitle: M\nconcepts: [a]\nprompt: P\nfile: recipes/fry.fly.yaml\nquantity: mass\ntolerance: 1 g\n```\n";
        _folder.Write("recipes/fry.fly.yaml", "recipe: Fry\nintent: point down\nhook:\n  size: 10\n");
        _folder.Write("01-a.md", Lesson("A", Measure));
        using CourseFolder course = new(_folder.Path, new FakeTimeProvider());
        string before = course.Current.Exercises.Single().Version;

        _folder.Write("recipes/fry.fly.yaml", "recipe: Fry\nintent: point down\nhook:\n  size: 12\n");
        course.Reload();

        Assert.NotEqual(before, course.Current.Exercises.Single().Version);
    }

    [Fact]
    public async Task Current_ReadWhileReloading_IsAlwaysOneWholeCourse()
    {
        WriteBoth(0);
        using CourseFolder course = new(_folder.Path, new FakeTimeProvider());
        using CancellationTokenSource stop = new();
        TaskCompletionSource begun = new(TaskCreationOptions.RunContinuationsAsynchronously);
        Task reader = Task.Run(() =>
        {
            while (!stop.IsCancellationRequested)
            {
                Course now = course.Current;
                Assert.Equal(2, now.Lessons.Length);
                Assert.Equal(2, now.Lessons.Length);
                Assert.Equal(["a", "b"], now.Lessons.Select(l => l.Slug));
                begun.TrySetResult();
            }
        }, TestContext.Current.CancellationToken);
        // A busy machine may not give the reader a thread before all reloads are over. One that fails at once is not waited for.
        await Task.WhenAny(begun.Task, reader);

        for (int i = 1; i <= 20; i++)
        {
            WriteBoth(i);
            course.Reload();
            Assert.Equal($"A{i}", course.Current.Lessons[0].Title);
        }

        await stop.CancelAsync();
        await reader;

        void WriteBoth(int i)
        {
            _folder.Write("01-a.md", Lesson($"A{i}"));
            _folder.Write("02-b.md", Lesson($"B{i}"));
        }
    }

    [Fact]
    public void Current_OtherMarkdownInTheFolder_IsNoLesson()
    {
        _folder.Write("README.md", "Notes.");
        _folder.Write("01-a.md", Lesson("A"));

        using CourseFolder course = new(_folder.Path, new FakeTimeProvider());

        Assert.Equal("A", course.Current.Lessons.Single().Title);
        Assert.Empty(course.Current.Problems);
    }

    private static string Lesson(string title, string rest = "") => $"---\ntitle: {title}\nsummary: S\nconcepts: [a]\nminutes: 5\n---\n\nHello.\n{rest}";

    private static string Explain(string id) => $"\n```exercise\nid: {id}\nkind: explain\ntitle: E\nconcepts: [a]\nprompt: Why?\nmodel answer: Because.\n```\n";
}
