using TyingClass.Balance.Reports;
using TyingClass.Lessons.Checking;
using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Grading;
using TyingClass.Lessons.Kinds;
using TyingClass.Lessons.Quantities;

namespace TyingClass.Lessons.Practice;

/// <summary>How near a problem is to its threshold, in multiples of what one tyer's flies differ by.</summary>
internal static class PracticeDifficulty
{
    private const double PlainSpreads = 16;
    private const double CloseSpreads = 2;

    /// <summary>What a level calls for: 16 spreads at 0, down to 2 at 1, by equal ratios.</summary>
    public static double WantedSpreads(double level) => PlainSpreads * Math.Pow(CloseSpreads / PlainSpreads, level);

    /// <summary>Distance of a problem from its nearest threshold; null when it has no single one.</summary>
    public static double? Spreads(IPracticed kind, Exercise problem)
    {
        if (kind.TurnsOn(problem.Task) is not ({ } query, { } thresholds)) return null;
        FlyFigures given = new(GivenFly.Of(problem.RecipeText!)), fly = new(given.Recipe, given);
        if (query.Of(fly) is not { } value) return null;
        double[] tied = [.. TiedFlies.Of(fly.Body, TyingAccuracy.Practiced, 12).Select(b => query.Of(fly.Tied(b, given))).OfType<double>()];
        double spread = tied.Length == 0 ? 0 : Math.Sqrt(tied.Sum(t => (t - value) * (t - value)) / tied.Length);
        return thresholds.Min(t => Math.Abs(value - t)) / Math.Max(spread, query.Quantity.NoticeableSi / 10);
    }
}
