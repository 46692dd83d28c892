using System.Net;
using AngleSharp.Dom;
using AngleSharp.Html.Dom;
using AngleSharp.Html.Parser;
using Xunit;

namespace TyingClass.Web.Tests;

/// <summary>Opens pages, follows redirects and sends forms the way a browser without scripting does.</summary>
public sealed class Browser(HttpClient client)
{
    private const int MostRedirects = 5;

    public HttpClient Client => client;

    public Task<Sheet> OpenAsync(string address) =>
        FollowAsync(() => client.GetAsync(new Uri(address, UriKind.Relative), TestContext.Current.CancellationToken));

    /// <summary>Sends whatever stands in the form, as if the button were pressed.</summary>
    /// <param name="button">Null for a form sent by Enter in a browser that names no button.</param>
    public Task<Sheet> SendAsync(Sheet from, IHtmlFormElement form, IElement? button)
    {
        string address = button?.GetAttribute("formaction") ?? form.GetAttribute("action") ?? from.Address;
        return PostAsync(address.Split('#')[0], [.. FieldsOf(form), .. ButtonField(button)]);
    }

    public Task<Sheet> PostAsync(string address, IEnumerable<KeyValuePair<string, string>> fields) => FollowAsync(async () =>
    {
        using FormUrlEncodedContent content = new(fields);
        return await client.PostAsync(new Uri(address, UriKind.Relative), content, TestContext.Current.CancellationToken);
    });

    /// <summary>What a browser would send of a form, the button left out.</summary>
    public static IEnumerable<KeyValuePair<string, string>> FieldsOf(IHtmlFormElement form)
    {
        foreach (IElement element in form.Elements)
        {
            (string? name, string? value) = element switch
            {
                IHtmlInputElement { Type: "radio" or "checkbox", IsChecked: false } => (null, null),
                IHtmlInputElement input => (input.Name, input.Value),
                IHtmlTextAreaElement area => (area.Name, area.Value.ReplaceLineEndings("\r\n")),
                IHtmlSelectElement select => (select.Name, select.Value),
                _ => (null, null),
            };
            if (!string.IsNullOrEmpty(name)) yield return KeyValuePair.Create(name, value ?? "");
        }
    }

    private static IEnumerable<KeyValuePair<string, string>> ButtonField(IElement? button) =>
        button?.GetAttribute("name") is { Length: > 0 } name ? [KeyValuePair.Create(name, button.GetAttribute("value") ?? "")] : [];

    private async Task<Sheet> FollowAsync(Func<Task<HttpResponseMessage>> send)
    {
        HttpResponseMessage response = await send();
        for (int i = 0; i < MostRedirects && response.StatusCode is HttpStatusCode.Redirect or HttpStatusCode.SeeOther; i++)
        {
            Uri target = new(client.BaseAddress!, response.Headers.Location!);
            response.Dispose();
            response = await client.GetAsync(target, TestContext.Current.CancellationToken);
        }

        string html = await response.Content.ReadAsStringAsync(TestContext.Current.CancellationToken);
        IHtmlDocument document = await new HtmlParser().ParseDocumentAsync(html, TestContext.Current.CancellationToken);
        return new Sheet(this, response.RequestMessage!.RequestUri!.PathAndQuery, response, html, document);
    }
}
