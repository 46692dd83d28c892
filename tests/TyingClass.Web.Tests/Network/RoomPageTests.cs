using System.Net;
using TyingClass.Storage.Servers;
using TyingClass.Web.Network;
using TyingClass.Web.Tests.Pages;
using Xunit;

namespace TyingClass.Web.Tests.Network;

/// <summary>The choice on the Setup page, and every place that prints the address.</summary>
public sealed class RoomPageTests : IDisposable
{
    private const string Root = "https://class.example";

    private readonly ClassRoom _room = new();

    public void Dispose() => _room.Dispose();

    [Fact]
    public async Task Setup_AtFirst_IsClosedAndSaysWhatOpeningMeans()
    {
        Sheet setup = await (await _room.NewInstructorAsync()).OpenAsync("/class/setup");

        Assert.Contains("Closed: only this machine can open the class.", setup.Text("#room"), StringComparison.Ordinal);
        Assert.Contains("plain HTTP: someone who listens on that network can read what is sent, passphrases too", setup.Text("#room"),
            StringComparison.Ordinal);
    }

    [Fact]
    public async Task Open_TypedAddress_IsKept()
    {
        Sheet after = await OpenAsync(await _room.NewInstructorAsync());

        Assert.Equal("/class/room", after.Address);
        Assert.Contains($"come in at {Root}", after.Text("main"), StringComparison.Ordinal);
        Assert.Equal(new RoomChoice(true, Root), _room.Store.RoomChoice.Get());
        await after.PressAsync("Close to the room");
        Assert.False(_room.Store.RoomChoice.Get().IsOpen);
    }

    [Theory]
    [InlineData("")]
    [InlineData("class club")]
    [InlineData("https://class.example/join")]
    [InlineData("ftp://class.example")]
    [InlineData("203.0.113.7")]
    public async Task Open_TypedAddressThatIsNone_IsRefusedAndChangesNothing(string typed)
    {
        Sheet told = await OpenAsync(await _room.NewInstructorAsync(), typed);

        Assert.Equal(HttpStatusCode.UnprocessableEntity, told.Status);
        Assert.True(told.Has("[role=alert]"));
        Assert.Equal(new RoomChoice(false), _room.Store.RoomChoice.Get());
    }

    [Fact]
    public async Task Open_AddressCopiedFromThePage_IsListenedAt()
    {
        await OpenAsync(await _room.NewInstructorAsync(), "http://127.0.0.2:5391");

        Assert.Equal(new RoomChoice(true, "127.0.0.2"), _room.Store.RoomChoice.Get());
    }

    [Fact]
    public async Task Open_TypedAddressRefused_StandsInTheFieldAgain()
    {
        Sheet told = await OpenAsync(await _room.NewInstructorAsync(), "class club");

        Assert.Equal("class club", told.Find("#typed-address").GetAttribute("value"));
    }

    [Fact]
    public async Task Open_EveryPlaceThatPrintsTheAddress_PrintsTheRoomsAndItsCode()
    {
        Browser instructor = await _room.NewInstructorAsync();
        await OpenAsync(instructor);
        string join = $"{Root}/join?code={_room.Store.Classes.All()[0].Code}";
        Browser student = _room.NewBrowser();

        Assert.Equal(join, Code(await instructor.OpenAsync("/class")));
        Assert.Equal(join, Code(await instructor.OpenAsync("/class/setup")));
        Assert.Equal(join, Code(await instructor.OpenAsync("/class/evenings/1/wall/1")));
        Assert.Equal($"{Root}/tonight", Code(await instructor.OpenAsync("/class/tonight")));
        Assert.Equal(join, Code(await student.OpenAsync($"/join?code={_room.Store.Classes.All()[0].Code}")));
        Assert.Equal($"{Root}/tonight", Code(await student.OpenAsync("/tonight")));
        Assert.Equal($"{Root}/reached", Code(await instructor.OpenAsync("/class/room")));
        Sheet look = await (await instructor.OpenAsync("/class/people/names")).PressAsync("See what each line becomes", ("names", "Old Heron"));
        Sheet slips = await look.PressAsync("Add this person");
        Assert.Equal($"{Root}/sign-in?name=Old%20Heron", Code(slips));
        Assert.Contains($"{Root}/sign-in", slips.Text(".slips"), StringComparison.Ordinal);
        Assert.Equal("Old Heron", (await student.OpenAsync("/sign-in?name=Old%20Heron")).Find("#name").GetAttribute("value"));
        await (await instructor.OpenAsync("/class/tonight")).PressAsync("Ask the room");
        Assert.Equal($"{Root}/tonight", Code(await instructor.OpenAsync("/class/tonight/wall")));
    }

    [Fact]
    public async Task Closed_NoCodeIsPrintedForAnAddressOnlyThisMachineOpens()
    {
        Sheet register = await (await _room.NewInstructorAsync()).OpenAsync("/class");

        Assert.False(register.Has(".qr"));
        Assert.Contains("Only this machine can open it.", register.Text("main"), StringComparison.Ordinal);
    }

    private static async Task<Sheet> OpenAsync(Browser instructor, string typed = Root)
    {
        Sheet setup = await instructor.OpenAsync("/class/setup");
        var form = setup.Form("form[action='/class/room']");
        IEnumerable<KeyValuePair<string, string>> fields = Browser.FieldsOf(form).Where(f => f.Key is not ("address" or "typed"));
        return await instructor.PostAsync("/class/room", [.. fields, new("address", RoomSetup.Typed), new("typed", typed), new("do", "open")]);
    }

    private static string? Code(Sheet sheet)
    {
        Assert.Equal(HttpStatusCode.OK, sheet.Status);
        return QrPictureTests.Read(sheet.Find("svg.qr"));
    }
}
