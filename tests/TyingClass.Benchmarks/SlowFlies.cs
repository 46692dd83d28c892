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

/// <summary>Where the time of the slowest flies goes, stage by stage of the soaked fly: processor time in ms, the least of a few rounds.</summary>
internal static class SlowFlies
{
    public static void Print(int thrown, int shown)
    {
        Recipe[] all = [.. LimitRecipes.All(), .. Enumerable.Range(1, thrown).Select(RandomRecipes.Fly)];
        (Recipe Recipe, double Report, double Doubt)[] timed = [.. all.Select(Time)];
        Console.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"{all.Length} recipes ({all.Length - thrown} at the limits): report longest {timed.Max(t => t.Report):F0} ms, "
                + $"doubt longest {timed.Max(t => t.Doubt):F0} ms, together over 250 ms: {timed.Count(t => t.Report + t.Doubt > 250)}"));
        foreach ((Recipe recipe, double report, double doubt) in timed.OrderByDescending(t => t.Report + t.Doubt).Take(shown))
        {
            Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{report,7:F1} report {doubt,7:F1} doubt  {recipe.Name}"));
            Stages(recipe);
        }
    }

    private static (Recipe Recipe, double Report, double Doubt) Time(Recipe recipe)
    {
        BuiltFly built = FlyBuilder.Build(recipe);
        double report = Least(() => BalanceEngine.Report(built.Body, built.Conditions)), doubt = Least(() => Doubt.Of(recipe, built));
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
            ("attitude", Least(() => Settling.TryFindRest(fly, speedMS, level, out _))),
            ("releases", Least(() => Releases.StableAttitudes(fly, speedMS))),
            ("righting", Least(() => Righting.Lesser(fly, level, speedMS, 36))),
            ("flies", Least(() => flies.LeansRad(rest.Attitude, speedMS, deviates))),
            ("sink", Least(() => sinking.TryFindStable(rest.Attitude.Up, out _))),
            ("ways", Least(() => sinking.Ways())),
            ("depth", sinks ? Least(() => sinking.DepthFromRest(steady, 10, 40)) : 0),
        ];
        Console.WriteLine("        " + string.Join("  ", stages.Select(s => string.Create(CultureInfo.InvariantCulture, $"{s.Item1} {s.Item2:F2}"))));
    }

    private static double Least(Action work)
    {
        double least = double.PositiveInfinity;
        for (int round = 0; round < 2; round++)
        {
            TimeSpan start = Environment.CpuUsage.TotalTime;
            work();
            least = Math.Min(least, (Environment.CpuUsage.TotalTime - start).TotalMilliseconds);
        }

        return least;
    }
}
