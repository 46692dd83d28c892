using System.Net;
using AngleSharp.Html.Dom;
using TyingClass.Storage.BenchLog;
using TyingClass.Web.Tests.Pages;
using Xunit;

namespace TyingClass.Web.Tests.Features;

public sealed class BenchLogTests
{
    // One red pixel, an 8-bit RGB PNG (ISO/IEC 15948), as any encoder writes it.
    private static readonly byte[] Png =
        Convert.FromBase64String("iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAIAAACQd1PeAAAADElEQVR4nGP4z8AAAAMBAQDJ/pLvAAAAAElFTkSuQmCC");

    [Fact]
    public async Task Log_InAnyUnit_StandsBesideThePrediction()
    {
        using TwoClasses two = await EmptyShelves.OpenAsync();
        Sheet entry = await LogAsync(await two.AsAsync("Wren"), ("mass", "8 gr"), ("hang", "40 deg"), ("sink-time", "2 s"), ("sink-depth", "1 ft"),
            ("water", "50 °F"), ("way", "point-up"));
        LogEntry kept = two.Room.Store.BenchLog.Of(two.Wren.Id).Single();
        // Exact by definition: 1 gr = 64.798 91 mg, 1 ft = 0.3048 m.
        Assert.Equal(8 * 64.79891e-6, kept.Seen.MassKg!.Value, 12);
        Assert.Equal(0.1524, kept.Seen.SinkRateMS!.Value, 12);
        Assert.Equal(10, kept.Seen.WaterC!.Value, 9);
        Assert.Equal(4, entry.All(".compared tbody tr").Count());
        Assert.Equal(two.First.Id, kept.ClassId);
    }

    [Fact]
    public async Task Log_MistakesMade_AreToldByFieldAndNothingIsLost()
    {
        using TwoClasses two = await EmptyShelves.OpenAsync();
        Sheet refused = await LogAsync(await two.AsAsync("Wren"), ("mass", "0.4"), ("sink-time", "2 s"), ("note", "keep me"));
        Assert.Equal(HttpStatusCode.UnprocessableEntity, refused.Status);
        Assert.Contains("has no unit", refused.Text("#mass-error"), StringComparison.Ordinal);
        Assert.True(refused.Has("#sink-depth-error"));
        Assert.Equal("0.4", ((IHtmlInputElement)refused.Find("#mass")).Value);
        Assert.Contains("keep me", ((IHtmlTextAreaElement)refused.Find("#note")).Value, StringComparison.Ordinal);
        Assert.Empty(two.Room.Store.BenchLog.Of(two.Wren.Id));
    }

