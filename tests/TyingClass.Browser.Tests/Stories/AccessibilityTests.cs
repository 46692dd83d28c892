using Microsoft.Playwright;
using TyingClass.Lessons.Courses;
using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Grading;
using TyingClass.Storage.BenchLog;
using TyingClass.Storage.Patterns;
using TyingClass.Storage.People;
using TyingClass.Storage.Reviews;
using Xunit;

namespace TyingClass.Browser.Tests.Stories;

[Collection(BrowserCollection.Name)]
public sealed class AccessibilityTests(RunningApp app, Chromium browser)
{
    // A recipe with a bad figure, so that the marks of an error are looked at too.
    private static readonly string BrokenBench =
        $"/bench?r={TyingClass.Web.Bench.Packed.Pack("recipe: Mill Loach\nintent: point up\nhook:\n  size: 4\n  gape: wide\n")}";

    [Theory]
    [InlineData(1280, ColorScheme.Light)]
    [InlineData(1280, ColorScheme.Dark)]
    [InlineData(390, ColorScheme.Light)]
    [InlineData(390, ColorScheme.Dark)]
    public Task LessonExerciseAndBench_ByAxe_HaveNothingToMend(int width, ColorScheme scheme) =>
        AssertNothingToMend(width, scheme,
        [$"/lessons/{app.Course.Lessons[0].Slug}", $"/exercises/{app.Course.Exercises.First(e => e.Kind.Word == "repair").Id}", "/bench"]);

    [Theory]
    [InlineData(1280, ColorScheme.Light)]
    [InlineData(390, ColorScheme.Dark)]
    public Task EveryOtherPage_ByAxe_HasNothingToMend(int width, ColorScheme scheme) => AssertNothingToMend(width, scheme, Addresses());

    [Theory]
    [InlineData(1280, ColorScheme.Light)]
    [InlineData(390, ColorScheme.Dark)]
    public async Task ClassPages_ByAxe_HaveNothingToMend(int width, ColorScheme scheme)
    {
        IPage page = await browser.NewVisitorAsync(app.Address, width, scheme);
        await page.GotoAsync("/sign-in?code=new");
        await page.GetByLabel("One-time code").FillAsync(app.NewInstructorCode());
        await page.GetByLabel("Your name, as the class sees it").FillAsync("Robin");
        await page.GetByLabel("A passphrase of your own").FillAsync("kettle river amber stone");
        await page.GetByRole(AriaRole.Button, new() { Name = "Open your class" }).ClickAsync();
        await page.WaitForURLAsync("**/class/start");
        string classId = app.Store.Classes.All()[^1].Id;
        Person student = app.Store.Accounts.Add(classId, Role.Student, $"Teal {width}", "none").Person!;
        Exercise repair = app.Course.Exercises.First(e => e.Kind.Word == "repair");
        string fallsShort = repair.WrongAnswers.First(w => w.FindingNamed != WrongAnswer.Refused).Answer;
        app.Store.Attempts.Add(student.Id, repair.Id, fallsShort, Grader.Grade(repair, fallsShort, failedAttempts: 0));
        await AssertNothingToMend(page,
        [
            "/class", "/class/register", "/class/register?evening=1", "/class/stuck", "/class/waiting", "/class/people", $"/class/people/{student.Id}",
            $"/class/people/{student.Id}/remove",
            "/class/setup", $"/class/exercises/{repair.Id}", $"/class/students/{student.Id}", $"/class/students/{student.Id}/{repair.Id}", "/account",
            "/comments",
            "/class/start", "/class/people/names", $"/class/copy?from={classId}",
            "/class/dates", "/class/files", "/class/evenings", "/class/evenings/1", "/class/evenings/1/handout", "/class/evenings/1/wall/1", "/class/tonight",
            "/class/tonight/wall",
            "/class/room", "/reached",
        ]);
    }

