using System.Buffers.Binary;
using AngleSharp.Html.Dom;
using Microsoft.AspNetCore.Identity;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Options;
using TyingClass.Storage.People;
using TyingClass.Web.Identity;
using TyingClass.Web.Tests.Pages;
using Xunit;

namespace TyingClass.Web.Tests.Features;

public sealed class PassphraseTests : IDisposable
{
    private readonly ClassRoom _room = new();

    [Theory]
    [InlineData("Reed copper Lantern", "reedcopperlantern")]
    [InlineData(" reed–copper - lantern ", "reedcopperlantern")]
    [InlineData("SecretPass", "SecretPass")]
    [InlineData("a b c", "a b c")]
    [InlineData("blue trout 42", "blue trout 42")]
    public void Kept_MadeOfWords_IsTheWordsAloneElseAsTyped(string typed, string kept) => Assert.Equal(kept, WordPassphrase.Kept(typed));

    // Common ones, from memory of any published list; the rest are made of them as guessers do.
    [Theory]
    [InlineData("password", true), InlineData("12345678", true), InlineData("qwertyuiop", true), InlineData("iloveyou", true)]
    [InlineData("password1", true), InlineData("Passw0rd", true), InlineData("letmein123", true), InlineData("rainbow1", true)]
    [InlineData("aaaaaaaaaaaa", true), InlineData("abcdefgh", true), InlineData("pass word", true)]
    [InlineData("four quiet winter trout", false), InlineData("reed-copper-lantern", false), InlineData("blue trout 42", false)]
    [InlineData("alder bridge demo", false), InlineData("k8#fQz!p", false), InlineData("пять форелей", false)]
    public void GuessedFirst_CommonOrNearly_IsFound(string passphrase, bool guessed) => Assert.Equal(guessed, GuessedFirst.Contains(passphrase));

    // By hand: what is left when the known words, figures and signs are struck out.
    [Theory]
    [InlineData("kingfisher", true), InlineData("King-Fisher 2026!", true), InlineData("KINGFISHER1", true), InlineData("Anna Kingfisher", true)]
    [InlineData("annaannaanna", true), InlineData("reed-copper-lantern", true), InlineData("lantern copper reed 7", true)]
    [InlineData("anna reed copper", true), InlineData("reed copper lantern maple", false), InlineData("joannaberg", false), InlineData("12345 67890", false)]
    public void GuessedFirst_MadeOfWhatOthersKnow_IsFound(string passphrase, bool made) =>
        Assert.Equal(made, GuessedFirst.IsMadeOf(passphrase, "Anna Kingfisher", null, "", "reed-copper-lantern"));

    /// <summary>Found on the running program: a student types the words from the wall twice, and everybody in the room can sign in as that student.</summary>
    [Fact]
    public async Task Join_WithTheClassCodeOrOnesOwnNameAsPassphrase_IsToldWhy()
    {
        await _room.NewInstructorAsync();
        string code = _room.Store.Classes.All()[0].Code;
        foreach (string passphrase in (string[])[code, code.Replace('-', ' '), "Kingfisher", "kingfisher 2026"])
        {
            Sheet refused = await (await _room.NewBrowser().OpenAsync("/join"))
                .PressAsync("Join", ("code", code), ("name", "Kingfisher"), ("passphrase", passphrase));
            Assert.Contains("The others in the class would soon come to this passphrase", refused.Find("[role=alert]").TextContent, StringComparison.Ordinal);
            Assert.Equal((passphrase, "Kingfisher"), (Field(refused).Value, ((IHtmlInputElement)refused.Find("#name")).Value));
        }
    }

    [Fact]
    public async Task Account_ClassCodeChosenAsPassphrase_IsToldWhyAndNothingChanges()
    {
        await _room.NewInstructorAsync();
        Browser wren = await _room.NewStudentAsync("Wren");
        string hash = Hash();
        Sheet refused = await (await wren.OpenAsync("/account"))
            .PressAsync("Change the passphrase", ("current", TwoClasses.Passphrase), ("chosen", _room.Store.Classes.All()[0].Code));
        Assert.Contains("The others in the class would soon come to this passphrase", refused.Find("[role=alert]").TextContent, StringComparison.Ordinal);
        Assert.Equal(hash, Hash());

        string Hash() => _room.Store.Accounts.OfClass(_room.Store.Classes.All()[0].Id).Single(p => p.Name == "Wren").PassphraseHash!;
    }

    [Fact]
    public async Task Join_WithACommonPassphrase_IsToldWhyAndKeepsWhatWasTyped()
    {
        await _room.NewInstructorAsync();
        string code = _room.Store.Classes.All()[0].Code;
        Sheet refused = await (await _room.NewBrowser().OpenAsync("/join"))
            .PressAsync("Join", ("code", code), ("name", "Wren"), ("passphrase", "password1"));
        Assert.Contains("Whoever guesses would soon come to this passphrase", refused.Find("[role=alert]").TextContent, StringComparison.Ordinal);
        Assert.Equal(("password1", "Wren"), (Field(refused).Value, ((IHtmlInputElement)refused.Find("#name")).Value));
        Assert.Empty(_room.Store.Accounts.OfClass(_room.Store.Classes.All()[0].Id));
    }

