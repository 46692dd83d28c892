using System.Net;
using AngleSharp.Dom;
using AngleSharp.Html.Dom;
using Xunit;

namespace TyingClass.Web.Tests;

/// <summary>A page as it came back.</summary>
public sealed record Sheet(Browser Browser, string Address, HttpResponseMessage Response, string Html, IHtmlDocument Document)
{
    public HttpStatusCode Status => Response.StatusCode;

    public string Heading => Text("h1");

    /// <summary>All text, spaces drawn together.</summary>
    public string Text() => Plain(Document.Body!.TextContent);

    public string Text(string selector) => Plain(Find(selector).TextContent);

    public IElement Find(string selector)
    {
        IElement? found = Document.QuerySelector(selector);
        Assert.True(found is not null, $"{Address} has no {selector}: {Text()}");
        return found;
    }

    public IEnumerable<IElement> All(string selector) => Document.QuerySelectorAll(selector);

    public bool Has(string selector) => Document.QuerySelector(selector) is not null;

    public IHtmlFormElement Form(string selector) => (IHtmlFormElement)Find(selector);

    public static string Plain(string text) => string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
}
