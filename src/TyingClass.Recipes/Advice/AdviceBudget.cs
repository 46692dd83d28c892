using System.Collections.Immutable;
using TyingClass.Balance.Reports;
using TyingClass.Recipes.Model;

namespace TyingClass.Recipes.Advice;

/// <summary>
/// How much an adviser may look at before it answers. Counted, not timed: the same fly gets the same advice on a slow machine and a fast one. A fly of up to
/// some forty parts never comes to the end of it.
/// </summary>
public sealed class AdviceBudget
{
    // Looking at one fly costs as much as its parts, and something besides.
    private const int Besides = 10;

    private readonly int _most;
    private int _spent;

    /// <param name="most">In parts looked at.</param>
    public AdviceBudget(int most) => _most = most;

    /// <summary>What one page may cost: what it takes is in docs/performance.md.</summary>
    public static AdviceBudget ForAPage() => new(28_000);

    /// <summary>Changes there are; 0 until they are known.</summary>
    public int Changes { get; private set; }

    public int Tried { get; private set; }

    /// <summary>Something was left untried.</summary>
    public bool RanOut => Tried < Changes;

    internal IEnumerable<Adjustable> Of(ImmutableArray<Adjustable> changes)
    {
        Changes = changes.Length;
        foreach (Adjustable change in changes.OrderBy(c => c.Path.StartsWith("parts", StringComparison.Ordinal)))
        {
            if (_spent >= _most) yield break;
            Tried++;
            yield return change;
        }
    }

    internal Func<Recipe, ReportOptions, bool> Counting(Func<Recipe, ReportOptions, bool> reached) => (recipe, options) =>
    {
        _spent += Besides + recipe.Parts.Length;
        return reached(recipe, options);
    };
}
