using System.Globalization;
using TyingClass.Balance.Doubting;
using TyingClass.Balance.Reports;
using TyingClass.Balance.Tests.Flies;
using TyingClass.Recipes.Bodies;
using TyingClass.Recipes.Doubting;
using TyingClass.Recipes.Model;
using TyingClass.Recipes.Text;

namespace TyingClass.Benchmarks;

/// <summary>
/// What a full report and its doubt cost in processor time, collecting garbage included, which other work on the machine does not add to: over the recipes of
/// the course and over thrown-together ones, the least of a few rounds.
/// </summary>
internal static class DoubtLoad
{
    private const int Thrown = 400;

    public static void Print(int rounds)
    {
        Recipe[] course = [.. Directory.EnumerateFiles(Lessons(), "*.fly.yaml", SearchOption.AllDirectories).Order(StringComparer.Ordinal)
            .Select(f => RecipeParser.Parse(File.ReadAllText(f)).Value).OfType<Recipe>()];
        Tell($"{course.Length} recipes of the course", course, rounds);
        Tell($"{Thrown} thrown-together recipes", [.. Enumerable.Range(1, Thrown).Select(RandomRecipes.Fly)], rounds);
    }

    private static void Tell(string what, Recipe[] recipes, int rounds)
    {
        double[][] least = [[.. recipes.Select(_ => double.PositiveInfinity)], [.. recipes.Select(_ => double.PositiveInfinity)]];
        for (int round = 0; round < rounds; round++)
        {
            for (int i = 0; i < recipes.Length; i++)
            {
                BuiltFly? built = null;
                Least(least[0], i, () =>
                {
                    built = FlyBuilder.Build(recipes[i]);
                    BalanceEngine.Report(built.Body, built.Conditions);
                });
                Least(least[1], i, () => Doubt.Of(recipes[i], built!));
            }
        }

        Console.WriteLine(what);
        Widths(recipes);
        Tell("full report", least[0], recipes);
        Tell("doubt alone", least[1], recipes);
        Tell("report with doubt", [.. least[0].Zip(least[1], (report, doubt) => report + doubt)], recipes);
    }

    private static void Widths(Recipe[] recipes)
    {
        DoubtReport[] doubts = [.. recipes.Select(r => Doubt.Of(r, FlyBuilder.Build(r)))];
        double[] keels = [.. doubts.Select(d => d.KeelHeightMm).OfType<Interval>().Select(i => i.High - i.Low).Order()];
        double[] pitches = [.. doubts.Select(d => d.PitchDeg.High - d.PitchDeg.Low).Order()];
        double[] sinks = [.. doubts.Select(d => d.SinkRateMS).OfType<Interval>().Select(i => 2 * (i.High - i.Low) / (i.High + i.Low)).Order()];
        Console.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"  left open, median: keel height {keels[keels.Length / 2]:F2} mm, pitch {pitches[pitches.Length / 2]:F1}°, "
                + $"sink rate {100 * sinks[sinks.Length / 2]:F0} %; sure of {doubts.Count(d => d.IsSure)}, "
                + $"alike in every draw {doubts.Count(d => d.SameVerdict == 1)}"));
    }

    private static void Least(double[] least, int i, Action work)
    {
        TimeSpan start = Environment.CpuUsage.TotalTime;
        work();
        least[i] = Math.Min(least[i], (Environment.CpuUsage.TotalTime - start).TotalMilliseconds);
    }

    private static void Tell(string what, double[] milliseconds, Recipe[] recipes)
    {
        double[] ordered = [.. milliseconds.Order()];
        string slowest = recipes[Array.IndexOf(milliseconds, ordered[^1])].Name;
        Console.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"  {what,-18} median {ordered[ordered.Length / 2],7:F1} ms   99 % {ordered[(int)(0.99 * (ordered.Length - 1))],7:F1} ms   "
                + $"longest {ordered[^1],7:F1} ms ({slowest})"));
    }

    internal static string Lessons()
    {
        DirectoryInfo? folder = new(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "TyingClass.sln"))) folder = folder.Parent;
        return Path.Combine(folder!.FullName, "lessons");
    }
}
