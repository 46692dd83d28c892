using System.Collections.Immutable;
using TyingClass.Lessons.Courses;
using TyingClass.Storage;
using TyingClass.Storage.Files;
using TyingClass.Web.Briefs;
using TyingClass.Web.Classes;
using TyingClass.Web.Demo;
using TyingClass.Web.Tests.Architecture;
using Xunit;

namespace TyingClass.Web.Tests.Demo;

/// <summary>The invented class on the course as it is: what it has in common must be found at once.</summary>
public sealed class InventedBriefTests : IDisposable
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("tying-class-brief-");

    [Fact]
    public void Brief_OfTheInventedClass_NamesTheRingBelowTheConeFirst()
    {
        using CourseFolder course = new(Path.Combine(ProjectFile.Root, "lessons"));
        using ClassStore store = new(DataFolder.At(_folder.FullName), TimeProvider.System);
        DemoClass.FillIfEmpty(store, course.Current, TimeProvider.System);

        PulseReader reader = new(course, store.Accounts, store.Attempts, store.RoomQuestions, new UntilWritten(store.Writes));
        ImmutableArray<Belief> beliefs = Beliefs.Of(reader.Of(store.Classes.All()[0]));

        Assert.StartsWith("The ring is below the cone", beliefs[0].Said, StringComparison.Ordinal);
        Assert.True(beliefs[0].Holders.Length > beliefs[1].Holders.Length, "Another belief is held as widely.");
        Assert.True(beliefs[0].Holders.Length * 2 > beliefs[0].Tried, "Most of them do not hold it.");
    }

    public void Dispose() => _folder.Delete(recursive: true);
}
