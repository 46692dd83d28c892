using System.Net;
using Xunit;

namespace TyingClass.Web.Tests.Faults;

/// <summary>What a proxy says of a request is believed of those that were named, and of nobody else. Seen by whether a cookie is kept to HTTPS.</summary>
public sealed class ProxyTests : IDisposable
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("tying-class-proxy-");

    public void Dispose() => _folder.Delete(recursive: true);

    [Theory]
    [InlineData("127.0.0.1", true)]
    [InlineData("10.0.0.0/8,127.0.0.0/8", true)]
    [InlineData("10.1.2.3", false)]
    [InlineData(null, false)]
    public async Task Request_SaidToBeOverHttps_IsBelievedOfAKnownProxyOnly(string? proxy, bool believed)
    {
        using ServerProcess server = await ServerProcess.StartAsync(_folder.FullName, proxy is null ? [] : ["--proxy", proxy]);
        using HttpRequestMessage request = new(HttpMethod.Get, new Uri("/join", UriKind.Relative));
        request.Headers.Add("X-Forwarded-Proto", "https");
        request.Headers.Add("X-Forwarded-For", "192.0.2.7");
        HttpClient client = server.NewBrowser(new CookieContainer()).Client;
        using HttpResponseMessage answer = await client.SendAsync(request, TestContext.Current.CancellationToken);
        Assert.Equal(HttpStatusCode.OK, answer.StatusCode);
        Assert.Equal(believed, answer.Headers.GetValues("Set-Cookie").Single(c => c.StartsWith("tying-form=", StringComparison.Ordinal))
            .Contains("secure", StringComparison.OrdinalIgnoreCase));
    }
}
