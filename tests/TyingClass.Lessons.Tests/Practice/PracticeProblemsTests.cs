using TyingClass.Lessons.Checking;
using TyingClass.Lessons.Courses;
using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Grading;
using TyingClass.Lessons.Kinds.Measure;
using TyingClass.Lessons.Practice;
using TyingClass.Recipes.Text;
using Xunit;

namespace TyingClass.Lessons.Tests.Practice;

public sealed class PracticeProblemsTests
{
    private static readonly PracticeSet Nose = Set("""
        kind: predict
        title: Nose
        concepts: [mass center]
        prompt: Which end leads?
        file: recipes/slate-minnow.fly.yaml
        ask: which way up
        vary:
          - parts[0].size: 2.4 mm … 5.6 mm
          - parts[0].material: [brass, tungsten, glass]
          - hook.eye: [straight, down 25°, up 25°]
        """);

    [Fact]
    public void Draw_ManySeeds_GivesFairProblemsInsideTheRanges()
    {
        for (int seed = 1; seed <= 6; seed++)
        {
            Exercise problem = PracticeProblems.Draw(Nose, seed)!;

            Assert.Null(KeyClearance.Complaint(problem));
            RecipeDraft draft = RecipeDraft.Parse(problem.RecipeText!).Value!;
            Assert.True(Units.TryParse(draft.Get("parts[0].size"), Dimension.Length, out double sizeM, out _));
            Assert.InRange(sizeM, 2.399e-3, 5.601e-3);
            Assert.Contains(draft.Get("parts[0].material"), new[] { "brass", "tungsten", "glass" });
            Assert.Contains(draft.Get("hook.eye"), new[] { "straight", "down 25°", "up 25°" });
            Assert.Contains(problem.Choices, c => Grader.Grade(problem, c, 0).Passed);
        }
    }

    [Fact]
    public void Draw_SeedsApart_GiveProblemsApart() =>
        Assert.True(Enumerable.Range(1, 6).Select(seed => PracticeProblems.Draw(Nose, seed)!.RecipeText).Distinct().Count() >= 4);

    [Fact]
    public void Draw_MeasureAtAHigherLevel_AsksForAFinerFigure()
    {
        PracticeSet set = Set("""
            kind: measure
            title: Where
            concepts: [mass center]
            prompt: Where?
            file: recipes/slate-minnow.fly.yaml
            quantity: mass center, x
            tolerance: 0.8 mm
            vary:
              - parts[0].size: 2.4 mm … 4.8 mm
            """);

        Assert.Equal("1.6 mm", Tolerance(PracticeProblems.Draw(set, 1, 0)));
        Assert.Equal("0.8 mm", Tolerance(PracticeProblems.Draw(set, 1, 0.5)));
        Assert.Equal("0.4 mm", Tolerance(PracticeProblems.Draw(set, 1, 1)));
    }

    private static string Tolerance(Exercise? problem) => Assert.IsType<MeasureTask>(problem!.Task).ToleranceText;

    [Fact]
    public void Draw_Repair_CanBeRepairedWithinWhatIsAllowed()
    {
        PracticeSet set = Set("""
            kind: repair
            title: Mend
            concepts: [keel side]
            prompt: Make it ride point up.
            file: recipes/reed-darter.fly.yaml
            allow:
              - parts[0].side
              - parts[0].size: 2.8 mm … 5.6 mm
            goals:
              - rides as intended: at least 90 %
            vary:
              - parts[0].size: 3 mm … 5 mm
            """);

        Exercise problem = PracticeProblems.Draw(set, 3)!;

        Assert.False(Grader.Grade(problem, problem.RecipeText!, 0).Passed);
        Assert.True(Grader.Grade(problem, RecipeWriter.Write(LastHint.Proposals(problem, RecipeParser.Parse(problem.RecipeText!).Value!)[0].Recipe), 0).Passed);
    }

    [Theory]
    [InlineData("kind: explain\ntitle: E\nconcepts: [keel side]\nprompt: Why?\nvary:\n  - hook.eye: [up, down]", "predict, measure and repair problems only")]
    [InlineData("kind: predict\ntitle: P\nconcepts: [keel side]\nprompt: P\nfile: recipes/reed-darter.fly.yaml\nask: which way up", "“vary” is missing")]
    [InlineData("kind: predict\ntitle: P\nconcepts: [keel side, mass center]\nprompt: P\nfile: recipes/reed-darter.fly.yaml\nask: nose\nvary:\n  - "
        + "hook.eye: [up, down]", "Practice is of one concept")]
    [InlineData("kind: predict\ntitle: P\nconcepts: [keel side]\nprompt: P\nfile: recipes/reed-darter.fly.yaml\nask: nose\nvary:\n  - parts[9].size: 2 mm "
        + "… 3 mm", "there is no parts[9].size")]
    [InlineData("kind: predict\ntitle: P\nconcepts: [keel side]\nprompt: P\nfile: recipes/reed-darter.fly.yaml\nask: nose\nvary:\n  - parts[0].size",
        "between what parts[0].size varies")]
    [InlineData("id: a-1\nkind: predict\ntitle: P\nconcepts: [keel side]\nprompt: P\nfile: recipes/reed-darter.fly.yaml\nask: nose\nvary:\n  - hook.eye: "
        + "[up, down]", "“id” is not a key of a practice fence")]
    public void Read_BadPracticeFence_SaysWhy(string body, string text) =>
        Assert.Contains(text, string.Join('\n', Repo.Fence("practice", body).Errors.Select(e => e.Text)), StringComparison.Ordinal);

    private static PracticeSet Set(string body)
    {
        LessonResult result = Repo.Fence("practice", body);
        Assert.Equal([], result.Errors);
        return result.Lesson!.Blocks.OfType<PracticeBlock>().Single().Practice;
    }
}
