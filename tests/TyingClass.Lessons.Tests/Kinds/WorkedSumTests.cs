using System.Globalization;
using TyingClass.Lessons.Courses;
using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Grading;
using TyingClass.Lessons.Kinds.Measure;
using TyingClass.Recipes.Text;
using Xunit;

namespace TyingClass.Lessons.Tests.Kinds;

public sealed class WorkedSumTests
{
    [Theory]
    [InlineData("mass", "0.05 g", "1 g")]
    [InlineData("mass with held water", "0.05 g", "1 g")]
    [InlineData("held water", "0.05 g", "1 g")]
    [InlineData("wet weight", "0.05 g", "1 g")]
    [InlineData("displaced volume", "30 mm³", "1 mm³")]
    [InlineData("mass of bead", "0.05 g", "1 g")]
    [InlineData("mass center, x", "0.8 mm", "1 mm")]
    [InlineData("mass center, z", "0.8 mm", "1 mm")]
    [InlineData("balance point, x", "0.8 mm", "1 mm")]
    [InlineData("balance point, z", "0.8 mm", "1 mm")]
    [InlineData("level-line keel", "0.5 mm", "1 mm")]
    [InlineData("hang angle", "5°", "1°")]
    [InlineData("line angle", "4°", "1°")]
    public void Of_EachQuantityWorkedByHand_ComesOutAtTheEnginesFigure(string quantity, string tolerance, string answer)
    {
        Exercise exercise = Measure(quantity, tolerance);

        WorkedSum sum = Assert.IsType<WorkedSum>(WorkedSum.Of(exercise, answer, UnitSystem.Metric));

        double key = Grader.Grade(exercise, answer, 0).Figures.Single().Si!.Value;
        Assert.Equal(key, sum.Rows[^1].Si, 1e-3 * Math.Max(1e-9, Math.Abs(key)) + 1e-9);
        Assert.All(sum.Rows, row => Assert.NotEmpty(row.Result));
        Assert.NotEmpty(sum.Yours);
        Assert.All(sum.Rows.Where(IsPlain), row => AssertAddsUp(exercise.Id, row));
    }

    // Read as a student reads it: with a pencil, from what is printed.
    [Fact]
    public void Of_EveryMeasureOfTheCourse_AddsUpAsItIsPrinted()
    {
        using CourseFolder folder = new(Repo.Lessons);
        int checkedSums = 0;

        foreach (Exercise exercise in folder.Current.Exercises.Where(e => e.Kind.Word == "measure"))
        {
            if (WorkedSum.Of(exercise, exercise.ModelAnswer!, UnitSystem.Metric) is not { } sum) continue;
            foreach (WorkedRow row in sum.Rows.Where(IsPlain))
            {
                AssertAddsUp(exercise.Id, row);
                checkedSums++;
            }
        }

        Assert.True(checkedSums > 20, $"only {checkedSums} sums were printed");
    }

    private static bool IsPlain(WorkedRow row) => row.Sum.Length > 0 && !row.Sum.Contains('=', StringComparison.Ordinal);

    private static void AssertAddsUp(string id, WorkedRow row)
    {
        (double value, double printed, double halfAPlace) = (Reckoned(row.Sum), Number(row.Result), HalfAPlace(row.Result));
        Assert.True(Math.Abs(value - printed) <= 1.001 * halfAPlace, $"{id}: {row.Sum} is {value}, and {row.Result} is printed");
    }

    // A volume in mm³ and a density in g/cm³ make thousandths of a gram.
    private static double Reckoned(string sum) => Terms(sum, " + ").Sum(a => Terms(a, " − ").Select(Product).Aggregate((x, y) => x - y))
        * (sum.Contains("g/cm³", StringComparison.Ordinal) ? 1e-3 : sum.Contains("kg/m³", StringComparison.Ordinal) ? 1e-6 : 1);

    private static double Product(string product) =>
        Terms(product, " ÷ ").Select(p => Terms(p, " × ").Select(Number).Aggregate((x, y) => x * y)).Aggregate((x, y) => x / y);

    private static string[] Terms(string text, string sign) => text.Split(sign);

    private static double Number(string told) => double.Parse(Digits(told), CultureInfo.InvariantCulture);

    private static string Digits(string told) =>
        string.Concat(told.TrimStart('(').Replace('−', '-').TakeWhile(c => char.IsAsciiDigit(c) || c is '-' or '.'));

    private static double HalfAPlace(string told) => 0.5 * Math.Pow(10, Digits(told).IndexOf('.') is >= 0 and var dot ? dot + 1 - Digits(told).Length : 0);

    [Fact]
    public void Of_SinkRate_IsNoSum() => Assert.Null(WorkedSum.Of(Measure("sink rate", "0.06 m/s"), "1 m/s", UnitSystem.Metric));

    // Dry and wet are summed by the test itself, from the parts of the recipe.
    [Fact]
    public void Of_AnswerThatIsAnEarlierLine_SaysWhereItStopped()
    {
        Exercise exercise = Measure("mass with held water", "0.02 g");
        double dryKg = Grader.Grade(Measure("mass", "0.02 g"), "1 g", 0).Figures.Single().Si!.Value;
        string dry = Units.Write(dryKg, Dimension.Mass, 3);

        WorkedSum sum = WorkedSum.Of(exercise, dry, UnitSystem.Metric)!;

        Assert.Contains("the dry fly", sum.Remark, StringComparison.Ordinal);
        Assert.Null(WorkedSum.Of(exercise, "9 g", UnitSystem.Metric)!.Remark);
    }

    [Fact]
    public void Of_AKindThatIsNoMeasure_IsNone()
    {
        Exercise exercise = Measure("mass", "0.02 g");

        Assert.Null(WorkedSum.Of(exercise with { RecipeText = null }, "1 g", UnitSystem.Metric));
    }

    private static Exercise Measure(string quantity, string tolerance)
    {
        LessonResult result = Repo.Fence("exercise", $"""
            id: worked-1
            kind: measure
            title: Worked
            concepts: [mass center]
            prompt: How much?
            file: recipes/slate-minnow.fly.yaml
            quantity: {quantity}
            tolerance: {tolerance}
            model answer: 1 g
            wrong answers: [2 g]
            """);
        Assert.Equal([], result.Errors);
        return result.Lesson!.Exercises.Single();
    }
}
