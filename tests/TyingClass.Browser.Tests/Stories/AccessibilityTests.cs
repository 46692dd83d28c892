using Deque.AxeCore.Commons;
using Deque.AxeCore.Playwright;
using Microsoft.Playwright;
using TyingClass.Lessons.Courses;
using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Grading;
using TyingClass.Storage.People;
using Xunit;

namespace TyingClass.Browser.Tests.Stories;

[Collection(BrowserCollection.Name)]
public sealed class AccessibilityTests(RunningApp app, Chromium browser)
{
    // A recipe with a bad figure, so that the marks of an error are looked at too.
    private static readonly string BrokenBench = $"/bench?r={TyingClass.Web.Bench.Packed.Pack("recipe: Mill Loach\nintent: point up\nhook:\n  size: 4\n  gape: wide\n")}";

    [Theory]
    [InlineData(1280, ColorScheme.Light)]
    [InlineData(1280, ColorScheme.Dark)]
    [InlineData(390, ColorScheme.Light)]
    [InlineData(390, ColorScheme.Dark)]
    public Task LessonExerciseAndBench_ByAxe_HaveNothingToMend(int width, ColorScheme scheme) =>
        AssertNothingToMend(width, scheme, [$"/lessons/{app.Course.Lessons[0].Slug}", $"/exercises/{app.Course.Exercises.First(e => e.Kind == ExerciseKind.Repair).Id}", "/bench"]);

    [Fact]
    public Task EveryOtherPage_ByAxeOnAPhoneInTheDark_HasNothingToMend() => AssertNothingToMend(390, ColorScheme.Dark, Addresses());

    [Theory]
    [InlineData(390, ColorScheme.Dark)]
    public async Task ClassPages_ByAxe_HaveNothingToMend(int width, ColorScheme scheme)
    {
        IPage page = await browser.NewVisitorAsync(app.Address, width, scheme);
        await page.GotoAsync("/sign-in?code=new");
        await page.GetByLabel("One-time code").FillAsync(app.NewInstructorCode());
        await page.GetByLabel("Your name, as the class sees it").FillAsync("Robin");
        await page.GetByLabel("A passphrase of your own").FillAsync("kettle river amber stone");
        await page.GetByRole(AriaRole.Button, new() { Name = "Open the register" }).ClickAsync();
        Person student = app.Store.Accounts.Add(app.Store.Classes.All()[0].Id, Role.Student, $"Teal {width}", "none").Person!;
        Exercise repair = app.Course.Exercises.First(e => e.Kind == ExerciseKind.Repair);
        app.Store.Attempts.Add(student.Id, repair.Id, repair.RecipeText!, Grader.Grade(repair, repair.RecipeText!, failedAttempts: 0));
        string[] addresses =
        [
            "/class", "/class?evening=1", "/class/stuck", "/class/waiting", "/class/people", $"/class/people/{student.Id}", $"/class/people/{student.Id}/remove",
            "/class/setup", $"/class/exercises/{repair.Id}", $"/class/students/{student.Id}", $"/class/students/{student.Id}/{repair.Id}", "/account", "/comments",
        ];
        foreach (string address in addresses)
        {
            await page.GotoAsync(address);
            Assert.True(await page.EvaluateAsync<int>("document.documentElement.scrollWidth") <= width, address);
        }

        await AssertNothingToMend(page, addresses);
    }

    [Fact]
    public async Task Pages_OnAPhone_DoNotScrollSideways()
    {
        IPage page = await browser.NewVisitorAsync(app.Address, 390);
        foreach (string address in Addresses().Append($"/lessons/{app.Course.Lessons[0].Slug}"))
        {
            await page.GotoAsync(address);
            Assert.True(await page.EvaluateAsync<int>("document.documentElement.scrollWidth") <= 390, address);
        }
    }

    private async Task AssertNothingToMend(int width, ColorScheme scheme, IEnumerable<string> addresses) =>
        await AssertNothingToMend(await browser.NewVisitorAsync(app.Address, width, scheme), addresses);

    private static async Task AssertNothingToMend(IPage page, IEnumerable<string> addresses)
    {
        List<string> found = [];
        foreach (string address in addresses)
        {
            await page.GotoAsync(address);
            AxeResult result = await page.RunAxe();
            found.AddRange(result.Violations.Select(v => $"{address}: {v.Id} at {v.Nodes.FirstOrDefault()?.Html}"));
        }

        // An open page goes on drawing: with a dozen of them the later tests crawl.
        await page.Context.CloseAsync();
        Assert.Empty(found);
    }

    private IEnumerable<string> Addresses() =>
    [
        "/", "/safety", "/model", "/preferences", "/sign-in", "/join", "/practice", "/bench?advise=yes", BrokenBench, $"/lessons/{app.Course.Lessons[0].Slug}/projector",
        .. app.Course.Lessons.SelectMany(l => l.Blocks).OfType<PracticeBlock>().GroupBy(p => p.Practice.Template.Kind).Select(g => $"/practice/{g.First().Practice.Slug}"),
        .. app.Course.Exercises.GroupBy(e => e.Kind).Select(g => $"/exercises/{g.First().Id}"),
    ];
}
