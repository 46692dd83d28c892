using System.Collections.Immutable;
using TyingClass.Lessons.Quantities;
using TyingClass.Recipes.Text;

namespace TyingClass.Lessons.Grading;

/// <summary>Whether an answer kept from before would be graded otherwise today, and why. The grade once given stands; this only says so.</summary>
public static class RegradeNote
{
    // Below this share of the larger, a figure has not changed: the last digits may move between engines.
    private const double SameShare = 1e-6;

    /// <param name="now">The same answer graded today.</param>
    /// <returns>Null when nothing differs.</returns>
    public static string? Of(
        string keptEngine, string keptExercise, bool keptPassed, ImmutableArray<GradedFigure> keptFigures, GradeResult now,
        UnitSystem units = UnitSystem.Metric)
    {
        ArgumentNullException.ThrowIfNull(now);
        if (keptEngine == now.EngineVersion && keptExercise == now.ExerciseVersion) return null;
        string since = keptExercise == now.ExerciseVersion ? "The engine has changed since." : "The exercise has changed since.";
        if (!now.IsAttempt) return $"{since} Today this answer would not be taken: {now.Problems[0].Text}";
        string[] moved = [
            .. keptFigures.Join(now.Figures, k => k.Quantity, n => n.Quantity, (k, n) => (k, n)).Where(p => Differ(p.k.Si, p.n.Si))
                .Select(p => Moved(p.k, p.n))];
        if (keptPassed == now.Passed && moved.Length == 0) return null;
        string verdict = keptPassed == now.Passed ? "The grade would be the same" : $"Today it would {(now.Passed ? "pass" : "not pass")}";
        return $"{since} {verdict}{(moved.Length == 0 ? "" : $": {string.Join("; ", moved)}")}.";

        string Moved(GradedFigure then, GradedFigure today)
        {
            // A quantity that has gone since is told as it was kept.
            string[] said = QuantityQuery.TryParse(then.Quantity, out QuantityQuery query, out _)
                ? [.. query.Quantity.SayApart(units, then.Si, today.Si)]
                : [Kept(then.Si), Kept(today.Si)];
            return $"{then.Quantity} was {said[0]} and is now {said[1]}";
        }

        static string Kept(double? si) => si?.ToString("G4", System.Globalization.CultureInfo.InvariantCulture) ?? "not defined";
    }

    private static bool Differ(double? kept, double? now) => (kept, now) switch
    {
        (null, null) => false,
        ({ } a, { } b) => Math.Abs(a - b) > SameShare * Math.Max(Math.Abs(a), Math.Abs(b)),
        _ => true,
    };
}
