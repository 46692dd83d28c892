using System.Globalization;
using Microsoft.Playwright;
using TyingClass.Lessons.Exercises;
using TyingClass.Storage.People;
using Xunit;

namespace TyingClass.Browser.Tests.Stories;

/// <summary>One whole evening of each of the two who teach: the instructor from the brief to the room and back, the mentor at the table.</summary>
[Collection(BrowserCollection.Name)]
public sealed class TeachingStoryTests(RunningApp app, Chromium browser)
{
    // Eyes under the shank: it flips.
    private const string Flips = """
        recipe: Story Darter
        intent: point up
        hook:
          size: 4
        parts:
          - part: dumbbell eyes
            material: brass
            size: 4 mm
            at: 4 mm
            side: under

        """;

    [Fact]
    public async Task Instructor_AnEvening_FromTheBriefToTheRoomAndBack()
    {
        // Before it: three students hold one wrong vote, and one of them has missed a repair twice.
        StoryClass story = StoryClass.Make(app, browser, "Bunting", "Brief Wren", "Brief Teal", "Brief Heron");
        Exercise question = app.Course.Exercises.First(e => e.Kind.Word == "predict" && e.WrongAnswers.Any(w => w.FindingNamed == "misreading 1"));
        string wrong = question.WrongAnswers.First(w => w.FindingNamed == "misreading 1").Answer;
        foreach (Person person in story.Students) story.Miss(person, question, wrong);
        Exercise repair = app.Course.Exercises.First(e => e.Kind.Word == "repair" && e.WrongAnswers.Length > 0);
        for (int i = 0; i < 2; i++) story.Miss(story.Students[0], repair, repair.WrongAnswers[0].Answer);
        IPage instructor = await story.EnterAsync("Bunting"), student = await story.EnterAsync("Brief Teal", 390);
        IPage other = await story.EnterAsync("Brief Heron", 390);

        // The first page names it, with who and what to show.
        await instructor.GotoAsync("/class");
        ILocator first = instructor.Locator(".belief-first");
        Assert.Contains("3", await first.Locator(".belief-count").InnerTextAsync(), StringComparison.Ordinal);
        Assert.Contains(question.Title, await first.InnerTextAsync(), StringComparison.Ordinal);
        Assert.Contains("Tie ", await first.Locator(".show").InnerTextAsync(), StringComparison.Ordinal);
        Assert.Contains("Brief Wren", await instructor.Locator(".stuck-group").First.InnerTextAsync(), StringComparison.Ordinal);

        // He shows the flies at the vise, then in the water, and leaves with Escape.
        await first.GetByRole(AriaRole.Link, new() { Name = "Demonstrate it" }).ClickAsync();
        await instructor.WaitForURLAsync("**/class/show/**");
        await Chromium.PressToAsync(instructor, "ArrowRight", url => url.Contains("swims=true", StringComparison.Ordinal));
        await Chromium.PressToAsync(instructor, "Escape", url => url.EndsWith("/class", StringComparison.Ordinal));

        // It goes into the plan, and practice to those who hold it.
        await first.GetByRole(AriaRole.Button, new() { Name = "Put it on the plan" }).ClickAsync();
        await instructor.GetByText("It stands among the demonstrations").WaitForAsync();
        await student.GotoAsync("/");
        if (await first.GetByRole(AriaRole.Button, new() { Name = "Give these 3 practice" }).CountAsync() > 0)
        {
            await first.GetByRole(AriaRole.Button, new() { Name = "Give these 3 practice" }).ClickAsync();
            await instructor.GetByText("Written to 3 students").WaitForAsync();
            await student.ReloadAsync();
            await student.Locator(".comment .typed a").ClickAsync();
            await student.WaitForURLAsync("**/practice/**");
        }

        // He puts it to the room. No tally sways it; the phone shows the fly; closing leads back to the brief.
        await instructor.GotoAsync("/class");
        await first.GetByRole(AriaRole.Button, new() { Name = "Put it to the room" }).ClickAsync();
        await instructor.WaitForURLAsync("**/class/tonight/wall**");
        await student.GotoAsync("/tonight");
        await student.Locator(".at-the-vise svg").First.WaitForAsync();
        await student.Locator(".choice").First.ClickAsync();
        await student.GetByRole(AriaRole.Button, new() { Name = "Send my answer" }).ClickAsync();
        await instructor.GetByText("1 of 3 has answered.").WaitForAsync();
        Assert.Equal(0, await instructor.Locator(".tally").CountAsync());
        await instructor.GetByRole(AriaRole.Button, new() { Name = "Reveal the answer" }).ClickAsync();
        await instructor.Locator(".tally").WaitForAsync();
        await instructor.GetByRole(AriaRole.Button, new() { Name = "Close the question" }).ClickAsync();
        await instructor.WaitForURLAsync(url => url.EndsWith("/class", StringComparison.Ordinal));

        // The evening itself: from its plan onto the wall, screen by screen to the first question.
        int evening = app.Store.Evenings.OfClass(story.Room.Id).First(e => e.Demonstrations.Length > 0).Number;
        await instructor.GotoAsync(string.Create(CultureInfo.InvariantCulture, $"/class/evenings/{evening}"));
        Assert.Contains("Tie ", await instructor.Locator("[aria-labelledby=show-title]").InnerTextAsync(), StringComparison.Ordinal);
        await instructor.GetByRole(AriaRole.Link, new() { Name = "Begin on the wall" }).ClickAsync();
        await instructor.WaitForURLAsync("**/wall/1");
        ILocator ask = instructor.GetByRole(AriaRole.Button, new() { Name = "Ask the room" });
        for (int step = 2; await ask.CountAsync() == 0; step++)
        {
            string next = string.Create(CultureInfo.InvariantCulture, $"/wall/{step}");
            await Chromium.PressToAsync(instructor, "ArrowRight", url => url.EndsWith(next, StringComparison.Ordinal));
        }

        // Two phones answer; the tally comes when he asks for it, then the answer, then his slide again.
        string slide = instructor.Url;
        foreach (IPage phone in new[] { student, other }) await phone.GotoAsync("/tonight");
        await ask.ClickAsync();
        await instructor.WaitForURLAsync("**/class/tonight/wall**");
        foreach ((IPage phone, int choice) in new[] { (student, 0), (other, 1) })
        {
            await phone.Locator(".choice").Nth(choice).ClickAsync();
            Assert.Contains("never who", await phone.Locator(".who-sees").InnerTextAsync(), StringComparison.Ordinal);
            await phone.GetByRole(AriaRole.Button, new() { Name = "Send my answer" }).ClickAsync();
        }

        await instructor.GetByText("2 of 3 have answered.").WaitForAsync();
        await instructor.GetByRole(AriaRole.Link, new() { Name = "Show the tally" }).ClickAsync();
        await instructor.Locator(".tally").WaitForAsync();
        await instructor.GetByRole(AriaRole.Button, new() { Name = "Reveal the answer" }).ClickAsync();
        foreach (IPage page in new[] { instructor, student, other }) await page.Locator(".revealed svg").First.WaitForAsync();
        await instructor.GetByRole(AriaRole.Button, new() { Name = "Close the question" }).ClickAsync();
        await instructor.WaitForURLAsync(slide);
        foreach (IPage phone in new[] { student, other }) await phone.GetByText("Nothing is being asked right now.").WaitForAsync();
        await Chromium.PressToAsync(instructor, "Escape", url => url.EndsWith(string.Create(CultureInfo.InvariantCulture, $"/evenings/{evening}"),
            StringComparison.Ordinal));

        // The handout is printed from the evening's page.
        await instructor.GetByRole(AriaRole.Link, new() { Name = "Handout to print" }).ClickAsync();
        await instructor.Locator(".handout svg").First.WaitForAsync();

        // At home a student explains; he reads it, returns it with a word, and it stands first on the student's home page.
        Exercise explain = app.Course.Exercises.First(e => e.Kind.Word == "explain");
        await student.GotoAsync($"/exercises/{explain.Id}");
        Assert.Contains("reads this", await student.Locator(".who-sees").InnerTextAsync(), StringComparison.Ordinal);
        await student.Locator("form.answer textarea").FillAsync("Because it is heavy there, so it hangs below the hinge line and stays that way.");
        await student.GetByRole(AriaRole.Button, new() { Name = "Submit answer" }).ClickAsync();
        await student.WaitForURLAsync(url => url.Contains("attempt=", StringComparison.Ordinal));
        await instructor.GotoAsync("/class/read");
        await instructor.Locator("textarea[name^=reason-]").FillAsync("Heavy where?");
        await instructor.GetByRole(AriaRole.Button, new() { Name = "Return" }).ClickAsync();
        await instructor.GetByText("Nothing waits to be read.").WaitForAsync();
        await student.GotoAsync("/");
        await student.GetByText("Heavy where?").First.WaitForAsync();

        // Before he closes, the register and the stuck list know of the evening.
        foreach (string page in new[] { "/class/register?evening=all", "/class/stuck" })
        {
            await instructor.GotoAsync(page);
            Assert.Contains("Brief Wren", await instructor.Locator("main").InnerTextAsync(), StringComparison.Ordinal);
        }

        // Then he sits beside the one who is stuck: the page says where to begin.
        await instructor.GotoAsync("/class");
        await instructor.Locator(".stuck-group a").GetByText("Brief Wren").First.ClickAsync();
        Assert.Contains(repair.Title, await instructor.Locator(".begin").InnerTextAsync(), StringComparison.Ordinal);
        Assert.NotEmpty(app.Store.Evenings.OfClass(story.Room.Id).Where(e => e.Demonstrations.Length > 0));
    }

