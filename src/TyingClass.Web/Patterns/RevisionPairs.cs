using Microsoft.AspNetCore.Html;
using Microsoft.Extensions.Caching.Memory;
using TyingClass.Drawing;
using TyingClass.Lessons.Revisions;
using TyingClass.Recipes.Text;
using TyingClass.Storage.Patterns;
using TyingClass.Web.Preferences;

namespace TyingClass.Web.Patterns;

/// <summary>Two revisions side by side.</summary>
/// <param name="Drawing">Both in one picture, to one scale.</param>
public sealed record RevisionPair(PatternRevision Before, PatternRevision After, RevisionComparison Comparison, IHtmlContent Drawing, string VerdictBefore,
    string VerdictAfter);

/// <summary>Compares revisions; a comparison once made is kept for a while.</summary>
public sealed class RevisionPairs(ReaderUnits units, IMemoryCache cache, IHttpContextAccessor accessor)
{
    // Two flies with all that was worked out of them.
    private const int ComparisonKB = 300;

    /// <returns>Null when a fly cannot be built of one of them.</returns>
    public RevisionPair? Of(PatternRevision before, PatternRevision after)
    {
        ArgumentNullException.ThrowIfNull(before);
        ArgumentNullException.ThrowIfNull(after);
        RevisionComparison? comparison = cache.GetOrCreate(("compared", before.RecipeText, after.RecipeText), entry =>
        {
            entry.Size = ComparisonKB;
            return Compare(before.RecipeText, after.RecipeText);
        });
        if (comparison is null) return null;
        DrawingOptions options = new() { Units = accessor.HttpContext is { } http ? Look.Of(http.Request).Units : default, WidthPx = 520, IdPrefix = "pair" };
        return new RevisionPair(
            before, after, comparison,
            new HtmlString(FlyDrawing.BeforeAfter(comparison.Before, comparison.After, options)),
            Diagnosis.Of(comparison.Before, units.Now).WhatItWouldDo,
            Diagnosis.Of(comparison.After, units.Now).WhatItWouldDo);
    }

    private static RevisionComparison? Compare(string before, string after)
    {
        if (RecipeParser.Parse(before).Value is not { } first || RecipeParser.Parse(after).Value is not { } second) return null;
        try
        {
            return RevisionComparison.Between(first, second);
        }
        catch (ArgumentException)
        {
            return null;
        }
    }
}
