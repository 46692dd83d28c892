using System.Net.Http.Headers;
using Xunit;

namespace TyingClass.Web.Tests.Faults;

public sealed class SqueezingTests : IDisposable
{
    private readonly ClassRoom _room = new();

    public void Dispose() => _room.Dispose();

    [Theory]
    [InlineData("/bench", true)]
    [InlineData("/lessons/first-evening", true)]
    [InlineData("/sign-in", false)]
    [InlineData("/join", false)]
    [InlineData("/account", false)]
    public async Task Page_AskedForCompressed_IsSoOnlyWhereItsLengthTellsNothing(string address, bool compressed)
    {
        Browser student = _room.NewBrowser();
        await _room.NewInstructorAsync();
        await _room.NewStudentAsync("Wren", student);
        using HttpRequestMessage request = new(HttpMethod.Get, new Uri(address, UriKind.Relative));
        request.Headers.AcceptEncoding.Add(new StringWithQualityHeaderValue("br"));
        using HttpResponseMessage answer = await student.Client.SendAsync(request, TestContext.Current.CancellationToken);
        Assert.Equal(compressed, answer.Content.Headers.ContentEncoding.Contains("br"));
    }

    [Fact]
    public async Task FormToken_OnTwoAnswers_SharesNoLongRunOfSigns()
    {
        Browser browser = _room.NewBrowser();
        string first = Token(await browser.OpenAsync("/bench")), second = Token(await browser.OpenAsync("/bench"));
        // Sealed anew: past the mark of the key, which is no secret, nothing is the same.
        Assert.NotEqual(first[^60..], second[^60..]);
        Assert.DoesNotContain(Enumerable.Range(60, first.Length - 72), i => second.Contains(first.Substring(i, 12), StringComparison.Ordinal));
    }

    private static string Token(Sheet page) => page.Find("input[name=__RequestVerificationToken]").GetAttribute("value")!;
}