    [Fact]
    public async Task Mentor_AnEvening_FromWhatWaitsToTheBook()
    {
        StoryClass story = StoryClass.Make(app, browser, "Sandpiper", "Table Wren");
        story.AddMentor("Table Otter");
        string pattern = story.Ask(story.Students[0], "Story Darter", Flips, "Why does it turn over?").Pattern.Id;
        story.Miss(story.Students[0], app.Course.Exercises.First(e => e.Kind.Word == "explain"), "The weight hangs below the hinge line.");
        IPage mentor = await story.EnterAsync("Table Otter"), student = await story.EnterAsync("Table Wren", 390);

        // The student tied it and put it in the tub.
        await student.GotoAsync("/bench-log/new");
        await student.Locator("#fly").SelectOptionAsync(new SelectOptionValue { Index = 1 });
        await student.Locator("#way").SelectOptionAsync(new SelectOptionValue { Index = 1 });
        await student.Locator("#mass").FillAsync("0.6 g");
        await student.GetByRole(AriaRole.Button, new() { Name = "Keep it" }).ClickAsync();
        await student.WaitForURLAsync(url => url.Contains("/bench-log/", StringComparison.Ordinal) && !url.EndsWith("/new", StringComparison.Ordinal));

        // The home page says what waits.
        await mentor.GotoAsync("/");
        await mentor.Locator("#work-title a").First.ClickAsync();
        await mentor.Locator(".queue a").First.ClickAsync();
        Assert.Contains("does not ride", await mentor.Locator("#diagnosis-title").InnerTextAsync(), StringComparison.Ordinal);

        // What the real fly did stands there, to be commented on; the bench opens with the student's recipe on it.
        await mentor.Locator(".real-fly").WaitForAsync();
        await mentor.Locator("#about").SelectOptionAsync(new SelectOptionValue
        {
            Value = await mentor.Locator("#about option[value^='log:']").GetAttributeAsync("value"),
        });
        await mentor.Locator("#text").FillAsync("The tub says what the engine says.");
        await mentor.GetByRole(AriaRole.Button, new() { Name = "Send the comment" }).ClickAsync();
        await mentor.GetByText("The tub says what the engine says.").First.WaitForAsync();
        string review = mentor.Url;
        await mentor.GetByRole(AriaRole.Link, new() { Name = "Open on the bench" }).ClickAsync();
        await mentor.Locator("#bench-side-title").WaitForAsync(new() { State = WaitForSelectorState.Attached });
        Assert.Contains("Story Darter", await mentor.ContentAsync(), StringComparison.Ordinal);
        await mentor.GotoAsync(review);

        // A comment does not lose the words begun below it.
        await mentor.Locator("#words").FillAsync("Turn the eyes over.");
        await mentor.Locator("#text").FillAsync("They hang on the wrong side.");
        await mentor.GetByRole(AriaRole.Button, new() { Name = "Send the comment" }).ClickAsync();
        await mentor.GetByText("Your comment is sent.").WaitForAsync();
        Assert.Equal("Turn the eyes over.", await mentor.Locator("#words").InputValueAsync());

        // It is not signed off without a reason: what the fly does is said first.
        await mentor.GetByRole(AriaRole.Button, new() { Name = "Sign off all the same" }).ClickAsync();
        await mentor.GetByText("Nothing was decided yet").WaitForAsync();
        Assert.Equal("Turn the eyes over.", await mentor.Locator("#words").InputValueAsync());

        // Their own version goes back, and becomes the student's next revision.
        await mentor.GetByText("Send it back as your version").ClickAsync();
        await mentor.Locator("#mine").FillAsync(Flips.Replace("side: under", "side: top", StringComparison.Ordinal));
        await mentor.GetByRole(AriaRole.Button, new() { Name = "Send back as my version" }).ClickAsync();

        // On second thought: what it was decided with stands there to be used again, and goes out once more.
        await mentor.GetByRole(AriaRole.Button, new() { Name = "Take the decision back" }).ClickAsync();
        await mentor.GetByText("The decision is taken back").WaitForAsync();
        Assert.Equal("Turn the eyes over.", await mentor.Locator("#words").InputValueAsync());
        Assert.Contains("side: top", await mentor.Locator("#mine").InputValueAsync(), StringComparison.Ordinal);
        await mentor.GetByRole(AriaRole.Button, new() { Name = "Send back as my version" }).ClickAsync();
        await mentor.GetByRole(AriaRole.Button, new() { Name = "Take the decision back" }).WaitForAsync();
        await student.GotoAsync($"/patterns/{pattern}");
        await student.Locator("#reviews a[href*=proposal]").ClickAsync();
        await student.GetByRole(AriaRole.Button, new() { Name = "Take it as revision 2" }).ClickAsync();
        await student.GetByText("Revision 2 is saved.").WaitForAsync();
        await student.GetByRole(AriaRole.Button, new() { Name = "Ask for a review of revision 2" }).ClickAsync();

        // What rides is signed off, and stands in the book.
        await mentor.GotoAsync("/reviews");
        await mentor.Locator(".queue a").First.ClickAsync();
        await mentor.GetByRole(AriaRole.Button, new() { Name = "Sign off", Exact = true }).ClickAsync();
        await student.GotoAsync("/pattern-book");
        await student.GetByText("signed off by Table Otter").WaitForAsync();

        // The page of the student has all of it, for whoever sits beside them.
        await mentor.GotoAsync($"/class/students/{story.Students[0].Id}");
        Assert.Contains("Story Darter", await mentor.Locator("[aria-labelledby=flies-title]").InnerTextAsync(), StringComparison.Ordinal);

        // The explanation is accepted with one key.
        await mentor.GotoAsync("/class/read");
        Assert.Contains("The weight hangs below", await mentor.Locator(".their-answer").InnerTextAsync(), StringComparison.Ordinal);
        await Chromium.PressToAsync(mentor, "a", url => url.Contains("/class/waiting", StringComparison.Ordinal));
        await mentor.GetByText("Nothing waits to be read.").WaitForAsync();
    }
}
