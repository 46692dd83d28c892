using TyingClass.Balance.Bodies;
using TyingClass.Balance.Reports;
using TyingClass.Lessons.Grading;
using TyingClass.Lessons.Quantities;
using TyingClass.Recipes.Text;
using TyingClass.Telling.Reasons;
using Xunit;

namespace TyingClass.Lessons.Tests.Reasons;

/// <summary>Flies of the tests of reasons, and what is told of the way one rides.</summary>
internal static class Solved
{
    /// <summary>As in a sentence: under 20° of lean it rides as it is meant, over 150° the other way up.</summary>
    public const double UprightDeg = 20, TurnedDeg = 150;

    private const string Asked = "id: p-1\nkind: predict\ntitle: P\nconcepts: [keel side]\nprompt: What?\nhints: [A hint.]\nask: which way up\nrecipe: |\n  ";

    public static string File(string name) => Repo.Recipe($"recipes/{name}.fly.yaml")!;

    public static FlyFigures Fly(string recipe) => new(RecipeParser.Parse(recipe).Value!);

    public static QuantityQuery Query(string quantity)
    {
        Assert.True(QuantityQuery.TryParse(quantity, out QuantityQuery query, out string error), error);
        return query;
    }

    public static FlyFigures Lacking(FlyFigures fly, string part) =>
        fly.Tied(fly.Body with { Parts = [.. fly.Body.Parts.Where(p => p.Name != part)] }, null);

    public static TowReport Tow(FlyFigures fly) => fly.Tow(Query("keel height"));

    public static double? Keel(FlyFigures fly) => Query("keel height").Of(fly);

    public static bool IsPointUp(FlyFigures fly, TowReport tow)
    {
        Assert.True(tow.Settles && tow.LeanDeg is < UprightDeg or > TurnedDeg, $"It leans by {tow.LeanDeg}°.");
        return fly.Body.Intent == Intent.PointUp == tow.LeanDeg < UprightDeg;
    }

    public static (string First, Reason Reason, FlyFigures Fly) ToldOf(string recipe, string prompt = "What?")
    {
        GradeResult result = Result(recipe, prompt);
        return (result.Feedback!.First!, result.Why[0], Fly(recipe));
    }

    public static GradeResult Result(string recipe, string prompt = "What?") => Grader.Grade(
        Repo.Exercise(Asked.Replace("What?", prompt, StringComparison.Ordinal) + recipe.Replace("\n", "\n  ", StringComparison.Ordinal)), "point up", 0);
}