    [Fact]
    public async Task Log_NothingSeen_AsksForOneThing()
    {
        using TwoClasses two = await EmptyShelves.OpenAsync();
        Assert.Contains("at least one thing", (await LogAsync(await two.AsAsync("Wren"))).Text(".notice-bad"), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Correct_FromAnOutdatedWindow_IsToldAndLosesNothing()
    {
        using TwoClasses two = await EmptyShelves.OpenAsync();
        Browser wren = await two.AsAsync("Wren");
        await LogAsync(wren, ("mass", "0.5 g"));
        string id = two.Room.Store.BenchLog.Of(two.Wren.Id).Single().Id;
        Sheet desk = await wren.OpenAsync($"/bench-log/{id}/correct"), phone = await wren.OpenAsync($"/bench-log/{id}/correct");
        await phone.PressAsync("Keep", ("mass", "0.6 g"));
        Sheet told = await desk.PressAsync("Keep", ("mass", "0.7 g"));
        Assert.Equal(HttpStatusCode.Conflict, told.Status);
        Assert.Equal("0.7 g", ((IHtmlInputElement)told.Find("#mass")).Value);
        Assert.Contains("0.6 g", told.Text(".compared"), StringComparison.Ordinal);
        await told.PressAsync("Keep", ("mass", "0.7 g"));
        Assert.Equal(0.0007, two.Room.Store.BenchLog.Find(id)!.Seen.MassKg!.Value, 12);
    }

    [Fact]
    public async Task Entry_AndPhoto_AreSeenByTheTyerAndThoseWhoRunTheClassOnly()
    {
        using TwoClasses two = await EmptyShelves.OpenAsync();
        Browser wren = await two.AsAsync("Wren");
        await SendPhotoAsync(wren, await LogAsync(wren, ("mass", "0.5 g")), Png);
        LogEntry entry = two.Room.Store.BenchLog.Of(two.Wren.Id).Single();
        Assert.NotNull(entry.PhotoId);
        foreach ((string name,
            bool may) in new[] { ("Wren", true), ("Otter", true), ("Dipper", true), ("Heron", false), ("Teal", false), ("Sedge", false), ("Plover", false) })
        {
            Browser browser = await two.AsAsync(name);
            HttpStatusCode expected = may ? HttpStatusCode.OK : HttpStatusCode.NotFound;
            Assert.Equal(expected, (await browser.OpenAsync($"/bench-log/{entry.Id}")).Status);
            using HttpResponseMessage photo =
                await browser.Client.GetAsync(new Uri($"/bench-log/{entry.Id}/photo", UriKind.Relative), TestContext.Current.CancellationToken);
            Assert.Equal(expected, photo.StatusCode);
            if (may) Assert.Equal("image/jpeg", photo.Content.Headers.ContentType!.MediaType);
            if (name != "Wren") Assert.Equal(HttpStatusCode.NotFound, (await browser.OpenAsync($"/bench-log/{entry.Id}/correct")).Status);
        }

        Assert.StartsWith("/sign-in", (await (await two.AsAsync("nobody")).OpenAsync($"/bench-log/{entry.Id}/photo")).Address, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Photo_NotAPhotoOrTooLarge_SaysSoAndKeepsTheEntry()
    {
        using TwoClasses two = await EmptyShelves.OpenAsync();
        Browser wren = await two.AsAsync("Wren");
        Sheet entry = await LogAsync(wren, ("mass", "0.5 g"));
        Assert.Contains("JPEG, PNG or WebP", (await SendPhotoAsync(wren, entry, "<svg/>"u8.ToArray())).Text(), StringComparison.Ordinal);
        Assert.Contains("over 6 MB", (await SendPhotoAsync(wren, entry, new byte[7 << 20])).Text(), StringComparison.Ordinal);
        Assert.Null(two.Room.Store.BenchLog.Of(two.Wren.Id).Single().PhotoId);
    }

    [Fact]
    public async Task TakeOverHookMass_OfAPattern_MakesARevisionThatSaysSo()
    {
        using TwoClasses two = await EmptyShelves.OpenAsync();
        Browser wren = await two.AsAsync("Wren");
        PatternPage pattern = await PatternPage.SaveNewAsync(wren);
        double computedG = 1e3 * MassKg(two, await LogAsync(wren, ("fly", $"pattern:{pattern.Id}:1"), ("mass", "0.5 g")));
        string weighed = FormattableString.Invariant($"{computedG + 0.03:0.0000} g");
        Sheet entry = await LogAsync(wren, ("fly", $"pattern:{pattern.Id}:1"), ("mass", weighed));

        Sheet compared = await entry.PressAsync("Take over the hook mass");

        Assert.Contains("Hook mass taken from the bench", compared.Text(), StringComparison.Ordinal);
        Assert.Equal("hook", compared.Text(".changes tbody th"));
        Assert.Equal(2, two.Room.Store.Patterns.Find(pattern.Id)!.Revision);
        Assert.Contains("Hook mass taken", two.Room.Store.Patterns.Revision(pattern.Id, 2)!.Note, StringComparison.Ordinal);
    }

    [Fact]
    public async Task ClassPage_TwoFlies_CountsAgreementAndPlotsTheDrops()
    {
        using TwoClasses two = await EmptyShelves.OpenAsync();
        Browser wren = await two.AsAsync("Wren");
        await LogAsync(wren, ("way", "point-up"), ("sink-time", "1 s"), ("sink-depth", "20 cm"));
        string computed = two.Room.Store.BenchLog.Of(two.Wren.Id).Single().Foreseen.Way;
        string other = computed == "point down" ? "point-up" : "point-down";
        await LogAsync(await two.AsAsync("Heron"), ("way", other));
        int agreed = computed == "point up" ? 1 : 0;

        Sheet page = await (await two.AsAsync("Otter")).OpenAsync("/bench-log/class");

        Assert.Contains($"for {agreed} of 2 flies", page.Text(), StringComparison.Ordinal);
        Assert.Equal(2, page.All(".compared tbody").Count());
        Assert.True(page.Has("svg.fly-curve-agreement"));
        Assert.DoesNotContain("Wren", (await (await two.AsAsync("Sedge")).OpenAsync("/bench-log/class")).Text(), StringComparison.Ordinal);
    }

    private static double MassKg(TwoClasses two, Sheet entry) =>
        two.Room.Store.BenchLog.Find(entry.Address.Split('/', '?', '#')[2])!.Foreseen.MassKg;

    private static async Task<Sheet> LogAsync(Browser browser, params (string, string)[] fields) =>
        await (await browser.OpenAsync("/bench-log/new")).PressAsync("Keep it", [("recipe", PatternPage.Recipe), .. fields]);

    private static async Task<Sheet> SendPhotoAsync(Browser browser, Sheet entry, byte[] bytes)
    {
        string id = entry.Address.Split('/', '?', '#')[2];
        using MultipartFormDataContent form = new();
        form.Add(new StringContent(entry.Find("form[enctype] input[name=__RequestVerificationToken]").GetAttribute("value")!), "__RequestVerificationToken");
        form.Add(new ByteArrayContent(bytes), "photo", "fly.jpg");
        using HttpResponseMessage response =
            await browser.Client.PostAsync(new Uri($"/bench-log/{id}/photo", UriKind.Relative), form, TestContext.Current.CancellationToken);
        return response.StatusCode == HttpStatusCode.Redirect
            ? await browser.OpenAsync(response.Headers.Location!.ToString().Split('#')[0])
            : new Sheet(
            browser, "", response, "", await new AngleSharp.Html.Parser.HtmlParser().ParseDocumentAsync(
                await response.Content.ReadAsStringAsync(TestContext.Current.CancellationToken), TestContext.Current.CancellationToken));
    }
}
