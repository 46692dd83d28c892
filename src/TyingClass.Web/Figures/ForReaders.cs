using System.Runtime.CompilerServices;
using Microsoft.AspNetCore.Html;
using TyingClass.Recipes.Text;
using TyingClass.Telling.Figures;
using TyingClass.Web.Preferences;

namespace TyingClass.Web.Figures;

/// <summary>Texts that carry figures of their own, for whoever reads the page.</summary>
public static class ForReaders
{
    // For as long as the lesson is kept.
    private static readonly ConditionalWeakTable<string, HtmlString> Imperial = [];

    /// <summary>"0.016 in (0.4 mm)" for a reader of imperial units.</summary>
    public static string ForReader(this string text, HttpContext context) => WrittenFigures.Beside(text, Look.Of(context.Request).Units);

    /// <summary>A refusal: its own figures in the reader's units too, what it quotes from the reader as it was typed.</summary>
    public static string RefusalForReader(this string text, HttpContext context) =>
        WrittenFigures.BesideOutsideQuotes(text, Look.Of(context.Request).Units);

    /// <summary>The same for an author's prose, cleaned when its lesson was loaded.</summary>
    public static IHtmlContent ProseForReader(this string html, HttpContext context) => Look.Of(context.Request).Units == UnitSystem.Metric
        ? new HtmlString(html)
        : Imperial.GetValue(html, h => new HtmlString(WrittenFigures.BesideInHtml(h, UnitSystem.Imperial)));

    /// <summary>"0.031 in": an example, or a figure the program wrote into a text.</summary>
    public static string InReadersUnits(this string text, HttpContext context) => WrittenFigures.Instead(text, Look.Of(context.Request).Units);
}
