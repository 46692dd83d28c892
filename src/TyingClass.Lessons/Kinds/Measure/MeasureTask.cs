using System.Globalization;
using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Quantities;
using TyingClass.Recipes.Text;

namespace TyingClass.Lessons.Kinds.Measure;

/// <summary>A figure to work out.</summary>
/// <param name="Quantity">The named quantity of the report that is the key.</param>
/// <param name="ToleranceText">As the author wrote it, "0.5 mm".</param>
public sealed record MeasureTask(string Quantity, string ToleranceText) : ExerciseTask
{
    public override ExerciseKind Kind => MeasureKind.Instance;

    internal override string? AskedQuantity => Quantity;

    /// <summary>It is read off the curve of the last round.</summary>
    public bool IsOfTheRetrieve => Query.Quantity.IsOfTheRetrieve;

    internal QuantityQuery Query => QuantityQuery.Known(Quantity);

    internal double ToleranceSi =>
        GoalReader.TryRead(Query.Quantity, ToleranceText, out double si, out string error) ? si : throw new InvalidOperationException(error);

    /// <summary>In practice: the tolerance as written at level ½, twice it at 0, half at 1.</summary>
    internal MeasureTask At(double level)
    {
        double si = ToleranceSi * Math.Pow(2, 1 - 2 * level);
        return this with
        {
            ToleranceText = Query.Quantity.Dimension is { } dimension
                ? Units.Write(si, dimension, 2)
                : si.ToString("0.##", CultureInfo.InvariantCulture),
        };
    }
}
