using TyingClass.Balance.Reports;
using TyingClass.Recipes.Reports;
using TyingClass.Recipes.Text;

namespace TyingClass.Telling.Tests;

/// <summary>Two flies really solved, once for the whole run.</summary>
internal static class Flies
{
    private const string Text = """
        recipe: Copper Loach
        intent: point up
        hook:
          size: 6
          shank: 4XL
          eye: down 25°
        parts:
          - part: cone
            material: brass
            size: 5.6 mm
            at: 0 mm
          - part: wraps
            material: lead
            diameter: 0.025 in
            turns: 18
            at: 6 mm
          - part: wing
            material: fur strip
            length: 45 mm
            mass: 0.25 g
            at: 5 mm
            side: under
        fishing:
          speed: 0.4 m/s
        """;

    private static readonly Lazy<SolvedFly> Up = new(() => Solve(Text)),
        Down = new(() => Solve(Text.Replace("point up", "point down", StringComparison.Ordinal)));

    public static SolvedFly Rides => Up.Value;

    public static SolvedFly MeantTheOtherWay => Down.Value;

    /// <summary>The sentences must follow the report, whatever it says.</summary>
    public static BalanceReport With(this BalanceReport report, VerdictKind verdict, Func<StateReport, StateReport>? change = null)
    {
        StateReport soaked = report.Soaked with { Verdict = report.Soaked.Verdict with { Kind = verdict } };
        return report with { States = [report.Fresh, change is null ? soaked : change(soaked)] };
    }

    private static SolvedFly Solve(string text) => SolvedFly.Solve(RecipeParser.Parse(text).Value!, new ReportOptions { Flies = 200 });
}
