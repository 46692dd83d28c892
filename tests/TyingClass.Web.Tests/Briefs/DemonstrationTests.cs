using System.Collections.Immutable;
using TyingClass.Lessons.Courses;
using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Grading;
using TyingClass.Recipes.Model;
using TyingClass.Recipes.Text;
using TyingClass.Web.Briefs;
using TyingClass.Web.Tests.Architecture;
using Xunit;

namespace TyingClass.Web.Tests.Briefs;

/// <summary>What the brief offers to show, for every exercise of the course and every wrong answer its author foresaw.</summary>
public sealed class DemonstrationTests
{
    [Fact]
    public void Of_EveryExercise_TwoFliesDifferInOneThing()
    {
        using CourseFolder course = new(Path.Combine(ProjectFile.Root, "lessons"));
        int pairs = 0;
        foreach (Exercise exercise in course.Current.Exercises)
        {
            foreach (string? theirs in exercise.WrongAnswers.Select(w => exercise.Kind.AnswerIsRecipe ? w.Answer : null).DefaultIfEmpty(null))
            {
                if (Demonstration.Of(exercise, theirs) is not { First: { } first, Second: { } second } show) continue;
                pairs++;
                ImmutableArray<RecipeChange> changes = ChangeList.Between(Parsed(first), Parsed(second));
                Assert.True(Owners(changes) == 1, $"{exercise.Id}: {show.Words}");
                Assert.True(Things(changes) == 1, $"{exercise.Id}: {show.Words}");
            }
        }

        Assert.True(pairs > 60, $"{pairs} pairs");
    }

    // Of one part, of the hook, or of how it is fished.
    private static int Owners(ImmutableArray<RecipeChange> changes) =>
        changes.Select(c => c.Path.Contains('.', StringComparison.Ordinal) ? c.Path[..c.Path.LastIndexOf('.')] : c.Path).Distinct().Count();

    // Where a part stands, what it is made of and how much: each is one thing.
    private static int Things(ImmutableArray<RecipeChange> changes) => changes.Select(c => c.Path[(c.Path.LastIndexOf('.') + 1)..] switch
    {
        "at" or "to" => "place",
        "material" or "density" or "mass" or "balls" => "stuff",
        "size" when !c.Path.StartsWith("hook.", StringComparison.Ordinal) => "stuff",
        var other => other,
    }).Distinct().Count();

    private static Recipe Parsed(string text) => RecipeParser.Parse(text).Value!;
}
