using TyingClass.Balance.Tests.Flies;
using TyingClass.Recipes.Model;
using TyingClass.Recipes.Reports;
using TyingClass.Telling.Reports;

namespace TyingClass.Benchmarks;

/// <summary>Every figure of thrown-together recipes and of those at the limits, to lay two states of the engine side by side by <c>diff</c>.</summary>
internal static class ReportDump
{
    public static void Write(string file, int thrown)
    {
        using StreamWriter output = new(file);
        foreach (Recipe recipe in Enumerable.Range(1, thrown).Select(RandomRecipes.Fly).Concat(LimitRecipes.All()))
            output.WriteLine(BalanceJson.Write(SolvedFly.Solve(recipe)).ReplaceLineEndings(" "));
    }
}
