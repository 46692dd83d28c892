using Microsoft.Playwright;
using Xunit;

namespace TyingClass.Browser.Tests.Stories;

/// <summary>One evening in the club room: the instructor at the wall, a student on a phone, the mentor reading.</summary>
[Collection(BrowserCollection.Name)]
public sealed class EveningStoryTests(RunningApp app, Chromium browser)
{
    private const string Passphrase = "kettle river amber stone";

    [Fact]
    public async Task Evening_FromThePlanToTheReveal_RunsForAllThree()
    {
        // The instructor makes slips for a student and a mentor.
        IPage instructor = await browser.NewVisitorAsync(app.Address);
        await instructor.GotoAsync("/sign-in?code=new");
        await instructor.Locator("#code").FillAsync(app.NewInstructorCode());
        await instructor.Locator("#name").FillAsync("Dunlin");
        await instructor.Locator("#passphrase").FillAsync(Passphrase);
        await instructor.Locator("main form button").First.ClickAsync();
        await instructor.GotoAsync("/class/people/names");
        await instructor.Locator("#names").FillAsync("Evening Wren\nEvening Otter, mentor");
        await instructor.GetByRole(AriaRole.Button, new() { Name = "See what each line becomes" }).ClickAsync();
        await instructor.GetByRole(AriaRole.Button, new() { Name = "Add these 2 people" }).ClickAsync();
        IReadOnlyList<string> passphrases = await instructor.Locator(".slip-pass").AllInnerTextsAsync();
        Assert.Equal(2, passphrases.Count);
        IPage student = await EnterAsync("Evening Wren", passphrases[0], 390);
        IPage mentor = await EnterAsync("Evening Otter", passphrases[1], 1280);

        // He looks the evening over and turns the screens with the arrow keys.
        await instructor.GotoAsync("/class/evenings/1");
        Assert.Contains("Materials for", await instructor.Locator("main").InnerTextAsync(), StringComparison.Ordinal);
        await instructor.GetByRole(AriaRole.Link, new() { Name = "Begin on the wall" }).ClickAsync();
        await instructor.WaitForURLAsync("**/wall/1");
        await Chromium.PressToAsync(instructor, "ArrowRight", url => url.EndsWith("/wall/2", StringComparison.Ordinal));
        await Chromium.PressToAsync(instructor, "ArrowLeft", url => url.EndsWith("/wall/1", StringComparison.Ordinal));

        // The student waits at /tonight; the question comes up there by itself.
        await student.GotoAsync("/tonight");
        await instructor.GotoAsync("/class/tonight");
        await instructor.Locator("form:has(#exercise) button").ClickAsync();
        await instructor.WaitForURLAsync("**/class/tonight/wall**");
        await student.Locator(".choice").First.WaitForAsync();
        await student.Locator(".choice").First.ClickAsync();
        await student.GetByRole(AriaRole.Button, new() { Name = "Send my answer" }).ClickAsync();
        await instructor.GetByText("The one student of the class has answered.").WaitForAsync();

        // He reveals; the phone shows it by itself.
        await instructor.GetByRole(AriaRole.Button, new() { Name = "Reveal the answer" }).ClickAsync();
        await instructor.GetByText("The engine says:").WaitForAsync();
        await student.GetByText("The engine says:").WaitForAsync();

        // The student explains something at home; the mentor finds it to read.
        string explain = app.Course.Exercises.First(e => e.Kind.Word == "explain").Id;
        await student.GotoAsync($"/exercises/{explain}");
        await student.Locator("form.answer textarea").FillAsync("The weight hangs below the hinge line, so the fly stays that way.");
        await student.GetByRole(AriaRole.Button, new() { Name = "Submit answer" }).ClickAsync();
        await mentor.GotoAsync("/class/waiting");
        Assert.Contains("Evening Wren", await mentor.Locator("main").InnerTextAsync(), StringComparison.Ordinal);
        Assert.Equal(403, (await mentor.GotoAsync("/class/files"))!.Status);
    }

    private async Task<IPage> EnterAsync(string name, string passphrase, int width)
    {
        IPage page = await browser.NewVisitorAsync(app.Address, width);
        await page.GotoAsync("/sign-in");
        await page.Locator("#name").FillAsync(name);
        await page.Locator("#passphrase").FillAsync(passphrase);
        await page.Locator("main form button").First.ClickAsync();
        await page.WaitForURLAsync("**/account**");
        return page;
    }
}
