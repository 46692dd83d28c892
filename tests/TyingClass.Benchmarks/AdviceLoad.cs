using System.Globalization;
using TyingClass.Balance.Bodies;
using TyingClass.Balance.Tests.Flies;
using TyingClass.Recipes.Model;
using TyingClass.Recipes.Reports;
using TyingClass.Recipes.Text;
using TyingClass.Web.Bench;

namespace TyingClass.Benchmarks;

/// <summary>What the bench's adviser costs, with the full report of the fly it is asked about: time of the one thread on a processor, in ms. Recipes at the
/// limits and thrown-together ones, each as it is and meant to ride the other way up.</summary>
internal static class AdviceLoad
{
    private const int Worst = 12;

    public static void Print(int thrown)
    {
        List<(Recipe Recipe, double Ms, bool Asked)> timed = [];
        Recipe[] all = [.. LimitRecipes.All(), .. Enumerable.Range(1, thrown).Select(RandomRecipes.Fly)];
        // The first runs are of code that is still being compiled.
        foreach (Recipe recipe in all[^3..]) Time(recipe);
        foreach (Recipe recipe in all.SelectMany(r => (Recipe[])[r, Turned(r)])) timed.Add(Time(recipe));
        foreach ((Recipe recipe, double ms, bool asked) in timed.OrderByDescending(t => t.Ms).Take(Worst))
            Console.WriteLine(string.Create(
                CultureInfo.InvariantCulture, $"{ms,8:F0} ms  {(asked ? "" : "(rides as meant) ")}{recipe.Name}, meant to ride {recipe.Intent}"));
        double[] ordered = [.. timed.Where(t => t.Asked).Select(t => t.Ms).Order()];
        Console.WriteLine(string.Create(CultureInfo.InvariantCulture,
            $"{ordered.Length} flies that need mending: median {ordered[ordered.Length / 2]:F0} ms, "
                + $"99 of 100 under {ordered[(int)(0.99 * ordered.Length)]:F0} ms, longest {ordered[^1]:F0} ms, over 2 s: {ordered.Count(o => o > 2000)}"));
    }

    private static Recipe Turned(Recipe recipe) => RecipeParser.Parse(RecipeWriter.Write(recipe)).Value is { } read
        ? read with { Intent = Enum.GetValues<Intent>().First(i => i != recipe.Intent), Name = recipe.Name }
        : recipe;

    private static (Recipe Recipe, double Ms, bool Asked) Time(Recipe recipe)
    {
        double start = ThreadTime.Ms;
        BenchAdvice advice = BenchAdvice.Of(SolvedFly.Solve(recipe), UnitSystem.Metric);
        return (recipe, ThreadTime.Ms - start, !advice.NothingToMend);
    }
}
