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

        // Then he sits beside the one who is stuck: the page says where to begin.
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
        story.Miss(story.Students[0], app.Course.Exercises.First(e => e.Kind.Word == "explain"), "The weight hangs below the line of pull.");
        IPage mentor = await story.EnterAsync("Table Otter"), student = await story.EnterAsync("Table Wren", 390);

        // The home page says what waits.
        await mentor.GotoAsync("/");
        await mentor.Locator("#work-title a").First.ClickAsync();
        await mentor.Locator(".queue a").First.ClickAsync();
        Assert.Contains("does not ride", await mentor.Locator("#diagnosis-title").InnerTextAsync(), StringComparison.Ordinal);

        // A comment does not lose the words begun below it.
        await mentor.Locator("#words").FillAsync("Turn the eyes over.");
        await mentor.Locator("#text").FillAsync("They hang on the wrong side.");
        await mentor.GetByRole(AriaRole.Button, new() { Name = "Send the comment" }).ClickAsync();
        await mentor.GetByText("Your comment is sent.").WaitForAsync();
        Assert.Equal("Turn the eyes over.", await mentor.Locator("#words").InputValueAsync());

        // Their own version goes back, and becomes the student's next revision.
        await mentor.GetByText("Send it back as your version").ClickAsync();
        await mentor.Locator("#mine").FillAsync(Flips.Replace("side: under", "side: top", StringComparison.Ordinal));
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

        // The explanation is accepted with one key.
        await mentor.GotoAsync("/class/read");
        Assert.Contains("The weight hangs below", await mentor.Locator(".their-answer").InnerTextAsync(), StringComparison.Ordinal);
        await Chromium.PressToAsync(mentor, "a", url => url.Contains("/class/waiting", StringComparison.Ordinal));
        await mentor.GetByText("Nothing waits to be read.").WaitForAsync();
    }
}