    [Fact]
    public async Task Hash_OfANewPassphrase_IsWorkedOverAsOftenAsIsAsked()
    {
        await _room.NewInstructorAsync();
        await _room.NewStudentAsync("Wren");
        byte[] hash = Convert.FromBase64String(_room.Store.Accounts.OfClass(_room.Store.Classes.All()[0].Id).Single(p => p.Name == "Wren").PassphraseHash!);
        // The framework's third format: a marker, the function (2 is SHA-512), the rounds, all in network order.
        Assert.Equal((1, 2u, 120_000u), (hash[0], BinaryPrimitives.ReadUInt32BigEndian(hash.AsSpan(1)), BinaryPrimitives.ReadUInt32BigEndian(hash.AsSpan(5))));
    }

    [Theory]
    [InlineData("four quiet winter trout")]
    [InlineData("Four-Quiet-Winter-Trout ")]
    [InlineData("FOURQUIETWINTERTROUT")]
    public async Task SignIn_ChosenOfWords_OpensHoweverItIsWritten(string typed)
    {
        await _room.NewInstructorAsync();
        await _room.NewStudentAsync("Wren");
        Assert.Equal("/", (await (await SignInPage.OpenAsync(_room.NewBrowser())).EnterAsync(typed, "Wren")).Sheet.Address);
    }

    [Theory]
    [InlineData("reed-copper-lantern-maple", "Reed copper lantern maple", true)]
    [InlineData("reed-copper-lantern-maple", "reedcopperlanternmaple", false)]
    [InlineData("My Old Trout Pond", "My Old Trout Pond", true)]
    [InlineData("My Old Trout Pond", "my old trout pond", false)]
    [InlineData("pa55word!", "pa55word!", true)]
    [InlineData("pa55word!", "PA55WORD!", false)]
    public async Task SignIn_AccountFromBefore_OpensAsItWas(string hashed, string typed, bool opens)
    {
        await _room.NewInstructorAsync();
        string hash = _room.Services.GetRequiredService<IPasswordHasher<Person>>().HashPassword(null!, hashed);
        _room.Store.Accounts.Add(_room.Store.Classes.All()[0].Id, Role.Student, "Wren", hash);
        SignInPage entered = await (await SignInPage.OpenAsync(_room.NewBrowser())).EnterAsync(typed, "Wren");
        Assert.Equal(opens, entered.Errors.Length == 0);
    }

    /// <summary>Format 3 of the framework's hasher holds its rounds in the bytes 5 to 8.</summary>
    [Fact]
    public async Task SignIn_HashOfFewerRounds_IsHashedAnewAndNobodyIsSignedOut()
    {
        await _room.NewInstructorAsync();
        PasswordHasher<Person> before = new(Options.Create(new PasswordHasherOptions { IterationCount = 100_000 }));
        string hash = before.HashPassword(null!, "pa55word! and more");
        string id = _room.Store.Accounts.Add(_room.Store.Classes.All()[0].Id, Role.Student, "Wren", hash).Person!.Id;
        string stamp = _room.Store.People.Find(id)!.Stamp;

        foreach (int visit in (int[])[1, 2])
            Assert.Equal("/", (await (await SignInPage.OpenAsync(_room.NewBrowser())).EnterAsync("pa55word! and more", "Wren")).Sheet.Address);

        Person after = _room.Store.People.Find(id)!;
        Assert.Equal(120_000, (int)BinaryPrimitives.ReadUInt32BigEndian(Convert.FromBase64String(after.PassphraseHash!).AsSpan(5)));
        Assert.Equal(stamp, after.Stamp);
    }

    [Fact]
    public async Task Join_OnAPhone_ShowsWhatIsTypedAndHidesItOnDemandWithoutLosingAnything()
    {
        await _room.NewInstructorAsync();
        Browser phone = _room.NewBrowser();
        phone.Client.DefaultRequestHeaders.UserAgent.ParseAdd("Mozilla/5.0 (Linux; Android 14) Mobile");
        Sheet shown = await phone.OpenAsync("/join");
        Assert.Equal(("text", "off"), (Field(shown).Type, Field(shown).GetAttribute("autocomplete")));

        Sheet hidden = await shown.PressAsync("Hide what I type", ("code", "reed"), ("name", "Wren"), ("passphrase", "quiet trout"));
        Assert.Equal(("password", "quiet trout"), (Field(hidden).Type, Field(hidden).Value));
        Assert.Equal("reed", ((IHtmlInputElement)hidden.Find("#code")).Value);
        Assert.False(hidden.Has("[role=alert]"));
        Assert.Empty(_room.Store.Accounts.OfClass(_room.Store.Classes.All()[0].Id));

        Sheet refused = await hidden.PressAsync("Join");
        Assert.Equal(("password", "quiet trout"), (Field(refused).Type, Field(refused).Value));
        Assert.True(refused.Response.Headers.CacheControl!.NoStore);
    }

    [Fact]
    public async Task SignIn_OnTheClubMachine_HidesWhatIsTypedUntilAsked()
    {
        await _room.NewInstructorAsync();
        Sheet hidden = await _room.NewBrowser().OpenAsync("/sign-in");
        Assert.Equal("password", Field(hidden).Type);
        Assert.Equal("text", Field(await hidden.PressAsync("Show what I type")).Type);
    }

    public void Dispose() => _room.Dispose();

    private static IHtmlInputElement Field(Sheet sheet) => (IHtmlInputElement)sheet.Find("#passphrase");
}
