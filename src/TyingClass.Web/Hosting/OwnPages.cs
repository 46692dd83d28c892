using Microsoft.AspNetCore.Http.Features;

namespace TyingClass.Web.Hosting;

/// <summary>
/// Opens pages of this server as somebody would who has just come and has no account, without a socket and for nobody: what they need is compiled, and the
/// flies they show are solved, before anyone waits for it. Reading leaves no trace, so this leaves none either.
/// </summary>
internal sealed class OwnPages(IHttpContextFactory contexts, IServiceScopeFactory scopes)
{
    private RequestDelegate? _pipeline;

    /// <summary>Every request goes through what is given here.</summary>
    public RequestDelegate Begin(RequestDelegate pipeline) => _pipeline = pipeline;

    /// <param name="address">Of a page that only reads.</param>
    /// <returns>The status of the answer; 0 before the server is put together.</returns>
    public async Task<int> OpenAsync(string address, CancellationToken left)
    {
        if (_pipeline is null) return 0;
        FeatureCollection features = new();
        features.Set<IHttpRequestFeature>(new HttpRequestFeature
        {
            Method = HttpMethods.Get,
            Scheme = Uri.UriSchemeHttp,
            Protocol = HttpProtocol.Http11,
            Path = address,
            Headers = new HeaderDictionary { ["Host"] = "localhost" },
        });
        features.Set<IHttpResponseFeature>(new HttpResponseFeature());
        features.Set<IHttpResponseBodyFeature>(new StreamResponseBodyFeature(Stream.Null));
        features.Set<IHttpRequestLifetimeFeature>(new HttpRequestLifetimeFeature { RequestAborted = left });
        await using AsyncServiceScope scope = scopes.CreateAsyncScope();
        HttpContext context = contexts.Create(features);
        try
        {
            context.RequestServices = scope.ServiceProvider;
            await _pipeline(context);
            return context.Response.StatusCode;
        }
        finally
        {
            contexts.Dispose(context);
        }
    }
}
