using System.Collections.Immutable;
using TyingClass.Lessons.Quantities;
using TyingClass.Recipes.Text;
using TyingClass.Telling.Figures;
using TyingClass.Telling.Sentences;

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
        bool exerciseChanged = keptExercise != now.ExerciseVersion;
        if (!now.IsAttempt) return RegradeSentence.NotTaken(exerciseChanged, now.Problems[0].Text);
        string[] moved = [
            .. keptFigures.Join(now.Figures, k => k.Quantity, n => n.Quantity, (k, n) => (k, n)).Where(p => Differ(p.k.Si, p.n.Si))
                .Select(p => Moved(p.k, p.n))];
        return keptPassed == now.Passed && moved.Length == 0 ? null : RegradeSentence.Graded(exerciseChanged, keptPassed, now.Passed, moved);

        string Moved(GradedFigure then, GradedFigure today)
        {
            // A quantity that has gone since is told as it was kept.
            if (!QuantityQuery.TryParse(then.Quantity, out QuantityQuery query, out _))
                return RegradeSentence.Moved(then.Quantity, Kept(then.Si), Kept(today.Si));
            string[] said = [.. query.Quantity.SayApart(units, then.Si, today.Si)];
            return RegradeSentence.Moved(query.Heading(units), said[0], said[1]);
        }

        static string Kept(double? si) => si is { } value ? Numbers.Write(value, 4) : "not defined";
    }

    private static bool Differ(double? kept, double? now) => (kept, now) switch
    {
        (null, null) => false,
        ({ } a, { } b) => Math.Abs(a - b) > SameShare * Math.Max(Math.Abs(a), Math.Abs(b)),
        _ => true,
    };
}
