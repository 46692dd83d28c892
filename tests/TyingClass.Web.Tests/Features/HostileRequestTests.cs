using System.Net;
using System.Net.Http.Headers;
using System.Text;
using AngleSharp.Html.Dom;
using TyingClass.Web.Tests.Pages;
using Xunit;

namespace TyingClass.Web.Tests.Features;

/// <summary>What no form of ours sends: each gets a page that says what was wrong, and none an error of the server's.</summary>
public sealed class HostileRequestTests(ClassRoom room) : IClassFixture<ClassRoom>
{
    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    public static TheoryData<string, string, string> Posts => new()
    {
        { "text=a%00b", "application/x-www-form-urlencoded", "422" },
        { "%00=b", "application/x-www-form-urlencoded", "422" },
        { string.Join('&', Enumerable.Range(0, 9000).Select(i => $"f{i}=1")), "application/x-www-form-urlencoded", "422" },
        { "{}", "application/json", "415" },
        { "x", "text/plain", "415" },
        { "x", "multipart/form-data; boundary=x", "422" },
        { "x", "multipart/form-data", "422" },
    };

    [Theory, MemberData(nameof(Posts))]
    public async Task Post_NoFormOfOurs_IsRefusedInWords(string body, string type, string status)
    {
        Browser browser = room.NewBrowser();
        foreach (string address in (string[])["/bench", "/join", "/sign-in", "/exercises/first-01", "/preferences"])
        {
            using StringContent content = new(body, Encoding.UTF8);
            content.Headers.ContentType = MediaTypeHeaderValue.Parse(type);
            using HttpResponseMessage answer = await browser.Client.PostAsync(new Uri(address, UriKind.Relative), content, Stop);
            Assert.Equal($"{address} {status}", $"{address} {(int)answer.StatusCode}");
            Assert.Contains("<h1>", await answer.Content.ReadAsStringAsync(Stop), StringComparison.Ordinal);
        }
    }

    [Theory]
    [InlineData("TRACE"), InlineData("PUT"), InlineData("DELETE"), InlineData("PATCH"), InlineData("OPTIONS"), InlineData("BREW")]
    public async Task Send_MethodOfNoPage_IsRefusedWithThoseThatAre(string method)
    {
        using HttpRequestMessage request = new(new HttpMethod(method), new Uri("/bench", UriKind.Relative));
        using HttpResponseMessage answer = await room.NewBrowser().Client.SendAsync(request, Stop);
        Assert.Equal(HttpStatusCode.MethodNotAllowed, answer.StatusCode);
        Assert.Contains("GET", answer.Content.Headers.Allow);
    }

    [Theory]
    [InlineData("r:hook.["), InlineData("r:hook.]"), InlineData("r:parts[99999999999].size"), InlineData("r:parts[-1].size"), InlineData("r:")]
    [InlineData("r:..")]
    public async Task Bench_FieldOfNoRecipe_IsNoErrorOfTheServer(string field)
    {
        Browser browser = room.NewBrowser();
        Sheet bench = await browser.OpenAsync("/bench");
        IHtmlFormElement form = bench.Form("form.bench-work");
        Sheet after = await browser.PostAsync("/bench", [.. Browser.FieldsOf(form), new(field, "1")]);
        Assert.True((int)after.Status < 500, $"{field}: {after.Status}");
    }

    [Theory]
    [InlineData("a["), InlineData("[a"), InlineData("r:hook.["), InlineData("a[0"), InlineData("]")]
    public async Task Post_FieldWithOneBracket_IsNoErrorOfTheServer(string field)
    {
        Browser browser = room.NewBrowser();
        foreach (string address in (string[])["/preferences", "/exercises/first-01"])
        {
            IHtmlFormElement form = (await browser.OpenAsync(address)).All("form").OfType<IHtmlFormElement>().Last(f => f.Method == "post");
            Sheet after = await browser.PostAsync(address, [.. Browser.FieldsOf(form), new(field, "1")]);
            Assert.True((int)after.Status < 500, $"{address} {field}: {after.Status}");
            using HttpResponseMessage asked = await browser.Client.GetAsync(new Uri($"{address}?{field}=1", UriKind.Relative), Stop);
            Assert.True((int)asked.StatusCode < 500, $"{address}?{field}: {asked.StatusCode}");
        }
    }

    /// <summary>Longer than any field of ours lets be typed, and cut in the middle of a sign: it had the data file mended and called damaged.</summary>
    [Fact]
    public async Task Join_NameCutInASign_JoinsAndNothingIsCalledDamaged()
    {
        await room.NewInstructorAsync();
        Sheet joined = await (await room.NewBrowser().OpenAsync("/join")).PressAsync("Join",
            ("code", room.Store.Classes.All()[0].Code), ("name", "x" + string.Concat(Enumerable.Repeat("🐟", 40))), ("passphrase", TwoClasses.Passphrase));
        Assert.Equal(HttpStatusCode.OK, joined.Status);
        Assert.Empty(room.Store.Damage.Lines);
    }

    [Fact]
    public async Task Post_HandlerThatIsNone_IsNoSuchPage()
    {
        Browser browser = room.NewBrowser();
        Sheet bench = await browser.OpenAsync("/safety");
        IHtmlFormElement form = (await browser.OpenAsync("/preferences")).All("form").OfType<IHtmlFormElement>().Last();
        Sheet after = await browser.PostAsync("/safety?handler=Nope", Browser.FieldsOf(form));
        Assert.Equal(HttpStatusCode.NotFound, after.Status);
        Assert.Equal(HttpStatusCode.OK, bench.Status);
    }

    [Theory]
    [InlineData("/exercises/%20"), InlineData("/exercises/%ff%fe"), InlineData("/practice/%20"), InlineData("/lessons/%20"), InlineData("/patterns/%20")]
    [InlineData("/bench?soak=NaN&tip=1e999"), InlineData("/bench?handler=Nope"), InlineData("/bench?r=%00"), InlineData("/join?code=%00")]
    [InlineData("/problem/200"), InlineData("/problem/999999999999")]
    public async Task Get_AddressOfNothing_IsNoErrorOfTheServer(string address)
    {
        using HttpResponseMessage answer = await room.NewBrowser().Client.GetAsync(new Uri(address, UriKind.Relative), Stop);
        Assert.True((int)answer.StatusCode < 500, $"{address}: {answer.StatusCode}");
    }

    [Fact]
    public async Task Get_BlankIdWithAnAccount_IsNoSuchPageAndNoDamage()
    {
        Browser instructor = await room.NewInstructorAsync(), student = await room.NewStudentAsync("Wren");
        foreach (string address in (string[])["/patterns/{0}", "/patterns/{0}/compare", "/patterns/{0}/card", "/patterns/{0}/proposal", "/bench-log/{0}",
            "/bench-log/{0}/photo", "/bench-log/{0}/correct", "/reviews/{0}", "/comments/{0}/correct", "/class/students/{0}", "/class/students/{0}/{0}",
            "/class/people/{0}", "/class/people/{0}/remove", "/exercises/{0}", "/practice/{0}"])
        {
            foreach (Browser browser in (Browser[])[student, instructor])
            {
                Uri blank = new(address.Replace("{0}", "%20", StringComparison.Ordinal), UriKind.Relative);
                using HttpResponseMessage answer = await browser.Client.GetAsync(blank, Stop);
                Assert.True((int)answer.StatusCode is >= 300 and < 500, $"{address}: {answer.StatusCode}");
            }
        }

        Assert.Empty(room.Store.Damage.Lines);
    }
}
