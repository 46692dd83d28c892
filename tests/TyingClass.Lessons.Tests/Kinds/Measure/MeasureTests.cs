using CsCheck;
using TyingClass.Lessons.Courses;
using TyingClass.Lessons.Grading;
using TyingClass.Lessons.Tests.Grading;
using TyingClass.Recipes.Text;
using Xunit;

namespace TyingClass.Lessons.Tests.Kinds.Measure;

public sealed class MeasureTests
{
    // By hand from the parts' masses and places, as the lesson's table has them.
    private const double KeyMm = 4.93 / 0.555;

    [Theory]
    [InlineData("8.9 mm")]
    [InlineData("0.89 cm")]
    [InlineData("0.35 in")]
    [InlineData("0.0089 m")]
    [InlineData(" 8.6mm ")]
    public void Grade_RightInAnyUnit_Passes(string answer)
    {
        GradeResult result = Grader.Grade(Flies.Measure, answer, 0);

        Assert.True(result.Passed);
        Assert.Contains("The engine finds 8.9 mm.", result.Feedback!.WhatItWouldDo, StringComparison.Ordinal);
        Assert.Null(result.Feedback.WhereToLook);
    }

    [Fact]
    public void Grade_AnyNumberInAnyUnit_IsGradedByItsLengthAlone()
    {
        (string Unit, double Mm)[] units = [("mm", 1), ("cm", 10), ("in", 25.4), ("ft", 304.8), ("m", 1000)];
        double keyMm = 1e3 * Grader.Grade(Flies.Measure, "1 mm", 0).Figures.Single().Si!.Value;

        Gen.Select(Gen.Double[0, 20], Gen.Int[0, units.Length - 1]).Sample(
            (mm, u) =>
            {
                string typed = FormattableString.Invariant($"{mm / units[u].Mm:F9} {units[u].Unit}");
                bool clear = Math.Abs(Math.Abs(mm - keyMm) - 0.5) > 1e-4;
                return !clear || Grader.Grade(Flies.Measure, typed, 0).Passed == Math.Abs(mm - keyMm) < 0.5;
            },
            iter: 60);
        Assert.Equal(KeyMm, keyMm, 0.02);
    }

    [Theory]
    [InlineData("7 mm", "your 7 mm is too small")]
    [InlineData("15 mm", "your 15 mm is too large")]
    public void Grade_Wrong_SaysWhichWayAndKeepsTheFigureBack(string answer, string reached)
    {
        Feedback feedback = Grader.Grade(Flies.Measure, answer, 0).Feedback!;

        Assert.Equal(new GoalResult("distance from the front of the shank to the mass center, within 0.5 mm", reached, false), feedback.Goals.Single());
        Assert.DoesNotContain("8.9", feedback.WhatItWouldDo + feedback.WhereToLook + feedback.Misreading, StringComparison.Ordinal);
        Assert.Equal("First hint.", feedback.WhereToLook);
        Assert.Contains("Most of the mass, and how far behind the front of the shank it sits: the bead, 0.23 g at 1.9 mm; ", feedback.Why,
            StringComparison.Ordinal);
    }

    [Fact]
    public void Grade_WrongAfterAllHints_TellsTheFigure() =>
        Assert.Equal("The engine finds 8.9 mm.", Grader.Grade(Flies.Measure, "7 mm", 1).Feedback!.WhereToLook);

    [Theory]
    [InlineData("12.3 mm", "That is the plain average.")]
    [InlineData("89 mm", "Your figure is ten times too large: look at the decimal point.")]
    [InlineData("8.9 in", "Your figure is 25.4 times too large: that is the number of millimeters in an inch.")]
    [InlineData("8.9 m", "Your figure is a thousand times too large: look at the unit.")]
    [InlineData("-8.9 mm", "Your figure has the right size but the wrong sign.")]
    [InlineData("3 mm", null)]
    public void Grade_KnownSlip_IsNamed(string answer, string? says) =>
        Assert.Equal(says, Grader.Grade(Flies.Measure, answer, 0).Feedback!.Misreading);

