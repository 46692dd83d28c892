using TyingClass.Lessons.Courses;
using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Grading;
using TyingClass.Lessons.Practice;
using TyingClass.Recipes.Text;
using Xunit;

namespace TyingClass.Lessons.Tests.Practice;

public sealed class NoRepeatTests
{
    // The five sizes sold in a range, of four materials, and a place that makes no difference to the figure asked for.
    private const string Bead = """
        kind: measure
        title: The bead
        concepts: [mass center]
        prompt: What does the bead weigh?
        file: recipes/slate-minnow.fly.yaml
        quantity: mass of bead
        tolerance: 0.05 g
        vary:
          - parts[0].size: 2.4 mm … 4.8 mm
          - parts[0].material: [glass, brass, lead, tungsten]
          - parts[0].at: 0 mm … 2 mm
        """;

    [Fact]
    public void Draw_ARangeOfSizes_GivesSizesThatShopsSell()
    {
        PracticeSet set = Set(Bead);

        string[] sizes = [.. Enumerable.Range(1, 16)
            .Select(seed => RecipeDraft.Parse(PracticeProblems.Draw(set, seed, 0.2)!.RecipeText!).Value!.Get("parts[0].size")!)
            .Distinct().Order(StringComparer.Ordinal)];

        Assert.Equal(["2.4 mm", "2.8 mm", "3.2 mm", "4 mm", "4.8 mm"], sizes);
    }

    [Theory]
    [InlineData(0.2)]
    [InlineData(0.9)]
    public void Draw_MeasuresOfASet_NeverAskForTheSameFigureTwice(double level)
    {
        PracticeSet set = Set(Bead);

        string[] figures = [.. Enumerable.Range(1, 16).Select(seed => Figure(PracticeProblems.Draw(set, seed, level)!))];

        Assert.Equal(figures.Length, figures.Distinct().Count());
    }

    [Fact]
    public void Draw_AtWhateverLevelEachProblemIsMet_GivesNoFlyTwice()
    {
        PracticeSet set = Set("""
            kind: predict
            title: Nose
            concepts: [mass center]
            prompt: Which end leads?
            file: recipes/slate-minnow.fly.yaml
            ask: nose
            vary:
              - parts[0].size: 2.4 mm … 5.6 mm
              - hook.eye: [straight, down 25°, up 25°]
              - parts[0].material: [glass, brass, tungsten]
            """);

        Assert.InRange(set.Apart, 8, 24);
        string[] flies = [.. Enumerable.Range(1, set.Apart).Select(seed => PracticeProblems.Draw(set, seed, seed % 5 / 5.0)?.RecipeText).OfType<string>()];

        Assert.True(flies.Length >= 8);
        Assert.Equal(flies.Length, flies.Distinct().Count());
    }

    [Fact]
    public void Draw_SameSeedAndLevel_IsTheSameProblemHoweverManyWereDrawnBefore()
    {
        PracticeSet fresh = Set(Bead), used = Set(Bead);
        for (int seed = 1; seed <= 6; seed++) PracticeProblems.Draw(used, seed);

        Assert.Equal(PracticeProblems.Draw(fresh, 7)!.RecipeText, PracticeProblems.Draw(used, 7)!.RecipeText);
    }

    private static string Figure(Exercise problem) =>
        Grader.Grade(problem, "1 g", 0).Figures.Single().Si is { } key ? Units.Write(key, Dimension.Mass) : "none";

    private static PracticeSet Set(string body)
    {
        LessonResult result = Repo.Fence("practice", body);
        Assert.Equal([], result.Errors);
        return result.Lesson!.Blocks.OfType<PracticeBlock>().Single().Practice;
    }
}
