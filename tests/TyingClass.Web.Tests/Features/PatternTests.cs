using System.Net;
using AngleSharp.Html.Dom;
using TyingClass.Storage.Patterns;
using TyingClass.Web.Tests.Pages;
using Xunit;

namespace TyingClass.Web.Tests.Features;

public sealed class PatternTests
{
    private static readonly string Heavier = PatternPage.Recipe.Replace("size: 3 mm", "size: 4 mm", StringComparison.Ordinal);

    [Fact]
    public async Task Pattern_SavedTwice_CompareSaysWhatChangedAndWhatItDid()
    {
        using TwoClasses two = await EmptyShelves.OpenAsync();
        Browser wren = await two.AsAsync("Wren");
        PatternPage first = await PatternPage.SaveNewAsync(wren);
        Assert.Equal("Slate Minnow", first.Sheet.Heading);
        await (await PatternPage.OpenAsync(wren, first.Id)).SaveAsync(Heavier, "Heavier eyes.");

        Sheet compared = await wren.OpenAsync($"/patterns/{first.Id}/compare?from=1&to=2");

        Assert.Contains("Heavier eyes.", compared.Text(), StringComparison.Ordinal);
        Assert.Equal("dumbbell eyes", compared.Text(".changes tbody th"));
        Assert.Contains("3 mm → 4 mm", compared.Text(".changes .what"), StringComparison.Ordinal);
        Assert.StartsWith("+", compared.Text(".changes [data-label='sink rate']"), StringComparison.Ordinal);
        Assert.True(compared.Has("[data-half=before]") && compared.Has("[data-half=after]"));
    }

    [Fact]
    public async Task Save_FromAnOutdatedWindow_IsToldAndBothTextsAreShown()
    {
        using TwoClasses two = await EmptyShelves.OpenAsync();
        Browser wren = await two.AsAsync("Wren");
        string id = (await PatternPage.SaveNewAsync(wren)).Id;
        PatternPage desk = await PatternPage.OpenAsync(wren, id), phone = await PatternPage.OpenAsync(wren, id);
        await phone.SaveAsync(Heavier);
        string mine = PatternPage.Recipe.Replace("40 mm", "44 mm", StringComparison.Ordinal);

        PatternPage told = await desk.SaveAsync(mine, "Longer wing.");

        Assert.Equal(HttpStatusCode.Conflict, told.Sheet.Status);
        Assert.Equal(mine, told.Text);
        Assert.Equal(Heavier, ((IHtmlTextAreaElement)told.Sheet.Find("#meanwhile")).Value.ReplaceLineEndings("\n"));
        Assert.Equal("Longer wing.", ((IHtmlTextAreaElement)told.Sheet.Find("#note")).Value.Trim());
        Assert.Equal(2, two.Room.Store.Patterns.Find(id)!.Revision);
        await told.SaveAsync(mine, "Longer wing.");
        Assert.Equal([PatternPage.Recipe, Heavier, mine], two.Room.Store.Patterns.Revisions(id).Select(r => r.RecipeText));
    }

    [Fact]
    public async Task Save_UnreadableRecipe_IsShownBackAndNotKept()
    {
        using TwoClasses two = await EmptyShelves.OpenAsync();
        Browser wren = await two.AsAsync("Wren");
        string broken = PatternPage.Recipe.Replace("size: 3 mm", "size: 3", StringComparison.Ordinal);
        PatternPage refused = await PatternPage.SaveNewAsync(wren, broken);
        Assert.Equal(HttpStatusCode.UnprocessableEntity, refused.Sheet.Status);
        Assert.Equal(broken, refused.Text);
        Assert.Contains("has no unit", refused.Sheet.Text("#problems"), StringComparison.Ordinal);
        Assert.Empty(two.Room.Store.Patterns.Of(two.Wren.Id));
    }

    [Fact]
    public async Task StaleToken_Saving_KeepsWhatWasTypedAndSavesNothing()
    {
        using TwoClasses two = await EmptyShelves.OpenAsync();
        Browser wren = await two.AsAsync("Wren");
        string id = (await PatternPage.SaveNewAsync(wren)).Id;
        Sheet stale =
            await wren.PostAsync($"/patterns/{id}", [new("mode", "text"), new("text", Heavier), new("note", "n"), new("expected", "1"), new("do", "save")]);
        Assert.Equal(HttpStatusCode.BadRequest, stale.Status);
        Assert.Equal(1, two.Room.Store.Patterns.Find(id)!.Revision);
        PatternPage again = new(stale);
        Assert.Equal(Heavier, again.Text);
        Assert.Equal("Revision 2 is saved.", (await again.SaveAsync(Heavier)).Sheet.Text(".notice-good"));
    }

