using TyingClass.Balance.Reports;
using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Grading;
using TyingClass.Lessons.Kinds.Repair;
using TyingClass.Lessons.Tests.Grading;
using TyingClass.Recipes.Advice;
using TyingClass.Recipes.Text;
using TyingClass.Telling.Sentences;
using Xunit;

namespace TyingClass.Lessons.Tests.Kinds.Repair;

public sealed class RepairTests
{
    [Fact]
    public void Grade_FlyAsGiven_IsNoAttempt()
    {
        GradeResult result = Grader.Grade(Flies.Repair, Flies.Darter, 0);

        Assert.False(result.IsAttempt);
        Assert.Contains("nothing on it is changed yet", result.Problems.Single().Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Grade_LargerEyesOnTheWrongSide_FailsAndSaysWhyInFourParts()
    {
        GradeResult result = Grader.Grade(Flies.Repair, Flies.HeavierDarter, 0);

        Assert.True(result.IsAttempt);
        Assert.False(result.Passed);
        Feedback feedback = result.Feedback!;
        Assert.Matches(
            @"^Soaked and pulled at 0\.4 m/s on a loop knot, it does not stay point up\. In the point-up attitude its weight acts [0-9.]+ mm above "
            + @"the hinge line \(keel height −[0-9.]+ mm\)\. Expect it to flip and ride point down\.$",
                feedback.WhatItWouldDo);
        Assert.Equal(["of 100 flies tied like it, at least 90 ride as intended", "added mass: at most 0.05 g"], feedback.Goals.Select(g => g.Asked));
        Assert.Equal("0 %", feedback.Goals[0].Reached);
        Assert.Matches(@"^0\.[0-9]+ g$", feedback.Goals[1].Reached);
        Assert.Equal([false, false], feedback.Goals.Select(g => g.Met));
        Assert.Equal("With the dumbbell eyes larger, just as few flies ride as intended as before.", feedback.First);
        Assert.StartsWith("The share of flies tied like it that ride as intended stays 0 %. The added mass goes from 0 g to 0.",
            feedback.Why, StringComparison.Ordinal);
        Assert.All(result.Why, reason => Assert.Equal("dumbbell eyes", reason.Shares.Single().What.Word));
        Assert.Equal("First hint.", feedback.WhereToLook);
        Assert.Equal("More weight on the wrong side.", feedback.Misreading);
        Assert.Contains(feedback.Cautions, c => c.Contains("Hooks are sharp", StringComparison.Ordinal));
        Assert.NotNull(result.Report);
    }

    [Fact]
    public void Grade_NoSingleChangeDoesItAll_LastHintIsAFirstStepThatWorks()
    {
        Exercise exercise = Repo.Exercise("""
            id: r-2
            kind: repair
            title: R
            concepts: [keel side]
            prompt: Turn it over, and make it heavier.
            file: recipes/reed-darter.fly.yaml
            allow:
              - parts[0].side: [top, under]
              - parts[0].size: 3.2 mm … 5.6 mm
            goals:
              - rides as intended: at least 90 %
              - added mass: between 0.02 g and 0.5 g
            hints: [First hint.]
            model answer:
              parts[0].side: top
              parts[0].size: 4.8 mm
            """);

        string hint = Grader.Grade(exercise, Flies.LighterDarter, failedAttempts: 9).Feedback!.WhereToLook!;

        Assert.StartsWith("No single change reaches every goal from here. A first step: ", hint, StringComparison.Ordinal);
        Assert.EndsWith("That leaves added mass: between 0.02 g and 0.5 g.", hint, StringComparison.Ordinal);
        // The step it names does what it says, and one more change from there does the rest.
        Assert.Equal([true, false], Grader.Grade(exercise, Flies.DarterOnTop, 0).Feedback!.Goals.Select(g => g.Met));
        Assert.Contains("top", hint, StringComparison.Ordinal);
        Assert.StartsWith("The smallest change that does it: ", Grader.Grade(exercise, Flies.DarterOnTop, 9).Feedback!.WhereToLook, StringComparison.Ordinal);
    }

    [Fact]
    public void Grade_EyesOnTheOtherSide_Passes()
    {
        GradeResult result = Grader.Grade(Flies.Repair, Flies.DarterOnTop, 3);

        Assert.True(result.Passed);
        Assert.Null(result.Feedback!.WhereToLook);
        Assert.Contains("rides point up as you meant it", result.Feedback.WhatItWouldDo, StringComparison.Ordinal);
    }

    [Fact]
    public void Grade_KnownMisreading_IsNamedWithItsConcept()
    {
        Feedback feedback = Grader.Grade(Flies.Repair, Flies.HeavierDarter, 0).Feedback!;

        Assert.Equal("More weight on the wrong side.", feedback.Misreading);
        Assert.Equal("mass center", feedback.MisreadConcept);
    }

    [Fact]
    public void Grade_FailedAgainAndAgain_OpensHintsOneAtATimeAndThenTheAdviser()
    {
        Assert.Equal("First hint.", Hint(0));
        Assert.Equal("Second hint.", Hint(1));
        Assert.Equal("The smallest change that does it: tie the dumbbell eyes on top of the shank. It adds no mass.", Hint(2));

        static string? Hint(int failed) =>
            Grader.Grade(Flies.Repair, Flies.LighterDarter, failed, new GradeOptions { Adviser = Adviser }).Feedback!.WhereToLook;
        static IEnumerable<Proposal> Adviser(
            Recipes.Model.Recipe recipe, Func<Recipes.Model.Recipe, ReportOptions, bool> reached, Func<Adjustable, int, bool> allowed) =>
            [new Proposal(
                new Adjustable("parts[0].side", "other side", 1, _ => recipe, _ => new AdvisedSide("dumbbell eyes", Recipes.Model.Side.Top)), 1, 0)];
    }

    [Fact]
    public void Grade_HintsUsedUp_TheEngineAdvisesAChangeThatPasses()
    {
        Proposal best = LastHint.Proposals(Flies.Repair, RecipeParser.Parse(Flies.LighterDarter).Value!)[0];

        Assert.True(Grader.Grade(Flies.Repair, RecipeWriter.Write(best.Recipe), 0).Passed);
        Assert.Contains(
            AdviceSentence.Of(best.Advised, UnitSystem.Metric),
            Grader.Grade(Flies.Repair, Flies.LighterDarter, 2).Feedback!.WhereToLook!, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("eye: straight", "eye: up", "hook.eye",
        "That may not be changed in this exercise. You may change the side the dumbbell eyes sit on (top or under) and the size of the dumbbell eyes (3.2 "
            + "mm to 5.6 mm).")]
    [InlineData("size: 4 mm", "size: 7 mm", "parts[0].size", "The size of the dumbbell eyes is 7 mm in your answer. Here it may be 3.2 mm to 5.6 mm.")]
    [InlineData("size: 4 mm", "size: 0.3 in", "parts[0].size", "Here it may be 3.2 mm to 5.6 mm.")]
    [InlineData("at: 2 mm", "at: 3 mm", "parts[0].at", "Your answer has the place of the dumbbell eyes 3 mm instead of 2 mm.")]
    [InlineData("    size: 4 mm\n", "", "parts[0].size", "is left out. Here it must be stated: 3.2 mm to 5.6 mm.")]
    [InlineData("intent: point up", "intent: point down", "intent", "which way up it is meant to ride point down instead of point up")]
    [InlineData("speed: 0.4 m/s", "speed: 1 m/s", "fishing.speed", "the speed 1 m/s instead of 0.4 m/s")]
    [InlineData("knot: loop", "knot: cinched", "fishing.knot", "the knot cinched instead of loop")]
    public void Grade_ChangeThatIsNotAllowed_IsExplainedAndNoAttempt(string old, string now, string path, string text)
    {
        string answer = Flies.Darter.Replace(old, now, StringComparison.Ordinal);

        GradeResult result = Grader.Grade(Flies.Repair, answer, 0);

        Assert.False(result.IsAttempt);
        Assert.Null(result.Feedback);
        AnswerProblem problem = Assert.Single(result.Problems);
        Assert.Equal(path, problem.Path);
        Assert.Contains(text, problem.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Grade_ChangeThatIsNotAllowed_IsPlacedInTheText()
    {
        AnswerProblem problem = Grader.Grade(Flies.Repair, Flies.Darter.Replace("eye: straight", "eye: up", StringComparison.Ordinal), 0).Problems.Single();

        Assert.Equal((6, 8), (problem.Line, problem.Column));
    }

    [Fact]
    public void Grade_PartAddedOrTakenOut_IsExplained()
    {
        string more = Flies.Darter.Replace("fishing:", "  - part: tail\n    at: 17 mm\nfishing:", StringComparison.Ordinal);
        string less =
            Flies.Darter.Replace("  - part: body\n    material: floss\n    diameter: 2.4 mm\n    at: 7 mm\n    to: 17 mm\n", "", StringComparison.Ordinal);

        Assert.Contains("has a new part, tail", Grader.Grade(Flies.Repair, more, 0).Problems.Single().Text, StringComparison.Ordinal);
        Assert.Contains("leaves out the body", Grader.Grade(Flies.Repair, less, 0).Problems.Single().Text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("recipe: Reed Darter", "recipe: My own darter")]
    [InlineData("at: 2 mm", "at: 0.2 cm")]
    [InlineData("speed: 0.4 m/s", "speed: 40 cm/s")]
    public void Grade_OnlyWordsOrUnitsDiffer_IsNoChange(string old, string now)
    {
        GradeResult expected = Grader.Grade(Flies.Repair, Flies.DarterOnTop, 0);

        GradeResult result = Grader.Grade(Flies.Repair, Flies.DarterOnTop.Replace(old, now, StringComparison.Ordinal), 0);

        Assert.True(result.Passed);
        Assert.Equal(expected.Figures, result.Figures);
        Assert.Equal(expected.Feedback!.Why, result.Feedback!.Why);
    }

    [Theory]
    [InlineData("")]
    [InlineData("   \n")]
    public void Grade_NothingSubmitted_IsExplained(string answer) =>
        Assert.Contains("no recipe here yet", Assert.Single(Grader.Grade(Flies.Repair, answer, 0).Problems).Text, StringComparison.Ordinal);

    [Fact]
    public void Grade_RecipeThatDoesNotParse_GivesEveryErrorWithPlaceAndPath()
    {
        GradeResult result = Grader.Grade(Flies.Repair,
            Flies.Darter.Replace("size: 4 mm", "size: 4", StringComparison.Ordinal).Replace("material: floss", "material: flos", StringComparison.Ordinal), 0);

        Assert.False(result.IsAttempt);
        Assert.Equal([("parts[0].size", 10), ("parts[1].material", 14)], result.Problems.Select(p => (p.Path!, p.Line)));
    }

    [Fact]
    public void Grade_MoreThan64KB_IsRefused() =>
        Assert.Contains("64 KB", Grader.Grade(Flies.Repair, Flies.Darter + new string('#', 70_000), 0).Problems.Single().Text, StringComparison.Ordinal);

    [Fact]
    public void Grade_SameAnswerTwice_IsTheSameGrade()
    {
        GradeResult first = Grader.Grade(Flies.Repair, Flies.HeavierDarter, 0), second = Grader.Grade(Flies.Repair, Flies.HeavierDarter, 0);

        Assert.Equal(first.Figures, second.Figures);
        Assert.Equal(first.Feedback!.Goals, second.Feedback!.Goals);
        Assert.Equal(first.Feedback.WhatItWouldDo, second.Feedback.WhatItWouldDo);
        Assert.Equal((BalanceEngine.Version, Flies.Repair.Version), (first.EngineVersion, first.ExerciseVersion));
    }

    [Fact]
    public void Grade_ImperialReader_ReadsInchesAndOuncesAndTheSameGrade()
    {
        GradeResult metric = Grader.Grade(Flies.Repair, Flies.LighterDarter, 0),
            imperial = Grader.Grade(Flies.Repair, Flies.LighterDarter, 0, new GradeOptions { Units = UnitSystem.Imperial });

        Assert.Equal(metric.Figures, imperial.Figures);
        Assert.Contains("ft/s", imperial.Feedback!.WhatItWouldDo, StringComparison.Ordinal);
        Assert.Contains("in above the hinge line", imperial.Feedback.WhatItWouldDo, StringComparison.Ordinal);
        Assert.EndsWith(" gr", imperial.Feedback.Goals[1].Reached, StringComparison.Ordinal);
        Assert.Equal(
            "added mass: at most 0.772 gr",
            imperial.Feedback.Goals[1].Asked);
    }

    [Fact]
    public void Grade_GoalMissedByAHair_ShowsEnoughDigitsToTellThemApart()
    {
        double massKg = new Lessons.Quantities.FlyFigures(RecipeParser.Parse(Flies.LighterDarter).Value!).Moments(WetState.Soaked).MassKg;
        Goal hairOff = new("mass", double.NegativeInfinity, massKg * (1 - 1e-5));
        Exercise hair = Flies.Repair with { Task = (RepairTask)Flies.Repair.Task with { Goals = [hairOff] } };

        GoalResult goal = Grader.Grade(hair, Flies.LighterDarter, 0).Feedback!.Goals.Single();

        Assert.False(goal.Met);
        Assert.DoesNotContain(goal.Reached, goal.Asked, StringComparison.Ordinal);
    }
}