    [Theory]
    [InlineData("", "Write a number with its unit first, such as 5.6 mm.")]
    [InlineData("8.9", "has no unit")]
    [InlineData("about nine", "does not begin with a number")]
    [InlineData("8.9 g", "a length is needed")]
    [InlineData("8.9 mmm", "is not a unit")]
    [InlineData("NaN mm", "number")]
    [InlineData("1e999 mm", "number")]
    public void Grade_NoSuchNumber_IsExplainedAndNoAttempt(string answer, string text)
    {
        GradeResult result = Grader.Grade(Flies.Measure, answer, 0);

        Assert.False(result.IsAttempt);
        Assert.Contains(text, Assert.Single(result.Problems).Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Grade_ImperialReader_ReadsInches()
    {
        Feedback feedback = Grader.Grade(Flies.Measure, "8.9 mm", 0, new GradeOptions { Units = UnitSystem.Imperial }).Feedback!;

        Assert.Contains("The engine finds 0.35 in.", feedback.WhatItWouldDo, StringComparison.Ordinal);
        Assert.Contains("It would be 0.", feedback.Why, StringComparison.Ordinal);
        Assert.Contains(" in without the bead", feedback.Why, StringComparison.Ordinal);
    }

    [Fact]
    public void Grade_MassOfAPartAskedFor_IsNotToldWhileHintsAreInStore()
    {
        Lessons.Exercises.Exercise bead = Repo.Exercise("""
            id: m-part
            kind: measure
            title: A bead
            concepts: [mass center]
            prompt: What does the bead weigh?
            file: recipes/slate-minnow.fly.yaml
            quantity: mass of bead
            tolerance: 0.02 g
            hints:
              - Volume times density.
            """);
        Assert.DoesNotContain("bead", Grader.Grade(bead, "2 g", 0).Feedback!.Why, StringComparison.Ordinal);
        Assert.Contains("mass of the bead is 0.23 g", Grader.Grade(bead, "2 g", 1).Feedback!.Why, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("line angle at 0.3 m/s", 0.3)]
    [InlineData("line angle", null)]
    public void Grade_FigureAtAnotherSpeed_IsShownAtThatSpeed(string quantity, double? speedMS)
    {
        Lessons.Exercises.Exercise line = Repo.Exercise($"""
            id: m-speed
            kind: measure
            title: The slope of the leader
            concepts: [mass center]
            prompt: How steep is the leader?
            file: recipes/slate-minnow.fly.yaml
            quantity: {quantity}
            tolerance: 4°
            """);
        double keyRad = Grader.Grade(line, "1°", 0).Figures.Single().Si!.Value;

        Feedback feedback = Grader.Grade(line, FormattableString.Invariant($"{keyRad * 180 / Math.PI:F2}°"), 0).Feedback!;

        Assert.Equal(speedMS, feedback.Picture!.SpeedMS);
    }

    [Theory]
    [InlineData("quantity: mass centre", "tolerance: 0.5 mm", 7, "“centre”")]
    [InlineData("quantity: changes", "tolerance: 1", 7, "cannot be measured: it compares with a fly given.")]
    [InlineData("quantity: mass", "tolerance: 0 g", 8, "The tolerance must be more than nothing.")]
    [InlineData("quantity: mass", "tolerance: wide", 8, "wide")]
    [InlineData("quantity: mass", "tolerance: 2 mm", 8, "mm")]
    public void Read_QuantityOrToleranceThatIsNone_IsToldWithItsLine(string quantity, string tolerance, int line, string said)
    {
        LessonResult read = Repo.Fence("exercise", $"""
            id: m-1
            kind: measure
            title: M
            concepts: [mass center]
            prompt: How much?
            file: recipes/slate-minnow.fly.yaml
            {quantity}
            {tolerance}
            """);

        AuthorError error = Assert.Single(read.Errors, e => e.Line == Repo.LinesBeforeFence + line);
        Assert.Contains(said, error.Text, StringComparison.Ordinal);
    }
}
