using System.Globalization;
using TyingClass.Lessons.Courses;
using TyingClass.Lessons.Revisions;
using TyingClass.Recipes.Bodies;
using TyingClass.Recipes.Reports;
using TyingClass.Recipes.Text;
using TyingClass.Storage;
using TyingClass.Storage.Attempts;
using TyingClass.Storage.BenchLog;
using TyingClass.Storage.Files;
using TyingClass.Storage.Patterns;
using TyingClass.Storage.People;
using TyingClass.Storage.Reviews;
using TyingClass.Web.BenchLog;
using TyingClass.Web.Demo;
using Xunit;

namespace TyingClass.Web.Tests.Demo;

/// <summary>With the small course beside these tests: the demo must live on any course whose lessons name evenings.</summary>
public sealed class DemoClassTests : IDisposable
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("tying-class-demo-");

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
    public void FillIfEmpty_Patterns_AreInEveryStateOfReviewAndTheirFiguresChange()
    {
        using ClassStore store = Open("one");
        DemoCounts made = Fill(store);
        Storage.Classes.ClassRoom room = store.Classes.All()[0];
        Pattern[] patterns = [.. store.Accounts.OfClass(room.Id).SelectMany(p => store.Patterns.Of(p.Id))];
        Assert.Equal(made.Patterns, patterns.Length);
        Assert.Equal(Enum.GetValues<PatternState>(), patterns.Select(p => p.State).Distinct().Order());
        Assert.Equal(3, store.Reviews.Queue(room.Id).Select(r => (int)(DateTimeOffset.UtcNow - r.AskedAt).TotalDays).Distinct().Count());
        Assert.NotEmpty(store.Patterns.Book(room.Id));
        foreach (Pattern pattern in patterns)
        {
            SolvedFly[] flies = [.. store.Patterns.Revisions(pattern.Id).Select(r => SolvedFly.Solve(RecipeParser.Parse(r.RecipeText).Value!))];
            // What is on the page to three digits must differ from one revision to the next.
            string[] figures = [
                .. flies.Select(
                    f => string.Create(
                        CultureInfo.InvariantCulture,
                        $"{f.Report.Soaked.AtFishingSpeed.KeelHeightMm.For(f.Report.Intent):0.00} "
                        + $"{f.Report.MassG:0.000} {f.Report.Soaked.Sink?.RateMS:0.000}"))];
            Assert.Equal(figures.Length, figures.Distinct().Count());
            foreach (ReviewComment comment in store.Reviews.CommentsOn(pattern.Id).Where(c => c.Subject != CommentSubject.Whole))
            {
                SolvedFly read = flies[comment.Revision - 1];
                string[] there =
                    comment.Subject == CommentSubject.Part ? [.. FlyBuilder.Names(read.Recipe.Parts)] : [.. read.Report.Findings.Select(f => f.Code)];
                Assert.Contains(comment.About, there);
            }
        }
    }

    [Fact]
    public void FillIfEmpty_BenchLog_MostlyAgreesWithTheEngineAndNotAlways()
    {
        using ClassStore store = Open("one");
        Fill(store);
        LogEntry[] log = [.. store.BenchLog.OfClass(store.Classes.All()[0].Id)];
        Assert.InRange(log.Length, 18, 30);
        Assert.InRange(log.Count(e => Agreement.WayAgrees(e) == false), 2, log.Length / 3);
        Assert.All(
            log, e =>
                Assert.Equal(FlyForecast.Of(RecipeParser.Parse(e.Fly.RecipeText).Value!, e.Seen.State, e.Seen.WaterC).SinkRateMS,
                    e.Foreseen.SinkRateMS));
        double[] ratios = [.. log.Where(e => e.Seen.SinkRateMS is not null).Select(e => e.Seen.SinkRateMS!.Value / e.Foreseen.SinkRateMS!.Value)];
        Assert.All(ratios, r => Assert.InRange(r, 0.6, 1.5));
        Assert.True(ratios.Max() - ratios.Min() > 0.1);
        Assert.All(log.Where(e => e.Fly.Source == FlySource.Pattern),
            e => Assert.Equal(e.Fly.RecipeText, store.Patterns.Revision(e.Fly.SourceId!, e.Fly.Revision)!.RecipeText));
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

    public void Dispose() => _folder.Delete(recursive: true);

    private ClassStore Open(string name) => new(DataFolder.At(Path.Combine(_folder.FullName, name)), TimeProvider.System);

    private static DemoCounts Fill(ClassStore store)
    {
        using CourseFolder course = new(Path.Combine(AppContext.BaseDirectory, "Course"));
        return DemoClass.FillIfEmpty(store, course.Current, TimeProvider.System)!;
    }

    private static string[] AnswersOf(ClassStore store) =>
        [.. store.Accounts.OfClass(store.Classes.All()[0].Id)
        .SelectMany(p => store.Attempts.AllOf(p.Id).Select(a => $"{p.Name}/{a.ExerciseId}/{a.Number}: {a.AnswerText}")).Order(StringComparer.Ordinal)];
}
