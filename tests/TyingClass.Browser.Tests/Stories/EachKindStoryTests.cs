using Microsoft.Playwright;
using TyingClass.Browser.Tests.Pages;
using TyingClass.Lessons.Exercises;
using Xunit;

namespace TyingClass.Browser.Tests.Stories;

/// <summary>Each kind of exercise, answered on a phone with nothing but a keyboard.</summary>
[Collection(BrowserCollection.Name)]
public sealed class EachKindStoryTests(RunningApp app, Chromium browser)
{
    private const int MostTabs = 90;

    public static TheoryData<string> Kinds => [.. TyingClass.Lessons.Kinds.ExerciseKinds.Words];

    [Theory]
    [MemberData(nameof(Kinds))]
    public async Task OnAPhone_ByKeyboardAlone_IsAnsweredAndTheWordsComeBeforeTheDrawing(string kind)
    {
        Exercise exercise = app.Course.Exercises.First(e => e.Kind.Word == kind && (e.Kind.IsAtTheBench || e.Kind.RightAnswer(e) is not null));
        IPage page = await browser.NewVisitorAsync(app.Address, width: 390);
        ExercisePage work = new(page);
        await work.OpenAsync(exercise);

        await AnswerAsync(page, exercise);
        await TabToAsync(page, "form.answer button[value=submit]");
        await Chromium.PressAsync(page, "Enter");
        await work.WaitForAttemptAsync(1);

        string verdict = await work.Feedback.Locator(".verdict").InnerTextAsync();
        Assert.Contains(exercise.Kind.IsMarkedByPerson ? "to be read" : "passed", verdict, StringComparison.Ordinal);
        LocatorBoundingBoxResult opening = (await work.Feedback.Locator("p.opening").BoundingBoxAsync())!;
        if (await page.Locator("main svg[role=img]").CountAsync() > 0)
        {
            LocatorBoundingBoxResult drawing = (await page.Locator("main svg[role=img]").First.BoundingBoxAsync())!;
            Assert.True(opening.Y + opening.Height <= drawing.Y, $"The words end at {opening.Y + opening.Height}, a drawing begins at {drawing.Y}.");
        }

        Assert.Equal(390, await page.EvaluateAsync<int>("() => document.documentElement.scrollWidth"));
        // What was answered stands in the list, and the way on is a button that the keyboard reaches.
        Assert.NotEqual("", await page.Locator(".attempt-list .answered-with").First.InnerTextAsync());
        await TabToAsync(page, ".after a.button");
        string next = (await page.Locator(".after a.button").GetAttributeAsync("href"))!;
        await Chromium.PressToAsync(page, "Enter", url => url.EndsWith(next, StringComparison.Ordinal));
    }

    [Fact]
    public async Task OnALaptop_AfterARepair_VerdictAndBothDrawingsStandSideBySideInOneScreen()
    {
        (IPage page, ExercisePage work) = await OpenAsync("mass-05", width: 1280);
        await page.SetViewportSizeAsync(1280, 800);
        await page.Locator("[name='r:parts[0].side']").SelectOptionAsync("top");
        await work.SubmitAsync();
        await work.WaitForAttemptAsync(1);

        LocatorBoundingBoxResult opening = (await work.OpeningBoxAsync())!, before = await HalfAsync(0), after = await HalfAsync(1);
        Assert.True(opening.X + opening.Width <= before.X, "The words do not stand beside the drawing.");
        Assert.True(before.X + before.Width <= after.X && Math.Abs(before.Y - after.Y) < 2, "Before and after do not stand side by side.");
        Assert.InRange(opening.Y, 0, 800);
        Assert.InRange(after.Y + after.Height, 0, 800);

        async Task<LocatorBoundingBoxResult> HalfAsync(int i) => (await work.Feedback.Locator(".fly-halves svg[role=img]").Nth(i).BoundingBoxAsync())!;
    }

