using System.Collections.Immutable;
using System.Globalization;
using TyingClass.Balance.Reports;
using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Grading;
using TyingClass.Lessons.Quantities;
using TyingClass.Recipes.Text;
using TyingClass.Telling.Sentences;

namespace TyingClass.Lessons.Kinds.Measure;

/// <summary>A figure to work out.</summary>
/// <param name="Quantity">The named quantity of the report that is the key.</param>
/// <param name="ToleranceText">As the author wrote it, "0.5 mm".</param>
public sealed record MeasureTask(string Quantity, string ToleranceText) : ExerciseTask
{
    public override ExerciseKind Kind => MeasureKind.Instance;

    /// <summary>What is done to the fly before it is measured; null where it is measured as it is.</summary>
    public FlyChange? Done { get; init; }

    internal override string? AskedQuantity => Quantity;

    /// <summary>The sum as the lesson does it, line by line; empty where the engine's own will do.</summary>
    public ImmutableArray<SumLine> Sum { get; init; } = [];

    /// <summary>It is read off the curve of the last round.</summary>
    public bool IsOfTheRetrieve => Query.Quantity.IsOfTheRetrieve;

    /// <summary>Mass and place alone decide it: a sum in the hand.</summary>
    public bool IsOfMass => Query.Quantity.IsOfMass;

    internal override FlyChange? Change => Done;

    internal override ExerciseTask With(FlyChange change) => this with { Done = change };

    /// <summary>With the figure before the change: the sum begins with it.</summary>
    internal override string Told(Exercise problem, FlyChange change)
    {
        double? before = Query.Of(new FlyFigures(GivenFly.Of(problem.RecipeText!)));
        return $"{base.Told(problem, change)} {ChangeWords.Before(Query.Phrase(UnitSystem.Metric), Query.Say(before, UnitSystem.Metric))}";
    }

    /// <summary>The fly that is measured.</summary>
    internal static FlyFigures Measured(Exercise exercise, ReportOptions? options = null) =>
        new(GivenFly.Of(exercise.Task.ChangedRecipe ?? exercise.RecipeText!), null, options);

    internal QuantityQuery Query => QuantityQuery.Known(Quantity);

    internal double ToleranceSi =>
        GoalReader.TryRead(Query.Quantity, ToleranceText, out double si, out string error) ? si : throw new InvalidOperationException(error);

    /// <summary>In practice: the tolerance as written at level ½, twice it at 0, half at 1.</summary>
    internal MeasureTask At(double level)
    {
        double si = ToleranceSi * Math.Pow(2, 1 - 2 * level);
        return this with
        {
            // Of another fly the figures are others.
            Sum = [],
            ToleranceText = Query.Quantity.Dimension is { } dimension
                ? Units.Write(si, dimension, 2)
                : si.ToString("0.##", CultureInfo.InvariantCulture),
        };
    }
}
