using Microsoft.AspNetCore.Html;
using Microsoft.Extensions.Caching.Memory;
using TyingClass.Balance.Reports;
using TyingClass.Drawing;
using TyingClass.Recipes.Model;
using TyingClass.Recipes.Reports;
using TyingClass.Recipes.Text;
using TyingClass.Web.Preferences;

namespace TyingClass.Web.Pictures;

/// <summary>Pictures of recipes for one page. A picture is drawn once and kept: the same recipe always gives the same one.</summary>
public sealed class FlyPictures(IMemoryCache cache, IHttpContextAccessor accessor)
{
    /// <summary>Pictures kept at a time, some 40 KB each.</summary>
    public const int MostKept = 400;

    // As wide as a plate stands on most pages: letters are set for it, and must stay readable on a phone.
    private const int PlateWidthPx = 520;

    private int onThisPage;

    /// <summary>The picture as SVG, or null when the recipe cannot be read or has no such view.</summary>
    /// <param name="view">"side" or the name of a curve.</param>
    /// <param name="fresh">Fresh from the cast instead of soaked.</param>
    public IHtmlContent? Draw(string recipeText, string view = "side", bool fresh = false)
    {
        Look look = accessor.HttpContext is { } http ? Look.Of(http.Request) : default;
        // Ids inside a picture must be the page's only ones.
        DrawingOptions options = new() { Units = look.Units, WidthPx = PlateWidthPx, IdPrefix = $"fly{++onThisPage}", State = fresh ? WetState.Fresh : WetState.Soaked };
        string? svg = cache.GetOrCreate((recipeText, view, options), entry =>
        {
            entry.Size = 1;
            return Plates.Find(view) is { } plate && RecipeParser.Parse(recipeText) is { Success: true, Value: { } recipe } ? Render(recipe, plate, options) : null;
        });
        return svg is null ? null : new HtmlString(svg);
    }

    private static string? Render(Recipe recipe, Plate plate, DrawingOptions options)
    {
        try
        {
            return plate(SolvedFly.Solve(recipe), options);
        }
        catch (ArgumentException)
        {
            // Parsed, but no fly can be built of it; the answer's own feedback says why.
            return null;
        }
    }
}
