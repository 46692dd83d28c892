using TyingClass.Lessons.Courses;
using TyingClass.Storage;
using TyingClass.Storage.Attempts;
using TyingClass.Storage.Files;
using TyingClass.Storage.People;
using TyingClass.Web.Demo;
using Xunit;

namespace TyingClass.Web.Tests.Demo;

/// <summary>With the small course beside these tests: the demo must live on any course whose lessons name evenings.</summary>
public sealed class DemoClassTests : IDisposable
{
    private readonly DirectoryInfo folder = Directory.CreateTempSubdirectory("tying-class-demo-");

    [Fact]
    public void FillIfEmpty_AnEmptyFolder_HoldsWhatItSays()
    {
        using ClassStore store = Open("one");
        DemoCounts made = Fill(store);

        Assert.True(store.IsInvented);
        Storage.Classes.ClassRoom room = Assert.Single(store.Classes.All());
        Assert.Contains("invented", room.Name, StringComparison.Ordinal);
        Person[] people = [.. store.Accounts.OfClass(room.Id)];
        Assert.Equal((14, 1), (people.Count(p => p.Role == Role.Student), people.Count(p => p.Role == Role.Mentor)));
        Assert.DoesNotContain(people, p => p.MustChoosePassphrase);
        Attempt[] attempts = [.. people.SelectMany(p => store.Attempts.AllOf(p.Id))];
        Assert.Equal(made.Attempts, attempts.Length);
        Assert.Contains(attempts, a => a.Passed);
        Assert.Contains(attempts, a => a is { Passed: false, AwaitsReview: false });
        Assert.Contains(store.RoomQuestions.OfClass(room.Id), q => q.Answer is not null);
        Assert.NotEmpty(store.Dates.Of(room.Id).Rows);
    }

    [Fact]
    public void FillIfEmpty_Twice_MakesUpTheSameAnswers()
    {
        using ClassStore one = Open("one"), two = Open("two");
        Fill(one);
        Fill(two);
        Assert.Equal(AnswersOf(one), AnswersOf(two));
    }

    [Fact]
    public void FillIfEmpty_SomeoneIsThere_LeavesThemAlone()
    {
        using ClassStore store = Open("one");
        store.People.AddGuest("Wren");
        using CourseFolder course = new(Path.Combine(AppContext.BaseDirectory, "Course"));
        Assert.Null(DemoClass.FillIfEmpty(store, course.Current, TimeProvider.System));
        Assert.False(store.IsInvented);
    }

    [Fact]
    public void IsInvented_OpenedAgain_IsRemembered()
    {
        using (ClassStore store = Open("one")) store.MarkInvented();
        using ClassStore again = Open("one");
        Assert.True(again.IsInvented);
    }

    public void Dispose() => folder.Delete(recursive: true);

    private ClassStore Open(string name) => new(DataFolder.At(Path.Combine(folder.FullName, name)), TimeProvider.System);

    private static DemoCounts Fill(ClassStore store)
    {
        using CourseFolder course = new(Path.Combine(AppContext.BaseDirectory, "Course"));
        return DemoClass.FillIfEmpty(store, course.Current, TimeProvider.System)!;
    }

    private static string[] AnswersOf(ClassStore store) =>
        [.. store.Accounts.OfClass(store.Classes.All()[0].Id).SelectMany(p => store.Attempts.AllOf(p.Id).Select(a => $"{p.Name}/{a.ExerciseId}/{a.Number}: {a.AnswerText}")).Order(StringComparer.Ordinal)];
}
