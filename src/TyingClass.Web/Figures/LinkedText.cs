using System.Text;
using System.Text.Encodings.Web;
using System.Text.RegularExpressions;
using Microsoft.AspNetCore.Html;

namespace TyingClass.Web.Figures;

/// <summary>What people write, with the addresses in it as links. Everything else stays text: never markup.</summary>
public static partial class LinkedText
{
    private const int MostShown = 60;

    public static IHtmlContent WithLinks(this string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        StringBuilder html = new();
        int from = 0;
        foreach (Match match in Address().Matches(text))
        {
            string address = match.Value.TrimEnd('.', ',', ';', ':', ')', '!', '?', '”', '’');
            html.Append(HtmlEncoder.Default.Encode(text[from..match.Index])).Append(Link(address));
            from = match.Index + address.Length;
        }

        return new HtmlString(html.Append(HtmlEncoder.Default.Encode(text[from..])).ToString());
    }

    private static string Link(string address)
    {
        string href = HtmlEncoder.Default.Encode(address);
        string shown = address.Length <= MostShown ? href : HtmlEncoder.Default.Encode(address[..(MostShown - 1)]) + "…";
        return $"<a href=\"{href}\" rel=\"nofollow noopener noreferrer\">{shown}</a>";
    }

    // An address of the web, or one of this server's own pages that may be sent to someone.
    [GeneratedRegex(
        @"(?<![\w/.])(https?://[^\s<>""“”]+|/(bench|practice|lessons|exercises|patterns|pattern-book|glossary|handouts|safety|model)\b[^\s<>""“”]*)",
        RegexOptions.CultureInvariant)]
    private static partial Regex Address();
}
