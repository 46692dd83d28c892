using Ganss.Xss;

namespace TyingClass.Lessons.Prose;

/// <summary>The last gate before a page: only harmless elements and addresses get through.</summary>
internal static class SafeHtml
{
    // A sanitizer keeps state while it works, so each call makes its own.
    public static string Clean(string html)
    {
        HtmlSanitizer sanitizer = new(new HtmlSanitizerOptions
        {
            AllowedTags = new HashSet<string>(StringComparer.OrdinalIgnoreCase)
            {
                "p", "br", "hr", "em", "strong", "del", "code", "pre", "blockquote", "ul", "ol", "li", "h2", "h3", "h4", "h5", "h6",
                "a", "img", "table", "thead", "tbody", "tr", "th", "td", "sup", "sub", "div",
            },
            AllowedAttributes = new HashSet<string>(StringComparer.OrdinalIgnoreCase) { "href", "src", "alt", "title", "id", "class", "start", "style" },
            AllowedClasses = new HashSet<string>(StringComparer.Ordinal) { "footnotes", "footnote-ref", "footnote-back-ref" },
            AllowedCssProperties = new HashSet<string>(StringComparer.OrdinalIgnoreCase) { "text-align" },
            AllowedSchemes = new HashSet<string>(StringComparer.OrdinalIgnoreCase) { "http", "https", "mailto" },
            UriAttributes = new HashSet<string>(StringComparer.OrdinalIgnoreCase) { "href", "src" },
        });
        return sanitizer.Sanitize(html);
    }
}
