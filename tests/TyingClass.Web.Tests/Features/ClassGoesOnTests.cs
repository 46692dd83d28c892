using System.Net;
using AngleSharp.Html.Dom;
using TyingClass.Storage.Evenings;
using TyingClass.Web.Tests.Pages;
using Xunit;

namespace TyingClass.Web.Tests.Features;

public sealed class ClassGoesOnTests : IDisposable
{
    private readonly ClassRoom room = new();

    private Storage.Classes.ClassRoom First => room.Store.Classes.All()[0];

    [Fact]
    public async Task Copy_OfLastYear_ShowsTheNewDatesAndOpensTheCopy()
    {
        Browser instructor = await room.NewInstructorAsync();
        await room.NewStudentAsync("Wren");
        room.Store.Evenings.Save(new EveningPlan(First.Id, 1) { StartsLocal = new DateTime(2026, 1, 14, 19, 0, 0), Plan = "Tub first." });
        await (await instructor.OpenAsync("/class/tonight")).PressAsync("Ask the room");

        Sheet copy = await instructor.OpenAsync($"/class/copy?from={First.Id}");
        Assert.Contains("Wed, Jan 13, 2027, 19:00", copy.Text("table"), StringComparison.Ordinal);
        Sheet wrong = await copy.PressAsync("Make the copy", ("first", "soon"), ("name", "Winter 2027"));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, wrong.Status);
        Assert.Equal("Winter 2027", ((IHtmlInputElement)wrong.Find("#name")).Value);
        Sheet made = await wrong.PressAsync("Make the copy", ("first", "2027-01-20"));

        Assert.Equal("Evenings of Winter 2027", made.Heading);
        Assert.Contains("Wed, Jan 20, 2027, 19:00", made.Text(".evening-list"), StringComparison.Ordinal);
        Assert.Contains("Nobody has joined yet", (await instructor.OpenAsync("/class")).Text("main"), StringComparison.Ordinal);
        Sheet asked = await (await instructor.OpenAsync("/class/tonight")).FillAndSendAsync("section[aria-labelledby=prepared-title] form", "button");
        Assert.Equal("/class/tonight/wall", asked.Address);
    }

    [Fact]
    public async Task Copy_OfAnotherInstructorsClass_IsUnknown()
    {
        using TwoClasses two = await TwoClasses.OpenAsync();
        Browser plover = await two.AsAsync("Plover");
        Assert.Equal(HttpStatusCode.NotFound, (await plover.OpenAsync($"/class/copy?from={two.First.Id}")).Status);
        Sheet setup = await plover.OpenAsync("/class/setup");
        IEnumerable<KeyValuePair<string, string>> fields = Browser.FieldsOf((IHtmlFormElement)setup.Find("#classes ~ ul form")).Where(f => f.Key != "id");
        await plover.PostAsync("/class/setup", [.. fields, KeyValuePair.Create("id", two.First.Id), KeyValuePair.Create("do", "archive")]);
        Assert.Null(two.Room.Store.Classes.Find(two.First.Id)!.ArchivedAt);
    }

    [Fact]
    public async Task Archived_Class_IsReadAndNotChangedUntilItIsTakenBack()
    {
        Browser instructor = await room.NewInstructorAsync();
        Browser wren = await room.NewStudentAsync("Wren");
        await Answers.PassFirstAsync(wren);
        Sheet evening = await instructor.OpenAsync("/class/evenings/1");
        Sheet archived = await (await instructor.OpenAsync("/class/setup")).PressAsync("Archive");
        Assert.Contains("Archived: 1", archived.Text("#classes ~ details summary"), StringComparison.Ordinal);

        Assert.Equal(["Wren"], (await RegisterPage.OpenAsync(instructor)).People);
        Sheet refused = await evening.FillAndSendAsync("#edit", ".send button", ("plan", "Too late."));
        Assert.Equal(HttpStatusCode.Conflict, refused.Status);
        Assert.Contains("Nothing was changed", refused.Text("[role=alert].refused"), StringComparison.Ordinal);
        Assert.Equal("Too late.", ((IHtmlTextAreaElement)refused.Find("#plan")).Value.Trim());
        Assert.Equal(0, room.Store.Evenings.Find(First.Id, 1).Version);
        Assert.Contains("No class has that code", (await (await JoinPage.OpenAsync(room.NewBrowser())).JoinAsync(First.Code, "Teal")).Errors,
            StringComparison.Ordinal);
        Assert.Single((await ExercisePage.OpenAsync(wren, "first-01")).Attempts);

        await (await instructor.OpenAsync("/class/setup")).PressAsync("Take back");
        await refused.FillAndSendAsync("#edit", ".send button");
        Assert.Equal("Too late.", room.Store.Evenings.Find(First.Id, 1).Plan.Trim());
    }

    [Fact]
    public async Task Archived_OneOfTwo_LeavesTheOtherOpen()
    {
        Browser instructor = await room.NewInstructorAsync();
        await (await instructor.OpenAsync("/class/setup")).PressAsync("Archive");
        Sheet made = await (await instructor.OpenAsync("/class/setup")).PressAsync("Make it", ("new-name", "Winter 2027"));
        Assert.Equal("Winter 2027", made.Text(".class-nav .tab"));
        Browser other = room.NewBrowser();
        await (await SignInPage.OpenAsync(other)).EnterAsync(TwoClasses.Passphrase);
        Assert.Equal("Winter 2027", (await other.OpenAsync("/class")).Text(".class-nav .tab"));
    }

    [Fact]
    public async Task PacketSizes_KeptForTheClass_CountOnEveryEveningUntilTheAddressSaysOtherwise()
    {
        Browser instructor = await room.NewInstructorAsync();
        await room.NewStudentAsync("Wren");
        Sheet counted = await instructor.OpenAsync("/class/evenings/1?hooks=1&sparePercent=0");
        Sheet kept = await counted.PressAsync("Keep the sizes");
        Assert.Equal("1", ((IHtmlInputElement)kept.Find("#p-hooks")).Value);
        Assert.Contains("sizes this class keeps", (await instructor.OpenAsync("/class/evenings/1")).Text(), StringComparison.Ordinal);
        Assert.Equal("7", ((IHtmlInputElement)(await instructor.OpenAsync("/class/evenings/1?hooks=7")).Find("#p-hooks")).Value);
    }

    public void Dispose() => room.Dispose();
}
