using TyingClass.Balance.Reports;
using TyingClass.Balance.Retrieving;
using TyingClass.Recipes.Reports;
using TyingClass.Recipes.Text;
using TyingClass.Telling.Sentences;
using Xunit;

namespace TyingClass.Telling.Tests.Sentences;

/// <summary>Retrieves at the limits, from the recipe's text to what is told: an answer, or a plain sentence why not, and the same each time.</summary>
public sealed class HardRetrieveTests
{
    private const string Jig = """
        recipe: Hard Case
        intent: point up
        hook:
          size: 8
          eye: jig 60°
        parts:
          - part: bead
            material: tungsten
            size: 4 mm
            at: 0 mm
          - part: wing
            material: marabou
            length: 30 mm
            mass: 0.05 g
            at: 5 mm
            side: under
        fishing:
          knot: loop
        """;

    private const string Lopsided = """
        recipe: Hard Case
        intent: point up
        hook:
          size: 6
        parts:
          - part: dumbbell eyes
            material: brass
            size: 4 mm
            at: 3 mm
            side: top
            clocked: 50°
          - part: wing
            material: bucktail
            mass: 0.05 g
            at: 7 mm
            side: under
        fishing:
          knot: loop
        """;

    public static TheoryData<string, string, string> Cases => new()
    {
        { "thirty meters of line", Jig, "  line out: 30 m" },
        { "three meters a second", Jig, "  retrieve: strip 90 cm in 0.3 s, pause 1 s\n  line out: 14 m" },
        { "two minutes of pause", Jig, "  retrieve: strip 30 cm in 0.5 s, pause 120 s\n  repeat: 2" },
        { "on the bottom", Jig, "  water depth: 50 cm\n  count down: 30 s\n  repeat: 3" },
        { "lopsided", Lopsided, "  repeat: 4" },
        { "longer than is followed", Jig, "  retrieve: strip 30 cm in 0.5 s, pause 120 s\n  repeat: 8" },
        { "more than the line", Jig, "  retrieve: strip 1 m in 1 s\n  line out: 3 m" },
    };

    [Theory]
    [MemberData(nameof(Cases))]
    public void Of_HardCase_IsAnAnswerOrAPlainSentenceAndTheSameAgain(string name, string recipe, string fishing)
    {
        RetrieveReport report = Retrieve($"{recipe}\n{fishing}"), again = Retrieve($"{recipe}\n{fishing}");
        Assert.True(report.Path.SequenceEqual(again.Path), $"{name}: not the same again");
        string[] told = [.. RetrieveSentence.Of(report, UnitSystem.Metric)];
        Assert.NotEmpty(told);
        Assert.All(told, sentence => Assert.Matches(@"^[A-Z].*\.$", sentence));
        Assert.DoesNotContain("NaN", string.Join(' ', told), StringComparison.Ordinal);
        Assert.Equal(name == "longer than is followed", !report.HasFigures);
        Assert.All(report.Path, p => Assert.True(double.IsFinite(p.DepthM + p.AlongM + p.PitchDeg + p.LeanDeg + p.TensionMN)));
    }

    [Fact]
    public void Of_FlyOnTheBottom_LiesThereAndSaysWhen()
    {
        RetrieveReport report = Retrieve($"{Jig}\n  water depth: 50 cm\n  count down: 30 s\n  repeat: 3");
        RetrievePoint[] counted = [.. report.Path.Where(p => p.TimeS is > 25 and < 30)];
        Assert.All(counted, p => Assert.InRange(p.DepthM, 0.45, 0.5));
        Assert.InRange(counted.Max(p => p.DepthM) - counted.Min(p => p.DepthM), 0, 0.005);
        Assert.Contains("It first touches bottom, 0.5 m down", string.Join(' ', RetrieveSentence.Of(report, UnitSystem.Metric)), StringComparison.Ordinal);
    }

    [Fact]
    public void Of_LopsidedFly_LeansInsteadOfPretending()
    {
        RetrieveReport report = Retrieve($"{Lopsided}\n  repeat: 4");
        Assert.True(report.Path.Where(p => p.TimeS > 5).Average(p => p.LeanDeg) > 15, "eyes set 50° askew do not lean it");
    }

    // A bead so light that the fly weighs nothing in the water: the pause has nothing to do, and says so in a figure.
    [Fact]
    public void Of_FlyWithoutWeightInTheWater_HardlySinksInAPause()
    {
        const string recipe = """
            recipe: Hard Case
            intent: point down
            hook:
              size: 8
            parts:
              - part: foam
                material: closed-cell foam
                diameter: {0} mm
                at: 2 mm
                to: 12 mm
            fishing:
              knot: loop
              retrieve: strip 30 cm in 0.5 s, pause 3 s
              repeat: 3
              count down: 5 s
            """;
        double low = 1, high = 6;
        for (int i = 0; i < 30; i++)
        {
            double middle = (low + high) / 2;
            (low, high) = Weight(middle) > 0 ? (middle, high) : (low, middle);
        }

        Assert.InRange(Math.Abs(Weight(low)), 0, 2e-3);
        RetrieveReport report = Retrieve(Text(low));
        Assert.True(report.HasFigures);
        Assert.InRange(report.DeepestM, 0, 0.3);
        Assert.NotEmpty(RetrieveSentence.Of(report, UnitSystem.Metric));

        static string Text(double mm) => string.Format(System.Globalization.CultureInfo.InvariantCulture, recipe, mm);
        static double Weight(double mm) => Solve(Text(mm)).Report.Soaked.WetWeightG;
    }

    private static RetrieveReport Retrieve(string text) => Solve(text).Retrieve;

    private static SolvedFly Solve(string text)
    {
        var read = RecipeParser.Parse(text);
        return SolvedFly.Solve(read.Value ?? throw new InvalidOperationException(string.Join(' ', read.Errors)), ReportOptions.AttitudeOnly);
    }
}
