using System.Globalization;
using TyingClass.Balance.Reports;
using TyingClass.Lessons.Checking;
using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Grading;
using TyingClass.Lessons.Quantities;
using TyingClass.Recipes.Text;

namespace TyingClass.Lessons.Practice;

/// <summary>How near a problem is to its threshold, in multiples of what one tyer's flies differ by.</summary>
internal static class PracticeDifficulty
{
    private const double PlainSpreads = 16;
    private const double CloseSpreads = 2;
    private const double Degree = Math.PI / 180;

    /// <summary>What a level calls for: 16 spreads at 0, down to 2 at 1, by equal ratios.</summary>
    public static double WantedSpreads(double level) => PlainSpreads * Math.Pow(CloseSpreads / PlainSpreads, level);

    /// <summary>Distance of a problem from its nearest threshold; null when it has no single one.</summary>
    public static double? Spreads(Exercise problem)
    {
        (QuantityQuery? query, double[] thresholds) = problem switch
        {
            { Question: WhichWayUp } => (Named("keel height"), [0.0]),
            { Question: WhereTheNosePoints } => (Named("pitch"), [-WhereTheNosePoints.LevelDeg * Degree, WhereTheNosePoints.LevelDeg * Degree]),
            // A share of flies jumps from none to all: what it turns on is the keel height.
            { Kind: ExerciseKind.Repair } when GoalCheck.Query(problem.Goals[0]).Quantity.Dimension == Dimension.Share => (Named("keel height"), [0.0]),
            { Kind: ExerciseKind.Repair } => (GoalCheck.Query(problem.Goals[0]), new[] { problem.Goals[0].LowSi, problem.Goals[0].HighSi }.Where(double.IsFinite).ToArray()),
            _ => ((QuantityQuery?)null, Array.Empty<double>()),
        };
        if (query is null) return null;
        FlyFigures given = new(AskedFlies.Given(problem.RecipeText!)), fly = new(given.Recipe, given);
        if (query.Of(fly) is not { } value) return null;
        double[] tied = [.. TiedFlies.Of(fly.Body, TyingAccuracy.Practiced, 12).Select(b => query.Of(fly.Tied(b, given))).OfType<double>()];
        double spread = tied.Length == 0 ? 0 : Math.Sqrt(tied.Sum(t => (t - value) * (t - value)) / tied.Length);
        return thresholds.Min(t => Math.Abs(value - t)) / Math.Max(spread, query.Quantity.NoticeableSi / 10);
    }

    /// <summary>Measure: the template's tolerance at level ½, twice it at 0, half at 1.</summary>
    public static string ToleranceText(Exercise template, double level)
    {
        QuantityQuery query = PredictKey.Query(template);
        double si = MeasureGrader.ToleranceSi(template, query) * Math.Pow(2, 1 - 2 * level);
        return query.Quantity.Dimension is { } dimension
            ? Units.Format(si, dimension, UnitSystem.Metric, 2)
            : si.ToString("0.##", CultureInfo.InvariantCulture);
    }

    private static QuantityQuery Named(string name) => new(QuantityTable.Find(name)!);
}
