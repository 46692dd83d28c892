using System.Globalization;
using TyingClass.Balance.Bodies;
using TyingClass.Balance.Geometry;
using TyingClass.Balance.Reports;
using TyingClass.Balance.Sinking;
using TyingClass.Balance.Tests.Flies;
using TyingClass.Balance.Towing;
using TyingClass.Balance.Tying;
using TyingClass.Recipes.Bodies;
using TyingClass.Recipes.Doubting;
using TyingClass.Recipes.Model;

namespace TyingClass.Benchmarks;

/// <summary>What the slowest flies cost and where their time goes, stage by stage of the soaked fly: time of the one thread on a processor, in ms, so that
/// other work on the machine adds only colder caches. In pieces, for a machine that is busy: each fly is told as soon as it is known.</summary>
internal static class SlowFlies
{
    private const double Dear = 150;
    private const int Rounds = 3;

    /// <summary>All recipes at the limits, then so many thrown-together ones; of them those from one place up to another.</summary>
    public static void Print(int thrown, int from, int to)
    {
        Recipe[] all = [.. LimitRecipes.All(), .. Enumerable.Range(1, thrown).Select(RandomRecipes.Fly)];
        Recipe[] piece = all[Math.Min(from, all.Length)..Math.Min(to, all.Length)];
        // The first runs are of code that is still being compiled.
        foreach (Recipe recipe in all[^10..]) Time(recipe, 1);
        List<(Recipe Recipe, double Report, double Doubt)> timed = [];
        foreach (Recipe recipe in piece)
        {
            (Recipe Recipe, double Report, double Doubt) one = Time(recipe, 1);
            if (one.Report + one.Doubt > Dear) one = Time(recipe, Rounds);
            timed.Add(one);
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{one.Report,7:F1} report {one.Doubt,7:F1} doubt  {recipe.Name}"));
            if (one.Report + one.Doubt > Dear) Stages(recipe);
        }

        Console.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"{from} to {from + piece.Length} of {all.Length}: report longest {timed.Max(t => t.Report):F0} ms, doubt longest {timed.Max(t => t.Doubt):F0} ms, "
                + $"together over 250 ms: {timed.Count(t => t.Report + t.Doubt > 250)}"));
    }

    private static (Recipe Recipe, double Report, double Doubt) Time(Recipe recipe, int rounds)
    {
        BuiltFly built = FlyBuilder.Build(recipe);
        double report = Least(rounds, () => BalanceEngine.Report(built.Body, built.Conditions)), doubt = Least(rounds, () => Doubt.Of(recipe, built));
        return (recipe, report, doubt);
    }

    private static void Stages(Recipe recipe)
    {
        BuiltFly built = FlyBuilder.Build(recipe);
        (FlyBody body, FishingConditions conditions) = (built.Body, built.Conditions);
        double speedMS = conditions.SpeedMS, soakS = double.PositiveInfinity;
        TowedFly fly = TowedFly.From(body, conditions, soakS);
        Attitude level = Attitude.Symmetric(body.Intent, 0);
        Settling.TryFindRest(fly, speedMS, level, out Rest rest);
        double[] deviates = ThousandFlies.Deviates(body, 1000, 1);
        ThousandFlies flies = new(body, conditions, soakS, TyingSpread.Of(TyingAccuracy.Practiced));
        SinkingFly sinking = new(body, conditions, soakS);
        bool sinks = sinking.TryFindStable(rest.Attitude.Up, out SteadySink steady);
        (string, double)[] stages =
        [
            ("attitude", Least(2, () => Settling.TryFindRest(fly, speedMS, level, out _))),
            ("releases", Least(2, () => Releases.StableAttitudes(fly, speedMS))),
            ("righting", Least(2, () => Righting.Lesser(fly, level, speedMS, 36))),
            ("flies", Least(2, () => flies.LeansRad(rest.Attitude, speedMS, deviates))),
            ("sink", Least(2, () => sinking.TryFindStable(rest.Attitude.Up, out _))),
            ("ways", Least(2, () => sinking.Ways())),
            ("depth", sinks ? Least(2, () => sinking.DepthFromRest(steady, 10, 40)) : 0),
        ];
        Console.WriteLine("        " + string.Join("  ", stages.Select(s => string.Create(CultureInfo.InvariantCulture, $"{s.Item1} {s.Item2:F2}"))));
    }

    private static double Least(int rounds, Action work)
    {
        double least = double.PositiveInfinity;
        for (int round = 0; round < rounds; round++)
        {
            double start = ThreadTime.Ms;
            work();
            least = Math.Min(least, ThreadTime.Ms - start);
        }

        return least;
    }
}
