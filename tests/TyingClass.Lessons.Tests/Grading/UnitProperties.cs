using System.Globalization;
using CsCheck;
using TyingClass.Lessons.Grading;
using TyingClass.Lessons.Kinds.Measure;
using TyingClass.Lessons.Kinds.Repair;
using Xunit;

namespace TyingClass.Lessons.Tests.Grading;

/// <summary>A grade never depends on the unit typed.</summary>
public sealed class UnitProperties
{
    // Exact by definition: 1 in = 25.4 mm, 1 lb = 453.59237 g = 16 oz = 7000 gr (international yard and pound agreement, 1959).
    private static readonly (string Unit, decimal Mm)[] Lengths = [("mm", 1m), ("cm", 10m), ("m", 1000m), ("in", 25.4m)];
    private static readonly (string Unit, decimal G)[] Masses = [("g", 1m), ("mg", 0.001m), ("oz", 28.349523125m), ("gr", 0.06479891m)];

    private static readonly Gen<int> Unit = Gen.Int[0, 3];

    // Every figure is held against the metric twin's: pass or fail, and every digit the grade was made from.
    [Fact]
    public void Repair_SameFlyInAnyUnits_IsTheSameGradeToTheLastDigit() =>
        Gen.Select(Gen.Int[32, 56], Gen.Int[10, 60], Gen.Bool, Gen.Select(Unit, Unit, Unit, Unit))
            // The given fly itself is no answer: nothing was changed.
            .Where(t => t is not (40, 40, false, _)).Sample(
            (size, speed, top, units) =>
            {
                string metric = Darter(size / 10m, speed / 100m, top, (0, 0, 0, 0)), typed = Darter(size / 10m, speed / 100m, top, units);
                GradeResult a = Grader.Grade(Anything, metric, 0, Quiet), b = Grader.Grade(Anything, typed, 0, Quiet);
                Assert.True(a.IsAttempt, metric);
                Assert.True(b.IsAttempt, typed + string.Join(' ', b.Problems.Select(p => p.Text)));
                Assert.Equal(a.Passed, b.Passed);
                Assert.Equal(a.Figures, b.Figures);
                Assert.Equal(a.Feedback!.Goals, b.Feedback!.Goals);
                Assert.Equal(a.Feedback.Why, b.Feedback.Why);
                return true;
            },
            iter: 40);

    // The figure itself is told back as it was typed, so "0.456 g" and "456 mg" read unlike.
    private static (string, bool, string) Judged(GoalResult goal)
    {
        Assert.StartsWith("your ", goal.Reached, StringComparison.Ordinal);
        return (goal.Asked, goal.Met, goal.Met ? goal.Reached.Split(' ')[^1] : goal.Reached[goal.Reached.IndexOf(" is ", StringComparison.Ordinal)..]);
    }

    [Fact]
    public void Measure_SameMassInAnyUnit_IsTheSameGrade()
    {
        Lessons.Exercises.Exercise exercise = Flies.Measure with { Task = new MeasureTask("mass", "0.03 g") };
        Gen.Select(Gen.Int[450, 660], Unit).Sample(
            (mg, u) =>
            {
                string typed = Typed(mg / 1000m, Masses[u]);
                GradeResult a = Grader.Grade(exercise, Typed(mg / 1000m, Masses[0]), 0), b = Grader.Grade(exercise, typed, 0);
                Assert.True(a.Passed == b.Passed, typed);
                Assert.Equal(a.Feedback!.Goals.Select(Judged), b.Feedback!.Goals.Select(Judged));
                return true;
            },
            iter: 60);
    }

    private static readonly GradeOptions Quiet = new() { Adviser = (_, _, _) => [] };

    private static readonly Lessons.Exercises.Exercise Anything = Flies.Repair with
    {
        Task = (RepairTask)Flies.Repair.Task with
        {
            Allow = [new("parts[0].side", null, null), new("parts[0].size", "3.2 mm", "5.6 mm"), new("fishing.speed", null, null)],
        },
    };

    private static string Darter(decimal sizeMm, decimal speedMS, bool top, (int Size, int At, int Wing, int Length) units) =>
        (top ? Flies.DarterOnTop : Flies.Darter)
        .Replace("size: 4 mm", $"size: {Typed(sizeMm, Lengths[units.Size])}", StringComparison.Ordinal)
        .Replace("at: 2 mm", $"at: {Typed(2m, Lengths[units.At])}", StringComparison.Ordinal)
        .Replace("length: 35 mm", $"length: {Typed(35m, Lengths[units.Length])}", StringComparison.Ordinal)
        .Replace("mass: 0.06 g", $"mass: {Typed(0.06m, Masses[units.Wing])}", StringComparison.Ordinal)
        .Replace("speed: 0.4 m/s", $"speed: {Typed(speedMS, units.At == 3 ? ("ft/s", 0.3048m) : ("m/s", 1m))}", StringComparison.Ordinal);

    private static string Typed(decimal value, (string Unit, decimal Size) unit) =>
        (value / unit.Size).ToString("0.################", CultureInfo.InvariantCulture) + " " + unit.Unit;
}
