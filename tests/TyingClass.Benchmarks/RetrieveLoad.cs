using System.Globalization;
using TyingClass.Balance.Reports;
using TyingClass.Balance.Retrieving;
using TyingClass.Drawing;
using TyingClass.Recipes.Bodies;
using TyingClass.Recipes.Doubting;
using TyingClass.Recipes.Model;
using TyingClass.Recipes.Reports;
using TyingClass.Recipes.Text;
using TyingClass.Telling.Sentences;

namespace TyingClass.Benchmarks;

/// <summary>
/// What twenty seconds of fishing cost in processor time, over the recipes of the course: the least of a few rounds.
/// </summary>
internal static class RetrieveLoad
{
    public static void Print(int rounds)
    {
        (Recipe, BuiltFly)[] flies = [.. Directory.EnumerateFiles(DoubtLoad.Lessons(), "*.fly.yaml", SearchOption.AllDirectories).Order(StringComparer.Ordinal)
            .Select(f => RecipeParser.Parse(File.ReadAllText(f)).Value).OfType<Recipe>().Select(r => (r, FlyBuilder.Build(r)))];
        // Counted 4 s, eight rounds of 2 s: twenty.
        Tell("20 s on a floating line of 12 m", flies, rounds, new RetrieveSpec { CountDownS = 4 });
        Tell("20 s with 30 m out", flies, rounds, new RetrieveSpec { CountDownS = 4, LineOutM = 30 });
        Tell("20 s on a line that sinks", flies, rounds, new RetrieveSpec { CountDownS = 4, LineSinkMS = 0.1 });
        Tell("20 s over a bed 60 cm down", flies, rounds, new RetrieveSpec { CountDownS = 4, WaterDepthM = 0.6 });
        // As the bench does when the hand rests: followed, strip and traces drawn, in words; then its doubt.
        Tell("the strip on the bench", flies, rounds, fly => Drawn(SolvedFly.Solve(fly.Recipe, ReportOptions.AttitudeOnly)));
        Tell("sixteen draws of its doubt", flies, rounds, fly => _ = Doubt.OfRetrieve(fly.Recipe));
    }

    private static void Drawn(SolvedFly fly)
    {
        _ = FlyDrawing.Film(fly, DrawingOptions.Default);
        _ = Curves.Retrieve(fly, DrawingOptions.Default);
        _ = string.Join(' ', RetrieveSentence.Of(fly.Retrieve, UnitSystem.Metric));
    }

    private static void Tell(string what, (Recipe Recipe, BuiltFly Fly)[] flies, int rounds, RetrieveSpec spec) => Tell(
        what, flies, rounds, f => RetrieveEngine.Report(f.Fly.Body, f.Fly.Conditions, RetrieveBuilder.Build(spec, f.Fly.Conditions)));

    private static void Tell(string what, (Recipe Recipe, BuiltFly Fly)[] flies, int rounds, Action<(Recipe Recipe, BuiltFly Fly)> work)
    {
        double[] least = [.. flies.Select(_ => double.PositiveInfinity)];
        for (int round = 0; round < rounds; round++)
        {
            for (int i = 0; i < flies.Length; i++)
            {
                TimeSpan start = Environment.CpuUsage.TotalTime;
                work(flies[i]);
                least[i] = Math.Min(least[i], (Environment.CpuUsage.TotalTime - start).TotalMilliseconds);
            }
        }

        double[] ordered = [.. least.Order()];
        Console.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"{what,-34} {flies.Length} flies, median {ordered[ordered.Length / 2]:F0} ms, 99 % {ordered[(int)(0.99 * (ordered.Length - 1))]:F0} ms, "
                + $"longest {ordered[^1]:F0} ms"));
    }
}