    [Theory]
    [InlineData("Heron")]
    [InlineData("Teal")]
    [InlineData("Otter")]
    [InlineData("Plover")]
    public async Task Pattern_NotShownToAnyone_IsUnknownToEveryoneElse(string name)
    {
        using TwoClasses two = await EmptyShelves.OpenAsync();
        PatternPage mine = await PatternPage.SaveNewAsync(await two.AsAsync("Wren"));
        Browser other = await two.AsAsync(name);
        foreach (string page in new[] { "", "/compare?from=1&to=1", "/card", "/card?revision=1" })
            Assert.Equal(HttpStatusCode.NotFound, (await other.OpenAsync($"/patterns/{mine.Id}{page}")).Status);
        Sheet own = await other.OpenAsync("/patterns/new");
        string token = own.Find("input[name=__RequestVerificationToken]").GetAttribute("value")!;
        foreach (string handler in new[] { "", "?handler=Trash", "?handler=Ask", "?handler=Withdraw" })
        {
            Sheet refused = await other.PostAsync($"/patterns/{mine.Id}{handler}",
                [new("__RequestVerificationToken", token), new("mode", "text"), new("text", Heavier), new("expected", "1"), new("do", "save")]);
            Assert.Equal(HttpStatusCode.NotFound, refused.Status);
        }

        Pattern kept = two.Room.Store.Patterns.Find(mine.Id)!;
        Assert.Equal((1, PatternState.Own, null), (kept.Revision, kept.State, kept.TrashedAt));
    }

    [Fact]
    public async Task KeepThisFly_OnAnAttempt_BringsThatAttemptsFlyToANewPattern()
    {
        using TwoClasses two = await EmptyShelves.OpenAsync();
        Browser wren = await two.AsAsync("Wren");
        await Answers.FailRepairAsync(wren);
        await Answers.PassRepairAsync(wren);
        static string Link(Sheet sheet) => sheet.Find("a[href^='/patterns/new?exercise=']").GetAttribute("href")!;

        PatternPage latest = await PatternPage.AsTextAsync(await wren.OpenAsync(Link(await wren.OpenAsync("/exercises/first-03"))));
        PatternPage earlier = await PatternPage.AsTextAsync(await wren.OpenAsync(Link(await wren.OpenAsync("/exercises/first-03?attempt=1"))));
        Assert.Contains("side: top", latest.Text, StringComparison.Ordinal);
        Assert.NotEqual(latest.Text, earlier.Text);

        PatternPage kept = await earlier.SaveAsync(earlier.Text);
        Assert.Equal(earlier.Text, two.Room.Store.Patterns.Revision(kept.Id, 1)!.RecipeText);
    }

    [Fact]
    public async Task Guest_BringsAFlyToNew_ItIsShownAndNotLost()
    {
        using TwoClasses two = await EmptyShelves.OpenAsync();
        Browser nobody = await two.AsAsync("nobody");
        PatternPage page = await PatternPage.AsTextAsync(await nobody.OpenAsync("/patterns/new?recipe=" + Uri.EscapeDataString(PatternPage.Recipe)));
        Assert.Contains("Slate Minnow", page.Text, StringComparison.Ordinal);
        PatternPage refused = await page.SaveAsync(Heavier);
        Assert.Equal(Heavier, refused.Text);
        Assert.Contains("sign in", refused.Sheet.Text(), StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public async Task Trash_ThenTakenBackOut_IsThereAgain()
    {
        using TwoClasses two = await EmptyShelves.OpenAsync();
        Browser wren = await two.AsAsync("Wren");
        PatternPage mine = await PatternPage.SaveNewAsync(wren);
        Sheet list = await mine.Sheet.PressAsync("Into the trash");
        Assert.Empty(list.All(".fly-shelf li"));
        Assert.Equal(HttpStatusCode.NotFound, (await wren.OpenAsync($"/patterns/{mine.Id}")).Status);
        Assert.Equal("Slate Minnow", (await list.PressAsync("Take it back out")).Heading);
    }

    [Fact]
    public async Task Card_HostileName_IsText()
    {
        using TwoClasses two = await EmptyShelves.OpenAsync();
        Browser wren = await two.AsAsync("Wren");
        PatternPage mine =
            await PatternPage.SaveNewAsync(wren, PatternPage.Recipe.Replace("Slate Minnow", "\"<script>alert(1)</script>\"", StringComparison.Ordinal));
        Sheet card = await wren.OpenAsync($"/patterns/{mine.Id}/card");
        Assert.Equal("<script>alert(1)</script>", card.Heading);
        Assert.DoesNotContain(card.All("main script"), s => s.TextContent.Contains("alert", StringComparison.Ordinal));
        Assert.Contains("Lead is poisonous", card.Text(), StringComparison.Ordinal);
    }
}