    [Theory]
    [InlineData(1280, ColorScheme.Light)]
    [InlineData(390, ColorScheme.Dark)]
    public async Task PatternsReviewsAndBenchLog_ByAxe_HaveNothingToMend(int width, ColorScheme scheme)
    {
        const string Passphrase = "kettle river amber stone";
        Person mentor = app.Store.Instructors.Claim(app.NewInstructorCode(), $"Avocet {width}", app.Hash(Passphrase))!;
        string classId = app.Store.Classes.OfInstructor(mentor.Id)[0].Id;
        string recipe = app.Course.Exercises.First(e => e.Kind.Word == "repair").RecipeText!;
        Pattern waiting = app.Store.Patterns.Create(mentor.Id, "Slate Minnow", recipe), booked = app.Store.Patterns.Create(mentor.Id, "Copper Loach", recipe);
        app.Store.Patterns.Save(waiting.Id, mentor.Id, 1, "Slate Minnow", $"{recipe}\nnotes: second version");
        string asked = app.Store.Reviews.Ask(waiting.Id, mentor.Id, classId, "Too heavy?")!.Id,
            signed = app.Store.Reviews.Ask(booked.Id, mentor.Id, classId, null)!.Id;
        app.Store.Reviews.AddComment(asked, mentor.Id, CommentSubject.Whole, "", "Weigh it.");
        app.Store.Reviews.Decide(signed, mentor.Id, 1, new ReviewDecision(true, "Tie it."));
        string log = app.Store.BenchLog.Add(mentor.Id, classId, new TiedFly("Slate Minnow", recipe, FlySource.Text, null, 0),
            new Seen { MassKg = 0.0012, SinkTimeS = 2, SinkDepthM = 0.3 }, new Foreseen(0.2, "point up", 0.0011, 0.2, "2"), "heavier").Id;

        IPage page = await browser.NewVisitorAsync(app.Address, width, scheme);
        await page.GotoAsync("/sign-in");
        await page.Locator("#name").FillAsync($"Avocet {width}");
        await page.Locator("#passphrase").FillAsync(Passphrase);
        await page.Locator("main form button").First.ClickAsync();
        await page.WaitForURLAsync("**/class");
        await AssertNothingToMend(page,
        [
            "/patterns", "/patterns/new", $"/patterns/{waiting.Id}", $"/patterns/{waiting.Id}/card", $"/patterns/{waiting.Id}/compare?from=1&to=2",
            "/pattern-book", "/pattern-book/cards",
            "/reviews", $"/reviews/{asked}", $"/reviews/{signed}", "/bench-log", "/bench-log/new", $"/bench-log/{log}", $"/bench-log/{log}/correct",
            "/bench-log/class",
        ]);
    }

    private async Task AssertNothingToMend(int width, ColorScheme scheme, IEnumerable<string> addresses) =>
        await AssertNothingToMend(await browser.NewVisitorAsync(app.Address, width, scheme), addresses);

    private static async Task AssertNothingToMend(IPage page, IEnumerable<string> addresses)
    {
        List<string> found = [];
        foreach (string address in addresses)
        {
            IResponse answer = (await page.GotoAsync(address))!;
            if (answer.Status != 200) found.Add($"{address}: answers {answer.Status}");
            found.AddRange((await Axe.ViolationsAsync(page)).Select(v => $"{address}: {v}"));
            if (await page.EvaluateAsync<int>("document.documentElement.scrollWidth") > page.ViewportSize!.Width) found.Add($"{address}: scrolls sideways");
        }

        // An open page goes on drawing: with a dozen of them the later tests crawl.
        await page.Context.CloseAsync();
        Assert.True(found.Count == 0, string.Join(Environment.NewLine, found));
    }

    private IEnumerable<string> Addresses() =>
    [
        "/", "/safety", "/model", "/preferences", "/glossary", "/handouts/bench-test", "/tonight", "/sign-in", "/join", "/practice", "/bench?advise=yes",
        BrokenBench, "/first-wraps", $"/lessons/{app.Course.Lessons[0].Slug}/projector",
        .. app.Course.Lessons.SelectMany(l => l.Blocks).OfType<PracticeBlock>().GroupBy(p => p.Practice.Template.Kind)
            .Select(g => $"/practice/{g.First().Practice.Slug}"),
        .. app.Course.Exercises.GroupBy(e => e.Kind).Select(g => $"/exercises/{g.First().Id}"),
    ];
}
