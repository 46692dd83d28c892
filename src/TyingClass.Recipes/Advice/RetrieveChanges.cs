using System.Collections.Immutable;
using TyingClass.Balance.Retrieving;
using TyingClass.Recipes.Catalogue;
using TyingClass.Recipes.Model;
using TyingClass.Recipes.Text;

namespace TyingClass.Recipes.Advice;

/// <summary>What the line hand can change: the count, the strips, the pauses, the line. Only of a recipe that states how it is retrieved.</summary>
internal static class RetrieveChanges
{
    private const double CountStepS = 1, LongestCountS = 30, PauseStepS = 0.25, LongestPauseS = 5;
    private const double StripStepM = 0.05, LongestStripM = 0.8, ShortestStripM = 0.05;
    private const int MostNamed = 12;
    private static readonly ImmutableArray<double> SinkRatesMS = [0, 0.03, 0.05, 0.1, 0.15];

    public static IEnumerable<Adjustable> Of(Recipe recipe)
    {
        RetrieveSpec spec = recipe.Fishing.Retrieve;
        if (spec == RetrieveSpec.Unstated) return [];
        ImmutableArray<RetrieveStep> round = spec.Round.IsEmpty ? RetrieveScale.Named[0].Round : spec.Round;
        double countS = spec.CountDownS ?? RetrieveScale.CountDown.Value, sinkMS = spec.LineSinkMS ?? 0;
        double longest = round.Max(s => s.StripM), pause = round.Where(s => !s.IsStrip).Select(s => s.DurationS).DefaultIfEmpty(0).Max();
        double shortestPause = round.Where(s => !s.IsStrip).Select(s => s.DurationS).DefaultIfEmpty(0).Min();
        double shortest = round.Where(s => s.IsStrip).Select(s => s.StripM).DefaultIfEmpty(0).Min();
        int deeper = SinkRatesMS.Count(r => r > sinkMS), shallower = SinkRatesMS.Count(r => r < sinkMS);
        return new[]
        {
            Count("counted longer", +1, (LongestCountS - countS) / CountStepS),
            Count("counted less long", -1, countS / CountStepS),
            Another(),
            Round("longer pauses", (pause > 0 ? LongestPauseS - pause : 0) / PauseStepS, n => Paused(n * PauseStepS)),
            Round("shorter pauses", (shortestPause - PauseStepS) / PauseStepS, n => Paused(-n * PauseStepS)),
            Round("longer strips", (longest > 0 ? LongestStripM - longest : 0) / StripStepM, n => Stripped(n * StripStepM)),
            Round("shorter strips", (shortest - ShortestStripM) / StripStepM, n => Stripped(-n * StripStepM)),
            Line("a line that sinks faster", deeper, n => SinkRatesMS[^(deeper - n + 1)]),
            Line("a line that sinks more slowly", shallower, n => SinkRatesMS[shallower - n]),
        }.OfType<Adjustable>();

        // The named ones, the likest first.
        Adjustable? Another()
        {
            (string Name, ImmutableArray<RetrieveStep> Round)[] others =
                [.. RetrieveScale.Named.Where(r => r.Name != spec.Name).OrderBy(r => Unlikeness(r.Round, round)).Take(MostNamed)];
            return Change("retrieve", "another retrieve", others.Length, n => spec with { Round = others[n - 1].Round, Name = others[n - 1].Name });
        }

        Adjustable? Count(string kind, int sign, double steps) => Even(Change("count down", kind, steps,
            n => spec with { CountDownS = Adjustables.TwelveDigits(countS + sign * n * CountStepS) }));
        static Adjustable? Even(Adjustable? change) => change is null ? null : change with { IsEven = true };
        Adjustable? Round(string kind, double steps, Func<int, ImmutableArray<RetrieveStep>> at) =>
            Even(Change("retrieve", kind, steps, n => spec with { Round = at(n), Name = null }));
        Adjustable? Line(string kind, int steps, Func<int, double> at) => Change("line", kind, steps, n => spec with { LineSinkMS = at(n) });

        ImmutableArray<RetrieveStep> Paused(double byS) =>
            [.. round.Select(s => s.IsStrip ? s : s with { DurationS = Adjustables.TwelveDigits(s.DurationS + byS) })];
        ImmutableArray<RetrieveStep> Stripped(double byM) =>
            [.. round.Select(s => s.IsStrip ? s with { StripM = Adjustables.TwelveDigits(s.StripM + byM) } : s)];

        Adjustable? Change(string key, string kind, double steps, Func<int, RetrieveSpec> at)
        {
            if (!(steps >= 1)) return null;
            string from = Text(recipe, key);
            return new Adjustable($"fishing.{key}", kind, (int)(steps + 1e-9), n => With(recipe, at(n)),
                n => new AdvisedRetrieve(key, Text(With(recipe, at(n)), key), from));
        }
    }

    // Line drawn in a second, and the share of the time it rests: what makes one retrieve unlike another.
    private static double Unlikeness(ImmutableArray<RetrieveStep> one, ImmutableArray<RetrieveStep> other) =>
        Math.Abs(SpeedMS(one) - SpeedMS(other)) + Math.Abs(Resting(one) - Resting(other));

    private static double SpeedMS(ImmutableArray<RetrieveStep> round) => round.Sum(s => s.StripM) / round.Sum(s => s.DurationS);

    private static double Resting(ImmutableArray<RetrieveStep> round) =>
        round.Where(s => !s.IsStrip).Sum(s => s.DurationS) / round.Sum(s => s.DurationS);

    private static Recipe With(Recipe recipe, RetrieveSpec retrieve) => recipe with { Fishing = recipe.Fishing with { Retrieve = retrieve } };

    private static string Text(Recipe recipe, string key) => RecipeDraft.Of(recipe).Get($"fishing.{key}") ?? "";
}
