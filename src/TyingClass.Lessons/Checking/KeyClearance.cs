using System.Collections.Immutable;
using TyingClass.Balance.Bodies;
using TyingClass.Balance.Reports;
using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Grading;
using TyingClass.Lessons.Quantities;
using TyingClass.Recipes.Text;

namespace TyingClass.Lessons.Checking;

/// <summary>Whether a computed key would survive the errors of a practiced tyer. One that would not is a coin toss, not a question.</summary>
public static class KeyClearance
{
    /// <summary>Flies tied to find out.</summary>
    public const int Flies = 40;

    /// <summary>Share of them that must give the same answer.</summary>
    public const double LeastAgreement = 0.95;

    /// <summary>For which way up, where the engine's own sample is at hand.</summary>
    public const double LeastShare = 0.90;

    private const double MostShareOfUndecided = 0.65;
    private const double LeastShareOfRival = 0.20;

    /// <summary>What makes the key unfit, or null when it is clear.</summary>
    public static string? Complaint(Exercise exercise)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        return exercise.Kind switch
        {
            ExerciseKind.Predict when exercise.Question is WhichWayUp => WayUp(exercise),
            ExerciseKind.Predict => Predict(exercise),
            ExerciseKind.Measure => Measure(exercise),
            ExerciseKind.Sort => Sort(exercise),
            _ => null,
        };
    }

    private static string? WayUp(Exercise exercise)
    {
        AskedFlies flies = AskedFlies.Of(exercise, null);
        BalanceReport report = flies.Fly.Report;
        ToleranceReport shares = report.Soaked.Tolerance;
        if (PredictKey.Of(exercise, flies) is not { } key) return $"This fly {(report.Verdict.Kind == VerdictKind.Floats ? "floats" : "hangs rather than rides")}, so which way up cannot be asked of it.";
        if (key == WhichWayUp.Undecided)
        {
            bool rivals = report.Soaked.Attitudes.Count(a => a.Share >= LeastShareOfRival) > 1;
            double most = Math.Max(shares.AsIntended, Math.Max(shares.Leaning, shares.Flipped));
            return rivals || most <= MostShareOfUndecided ? null : $"The answer is “{key}”, yet {Percent(most)} of flies tied like it ride one way: too close to call.";
        }

        double share = key == WhichWayUp.OnItsSide ? shares.Leaning : key == Said.Name(report.Intent) ? shares.AsIntended : shares.Flipped;
        return share >= LeastShare ? null : $"The answer is “{key}”, but only {Percent(share)} of flies tied like it agree, and {Percent(LeastShare)} must: too near a coin toss to ask.";
    }

    private static string? Predict(Exercise exercise)
    {
        AskedFlies flies = AskedFlies.Of(exercise, null);
        if (PredictKey.Of(exercise, flies) is not { } key) return "No choice, or more than one, is right for this fly.";
        ImmutableArray<FlyBody> first = TiedFlies.Of(flies.Fly.Body, TyingAccuracy.Practiced, Flies);
        ImmutableArray<FlyBody> second = flies.Other is { } other ? TiedFlies.Of(other.Body, TyingAccuracy.Practiced, Flies) : [];

        // The fly before and after a change is one fly, with one set of errors; two flies compared are two.
        bool sameHands = exercise.Question is ChangeIn;
        int agree = Enumerable.Range(0, Flies).Count(i => PredictKey.Of(exercise, new AskedFlies(
            flies.Fly.Tied(first[i], null),
            flies.Other?.Tied(second[sameHands ? i : Flies - 1 - i], null))) == key);
        return Enough(agree) ? null : $"The answer is “{key}”, but only {agree} of {Flies} flies tied alike give it: too near its threshold to ask.";
    }

    private static string? Measure(Exercise exercise)
    {
        QuantityQuery query = PredictKey.Query(exercise);
        FlyFigures fly = new(AskedFlies.Given(exercise.RecipeText!));
        if (query.Of(fly) is not { } key) return $"The engine has no {query.Name} for this fly.";
        double[] tied = [.. TiedFlies.Of(fly.Body, TyingAccuracy.Practiced, Flies).Select(b => query.Of(fly.Tied(b, null))).OfType<double>()];
        if (tied.Length < Flies) return $"Of {Flies} flies tied alike, {Flies - tied.Length} have no {query.Name}.";
        double spread = Math.Sqrt(tied.Sum(t => (t - key) * (t - key)) / tied.Length), tolerance = MeasureGrader.ToleranceSi(exercise, query);
        return tolerance >= spread ? null : $"The tolerance of {query.SayStated(tolerance, UnitSystem.Metric)} is finer than two flies tied alike differ ({query.SayStated(spread, UnitSystem.Metric)}). Widen it.";
    }

    private static string? Sort(Exercise exercise)
    {
        QuantityQuery query = PredictKey.Query(exercise);
        Dictionary<string, FlyFigures> flies = exercise.Items.ToDictionary(i => i.Name, i => new FlyFigures(AskedFlies.Given(i.RecipeText)));
        Dictionary<string, double?> values = flies.ToDictionary(f => f.Key, f => query.Of(f.Value));
        if (values.FirstOrDefault(v => v.Value is null) is { Key: { } none }) return $"The engine has no {query.Name} for {none}.";
        ImmutableArray<string> key = SortGrader.Key(exercise, values);
        Dictionary<string, double?[]> tied = flies.ToDictionary(f => f.Key, f => (double?[])[.. TiedFlies.Of(f.Value.Body, TyingAccuracy.Practiced, Flies).Select(b => query.Of(f.Value.Tied(b, null)))]);
        for (int i = 1; i < key.Length; i++)
        {
            double?[] a = tied[key[i - 1]], b = tied[key[i]];
            int agree = Enumerable.Range(0, Flies).Count(j => exercise.LargestFirst ? a[j] > b[Flies - 1 - j] : a[j] < b[Flies - 1 - j]);
            if (!Enough(agree)) return $"{key[i - 1]} and {key[i]} are too near each other: only {agree} of {Flies} pairs tied alike keep this order.";
        }

        return null;
    }

    private static bool Enough(int agree) => agree >= LeastAgreement * Flies;

    private static string Percent(double share) => $"{Math.Round(100 * share)} %";
}
