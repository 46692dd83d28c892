using Microsoft.Extensions.Caching.Memory;
using TyingClass.Balance.Reports;
using TyingClass.Recipes.Reports;
using TyingClass.Recipes.Text;

namespace TyingClass.Web.Pictures;

/// <summary>
/// Flies solved lately, by the text of their recipe: the report that graded an answer is the one its page shows, and no page solves what another has just
/// solved.
/// One process has one engine, and a text always gives the same report, so what is kept never goes stale; what was dropped is solved again.
/// </summary>
public sealed class SolvedFlies : IDisposable
{
    /// <summary>Some 60 KB each.</summary>
    public const int MostKept = 256;

    private readonly MemoryCache _cache = new(new MemoryCacheOptions { SizeLimit = MostKept });

    /// <summary>Keeps a fly of which everything was worked out.</summary>
    public void Keep(string recipeText, SolvedFly whole) => Put((recipeText, true), whole);

    /// <summary>With everything that can be worked out of it; null when no fly can be built of the text.</summary>
    public SolvedFly? Whole(string recipeText) => Of(recipeText, whole: true);

    /// <summary>As it lies at its own speed, and more if that is known already.</summary>
    public SolvedFly? Attitude(string recipeText) => Of(recipeText, whole: false);

    public void Dispose() => _cache.Dispose();

    private SolvedFly? Of(string recipeText, bool whole)
    {
        ArgumentNullException.ThrowIfNull(recipeText);
        if (_cache.TryGetValue((recipeText, true), out SolvedFly? fly)) return fly;
        bool isKnown = _cache.TryGetValue((recipeText, false), out SolvedFly? part);
        if (!whole && isKnown) return part;
        ReportOptions options = whole ? ReportOptions.Default : ReportOptions.AttitudeOnly;
        fly = isKnown ? part?.With(options) : Solve(recipeText, options);
        Put((recipeText, whole), fly);
        return fly;
    }

    private void Put((string, bool) key, SolvedFly? fly) => _cache.Set(key, fly, new MemoryCacheEntryOptions { Size = 1 });

    private static SolvedFly? Solve(string recipeText, ReportOptions options)
    {
        try
        {
            return RecipeParser.Parse(recipeText).Value is { } recipe ? SolvedFly.Solve(recipe, options) : null;
        }
        catch (ArgumentException)
        {
            // Parsed, but no fly can be built of it; the answer's own feedback says why.
            return null;
        }
    }
}
