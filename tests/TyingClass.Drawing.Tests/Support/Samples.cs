using System.Collections.Immutable;
using TyingClass.Balance.Reports;
using TyingClass.Drawing.ContactSheets;
using TyingClass.Recipes.Reports;
using Xunit;

namespace TyingClass.Drawing.Tests.Support;

/// <summary>The flies of the contact sheet, really solved, once for the whole run.</summary>
internal static class Samples
{
    private static readonly Lazy<ImmutableArray<SolvedFly>> Solved = new(() => [.. SheetFlies.All.AsParallel().AsOrdered().Select(r => SolvedFly.Solve(r))]);

    public static ImmutableArray<SolvedFly> OfSheet => Solved.Value;

    public static SolvedFly Named(string name) => OfSheet.Single(f => f.Recipe.Name == name);

    public static TheoryData<string> Names => [.. SheetFlies.All.Select(r => r.Name)];

    /// <summary>The same fly, its soaked tow at the speed fished replaced: the drawing must follow the report, whatever it says.</summary>
    public static SolvedFly WithTow(this SolvedFly fly, Func<TowReport, TowReport> change)
    {
        StateReport soaked = fly.Report.Soaked;
        return fly with { Report = fly.Report with { States = [fly.Report.Fresh, soaked with { AtFishingSpeed = change(soaked.AtFishingSpeed) }] } };
    }

    public static SolvedFly WithSoaked(this SolvedFly fly, Func<StateReport, StateReport> change) =>
        fly with { Report = fly.Report with { States = [fly.Report.Fresh, change(fly.Report.Soaked)] } };

    public static SolvedFly Renamed(this SolvedFly fly, string name) => fly with { Recipe = fly.Recipe with { Name = name } };
}
