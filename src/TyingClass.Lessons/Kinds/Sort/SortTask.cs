using System.Collections.Immutable;
using TyingClass.Lessons.Quantities;

namespace TyingClass.Lessons.Kinds.Sort;

/// <summary>Flies to put in order.</summary>
/// <param name="Items">In the order shown.</param>
/// <param name="Quantity">What they are put in order by.</param>
/// <param name="LargestFirst">True when the largest comes first.</param>
public sealed record SortTask(ImmutableArray<SortItem> Items, string Quantity, bool LargestFirst) : ExerciseTask
{
    public override ExerciseKind Kind => SortKind.Instance;

    public override ImmutableArray<string> Choices => [.. Items.Select(i => i.Name)];

    public override ImmutableArray<string> OtherRecipes => [.. Items.Select(i => i.RecipeText)];

    internal override string? AskedQuantity => Quantity;

    /// <summary>How a place of the order is called where something is wrong with it.</summary>
    /// <param name="number">From 1.</param>
    public static string Place(int number) => FormattableString.Invariant($"place {number}");

    internal QuantityQuery Query => QuantityQuery.Known(Quantity);
}

/// <param name="Name">What the student writes in the order: the fly's name.</param>
public sealed record SortItem(string Name, string RecipeText);
