using System.Collections.Immutable;
using TyingClass.Lessons.Courses;
using TyingClass.Storage;
using TyingClass.Storage.Files;
using TyingClass.Web.Briefs;
using TyingClass.Web.Demo;
using Xunit;

namespace TyingClass.Web.Tests.Demo;

/// <summary>The invented class on the course as it is: what it has in common must be found at once.</summary>
public sealed class InventedBriefTests : IDisposable
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("tying-class-brief-");

    [Fact]
    public void Brief_OfTheInventedClass_NamesTheRingBelowTheConeFirst()
    {
        using CourseFolder course = new(Lessons);
        using ClassStore store = new(DataFolder.At(_folder.FullName), TimeProvider.System);
        DemoClass.FillIfEmpty(store, course.Current, TimeProvider.System);

        ImmutableArray<Belief> beliefs = Beliefs.Of(new PulseReader(course, store.Accounts, store.Attempts, store.RoomQuestions).Of(store.Classes.All()[0]));

        Assert.StartsWith("The ring is below the cone", beliefs[0].Said, StringComparison.Ordinal);
        Assert.True(beliefs[0].Holders.Length > beliefs[1].Holders.Length, "Another belief is held as widely.");
        Assert.True(beliefs[0].Holders.Length * 2 > beliefs[0].Tried, "Most of them do not hold it.");
    }

    private static string Lessons
    {
        get
        {
            DirectoryInfo? at = new(AppContext.BaseDirectory);
            while (at is not null && !File.Exists(Path.Combine(at.FullName, "TyingClass.sln"))) at = at.Parent;
            return Path.Combine(at!.FullName, "lessons");
        }
    }

    public void Dispose() => _folder.Delete(recursive: true);
}