    [Fact]
    public async Task Draft_ChangedField_IsDrawnAnewAndABadOneIsSaidBesideTheOldDrawing()
    {
        (IPage page, _) = await OpenAsync("mass-05", width: 390);
        ILocator plate = page.Locator("[data-draft-plate]");
        string given = await plate.InnerHTMLAsync();

        ILocator size = page.Locator("[name='r:parts[0].size']");
        await size.FillAsync("5.6 mm");
        await page.WaitForFunctionAsync("given => document.querySelector('[data-draft-plate]').innerHTML !== given", given);
        LocatorBoundingBoxResult drawn = (await plate.BoundingBoxAsync())!;
        Assert.True(drawn.Y >= 0 && drawn.Y + drawn.Height < 500, $"The drawing stands at {drawn.Y}, out of view of whoever types.");

        await size.FillAsync("5.6 m");
        await page.Locator("[data-draft-said]:has-text('out of range')").WaitForAsync();
        Assert.Equal(1, await plate.Locator("svg[role=img]").CountAsync());
        // Nothing was sent in.
        Assert.Contains("None yet", await page.Locator(".attempts").InnerTextAsync(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Draft_WithoutScripting_IsDrawnByAButtonThatComesBackToIt()
    {
        Exercise repair = Find("mass-05");
        IPage page = await browser.NewVisitorAsync(app.Address, width: 390, scripting: false);
        await page.GotoAsync($"/exercises/{repair.Id}");
        await page.Locator("[name='r:parts[0].size']").FillAsync("5.6 mm");
        await page.GetByRole(AriaRole.Button, new() { Name = "Draw it" }).ClickAsync();
        await page.WaitForURLAsync("**#draft");
        Assert.Equal("5.6 mm", await page.Locator("[name='r:parts[0].size']").InputValueAsync());
        LocatorBoundingBoxResult drawn = (await page.Locator("[data-draft-plate]").BoundingBoxAsync())!;
        Assert.InRange(drawn.Y, 0, 450);
    }

    private async Task<(IPage Page, ExercisePage Work)> OpenAsync(string id, int width)
    {
        IPage page = await browser.NewVisitorAsync(app.Address, width);
        ExercisePage work = new(page);
        await work.OpenAsync(Find(id));
        return (page, work);
    }

    private Exercise Find(string id) => app.Course.TryFindExercise(id, out _, out Exercise found)
        ? found : throw new InvalidOperationException($"{id}, which this story is about, has left the course.");

    private static async Task AnswerAsync(IPage page, Exercise exercise)
    {
        // A tub test has no right answer: what the scale said is typed.
        string right = exercise.Kind.RightAnswer(exercise) ?? "0.6 g";
        switch (exercise.Kind.Word)
        {
            case "predict":
                await ChooseAsync(page, "answer", exercise.Choices.IndexOf(right));
                break;
            case "find the slip":
                string[] picked = right.Split(';');
                await ChooseAsync(page, "n:step", Number(picked[0]) - 1);
                await ChooseAsync(page, "n:reason", Number(picked[1]) - 1);
                break;
            case "sort":
                string[] order = right.Split('\n');
                for (int i = 0; i < order.Length; i++)
                {
                    await TabToAsync(page, $"#answer-{exercise.Id}-place-{i + 1}");
                    await page.Keyboard.TypeAsync(order[i]);
                }

                break;
            case "tub test":
                await TabToAsync(page, "form.answer input.measure");
                await page.Keyboard.TypeAsync(right);
                break;
            case "repair" or "compose":
                await TabToAsync(page, "button[value='as text']");
                await Chromium.PressAsync(page, "Enter");
                await page.Locator("#text").WaitForAsync();
                await TabToAsync(page, "#text");
                await page.Keyboard.PressAsync("Control+A");
                await page.Keyboard.InsertTextAsync(right);
                break;
            default:
                await TabToAsync(page, "form.answer [name=answer]");
                await page.Keyboard.InsertTextAsync(right);
                break;
        }
    }

    private static int Number(string line) => int.Parse(line.Split(' ')[^1], System.Globalization.CultureInfo.InvariantCulture);

    private static async Task ChooseAsync(IPage page, string name, int index)
    {
        await TabToAsync(page, $"form.answer input[name='{name}']");
        await Chromium.PressAsync(page, "Space");
        for (int i = 0; i < index; i++) await page.Keyboard.PressAsync("ArrowDown");
    }

    // As somebody without a mouse: on and on until the focus is there.
    private static async Task TabToAsync(IPage page, string selector)
    {
        for (int i = 0; i < MostTabs; i++)
        {
            if (await page.EvaluateAsync<bool>("s => document.activeElement.matches(s)", selector)) return;
            await page.Keyboard.PressAsync("Tab");
        }

        Assert.Fail($"{MostTabs} tabs do not lead to {selector}.");
    }
}
