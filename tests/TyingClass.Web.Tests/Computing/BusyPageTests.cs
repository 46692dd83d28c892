using System.Net;
using AngleSharp.Html.Dom;
using Microsoft.AspNetCore.Mvc.Testing;
using Microsoft.AspNetCore.TestHost;
using Microsoft.Extensions.DependencyInjection;
using TyingClass.Web.Bench;
using TyingClass.Web.Computing;
using Xunit;

namespace TyingClass.Web.Tests.Computing;

/// <summary>What someone sees whose fly gets no turn, or takes too long.</summary>
public sealed class BusyPageTests : IDisposable
{
    private const string Typed = "\nrecipe: “Slate Minnow”\nintent: point up <b>\n";

    private readonly ClassRoom _room = new();

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    public void Dispose() => _room.Dispose();

    [Fact]
    public async Task Bench_LineIsFull_SaysSoAtOnceAndButtonCarriesWhatWasTyped()
    {
        Browser browser = _room.NewBrowser();
        Sheet bench = await browser.OpenAsync("/bench");
        Turns turns = _room.Services.GetRequiredService<Turns>();
        int most = Environment.ProcessorCount / 2 + 1 + Turns.WaitingEach;
        Task<IDisposable?>[] others = [.. Enumerable.Range(0, most).Select(_ => turns.TakeAsync("address unknown", Stop))];
        IHtmlFormElement form = (IHtmlFormElement)bench.Document.QuerySelector("form#bench, form[method=post]")!;
        List<KeyValuePair<string, string>> fields = [.. Browser.FieldsOf(form).Where(f => f.Key != "text"), new("text", Typed)];
        Sheet busy = await browser.PostAsync("/bench", fields);
        Assert.Equal(HttpStatusCode.ServiceUnavailable, busy.Status);
        Assert.Contains("Many flies are being computed", busy.Document.Body!.TextContent, StringComparison.Ordinal);
        IHtmlFormElement again = busy.Document.QuerySelectorAll("main form").OfType<IHtmlFormElement>().Single();
        Assert.Equal("/bench", again.GetAttribute("action"));
        Assert.Equal(
            fields.Select(f => (f.Key, f.Value.ReplaceLineEndings("\n"))).Order(),
            Browser.FieldsOf(again).Select(f => (f.Key, f.Value.ReplaceLineEndings("\n"))).Order());
        foreach (Task<IDisposable?> other in others.Where(o => o.IsCompleted)) (await other)?.Dispose();
    }

    [Fact]
    public async Task Bench_TimeIsUp_SaysSoAndServerGoesOn()
    {
        using WebApplicationFactory<Program> hurried = _room.WithWebHostBuilder(host => host.ConfigureTestServices(
            services => services.AddSingleton(new Turns(2) { MostTime = TimeSpan.FromTicks(1) })));
        using HttpClient client = hurried.CreateClient();
        string address = "/bench?r=" + Packed.Pack("recipe: Slow\nintent: point up\nhook:\n  size: 6\n  eye: straight\nparts: []\n");
        Sheet late = await new Browser(client).OpenAsync(address);
        Assert.Equal(HttpStatusCode.ServiceUnavailable, late.Status);
        Assert.Contains("takes too long to compute", late.Document.Body!.TextContent, StringComparison.Ordinal);
        Assert.Equal(address, late.Document.QuerySelector("main a.button")!.GetAttribute("href"));
        Assert.Equal(HttpStatusCode.OK, (await new Browser(client).OpenAsync("/safety")).Status);
    }
}
