using System.Collections.Immutable;
using TyingClass.Lessons.Grading;
using TyingClass.Lessons.Quantities;
using TyingClass.Recipes.Model;
using TyingClass.Recipes.Reports;
using TyingClass.Recipes.Text;

namespace TyingClass.Lessons.Revisions;

/// <summary>One figure of two flies, SI.</summary>
public sealed record FigureDifference(QuantityQuery Query, double? BeforeSi, double? AfterSi)
{
    public string Before(UnitSystem units) => Query.Say(BeforeSi, units);

    public string After(UnitSystem units) => Query.Say(AfterSi, units);

    /// <summary>True when the two differ by enough to be seen.</summary>
    public bool IsNoticeable =>
        BeforeSi is null != AfterSi is null || (BeforeSi is { } before && AfterSi is { } after && Math.Abs(after - before) >= Query.Quantity.NoticeableSi);

    /// <summary>"+0.6 mm"; "about the same"; null where either has no such figure.</summary>
    public string? Change(UnitSystem units) => BeforeSi is not { } before || AfterSi is not { } after ? null
        : !IsNoticeable ? "about the same"
        : (after > before ? "+" : "−") + Query.Say(Math.Abs(after - before), units);
}

/// <summary>What was changed at one part, and what that alone did once the changes listed before it were made.</summary>
/// <param name="Part">"hook", "fishing", "intent", or the part as the later recipe names it (the earlier one for a part taken out).</param>
/// <param name="Effects">Keel height, pitch and sink rate, soaked; empty where the fly in between cannot be built.</param>
public sealed record PartDifference(string Part, ImmutableArray<RecipeChange> Changes, ImmutableArray<FigureDifference> Effects);

/// <summary>Two revisions of a fly, part by part and figure by figure. The effects of the parts add up to the whole difference.</summary>
public sealed record RevisionComparison(SolvedFly Before, SolvedFly After, ImmutableArray<PartDifference> Parts, ImmutableArray<FigureDifference> Figures)
{
    private static readonly ImmutableArray<QuantityQuery> Effects = Queries("keel height", "pitch", "sink rate");

    private static readonly ImmutableArray<QuantityQuery> Whole = Queries(
        "mass", "wet weight", "hang angle", "level-line keel", "keel height", "pitch", "lean", "sink rate", "pitch while sinking", "depth", "rides as intended",
        "righting range");

    /// <exception cref="ArgumentException">One of the two cannot be built.</exception>
    public static RevisionComparison Between(Recipe before, Recipe after)
    {
        ArgumentNullException.ThrowIfNull(before);
        ArgumentNullException.ThrowIfNull(after);
        FlyFigures first = new(before), second = new(after);
        return new RevisionComparison(first.Solved, second.Solved, PartByPart(before, after), Compare(Whole, first, second));
    }

    private static ImmutableArray<PartDifference> PartByPart(Recipe before, Recipe after)
    {
        ImmutableArray<PartDifference>.Builder parts = ImmutableArray.CreateBuilder<PartDifference>();
        FlyFigures? here = FlyFigures.TryBuild(before);
        foreach ((string part, ImmutableArray<RecipeChange> changes, Recipe recipe) in RevisionSteps.Between(before, after))
        {
            FlyFigures? there = FlyFigures.TryBuild(recipe);
            parts.Add(new PartDifference(part, changes, here is null || there is null ? [] : Compare(Effects, here, there)));
            here = there;
        }

        return parts.ToImmutable();
    }

    private static ImmutableArray<FigureDifference> Compare(ImmutableArray<QuantityQuery> queries, FlyFigures before, FlyFigures after) =>
        [.. queries.Select(q => new FigureDifference(q, q.Of(before), q.Of(after)))];

    private static ImmutableArray<QuantityQuery> Queries(params string[] names) =>
        [.. names.Select(n => new QuantityQuery(QuantityTable.Find(n) ?? throw new ArgumentException($"There is no quantity named {n}.", nameof(names))))];
}
