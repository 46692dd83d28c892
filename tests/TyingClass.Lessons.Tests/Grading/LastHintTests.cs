using TyingClass.Lessons.Courses;
using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Grading;
using TyingClass.Recipes.Advice;
using TyingClass.Recipes.Model;
using TyingClass.Recipes.Text;
using Xunit;

namespace TyingClass.Lessons.Tests.Grading;

/// <summary>What the adviser calls the smallest change is the smallest that can be made, and it is enough.</summary>
public sealed class LastHintTests
{
    private static readonly Lazy<Course> Lessons = new(() =>
    {
        using CourseFolder folder = new(Repo.Lessons);
        return folder.Current;
    });

    [Theory]
    // The author’s answer with eyes too light for the strip.
    [InlineData("parts[0].size", "4 mm")]
    [InlineData("parts[0].size", "4.8 mm")]
    public void Proposals_ForTheCulvertEel_AreEnoughAndOneStepLessIsNot(string path, string value)
    {
        Exercise exercise = Lessons.Value.TryFindExercise("safe-04", out _, out Exercise found) ? found : throw new ArgumentException("safe-04 is gone.");
        RecipeDraft draft = RecipeDraft.Parse(exercise.ModelAnswer!).Value!.With(path, value);
        Recipe from = RecipeParser.Parse(draft).Value!;
        Assert.False(Passes(exercise, from));

        Proposal[] proposals = [.. LastHint.Proposals(exercise, from)];

        Assert.NotEmpty(proposals);
        Assert.All(proposals, p =>
        {
            Assert.True(Passes(exercise, p.Recipe), $"{p.Path} by {p.Steps} steps is not enough.");
            // No step at all is the fly itself, which does not pass.
            if (p.Steps > 1) Assert.False(Passes(exercise, p.Change.At(p.Steps - 1)), $"{p.Path}: one step less than {p.Steps} would do.");
        });
    }

    private static bool Passes(Exercise exercise, Recipe fly) =>
        Grader.Grade(exercise, RecipeDraft.Of(fly).ToText(), 0, GradeOptions.WithoutAdvice).Passed;
}
