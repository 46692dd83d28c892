using TyingClass.Lessons.Courses;
using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Grading;
using TyingClass.Lessons.Kinds.Predict;
using TyingClass.Recipes.Text;
using Xunit;

namespace TyingClass.Lessons.Tests.Kinds.Predict;

/// <summary>What whoever only turns the answer round, or says it again, would get by with the course's own predictions.</summary>
public sealed class FreshTests
{
    private static readonly Lazy<(Exercise First, Exercise Fresh)[]> Drawn = new(() =>
    {
        using CourseFolder folder = new(Repo.Lessons);
        return
        [
            .. folder.Current.Exercises.Where(e => e.Task is PredictTask).AsParallel().AsOrdered()
                .Select(e => (e, FreshProblem.Of(e, 1))).Where(p => p.Item2 is not null).Select(p => (p.e, p.Item2!)),
        ];
    });

    [Fact]
    public void Of_TheCourse_FindsAFreshFlyForNearlyEveryOne()
    {
        using CourseFolder folder = new(Repo.Lessons);
        int asked = folder.Current.Exercises.Count(e => e.Task is PredictTask);

        Assert.InRange(Drawn.Value.Length, asked * 0.95, asked);
    }

    [Fact]
    public void Of_AChange_IsNeverThatChangeNorThatChangeUndone()
    {
        Assert.All(Drawn.Value.Where(p => p.First.Task is PredictTask { Question: ChangeIn }), p =>
        {
            (RecipeChange[] asked, RecipeChange[] fresh) = (Changes(p.First), Changes(p.Fresh));
            Assert.NotEmpty(fresh);
            Assert.DoesNotContain(fresh, f => asked.Any(a => a.Path == f.Path && a.Before == f.After && a.After == f.Before));
            Assert.False(asked.Select(Line).SequenceEqual(fresh.Select(Line)), p.First.Id);
        });
    }

    // A bead that gets heavier is asked again of a bead, or of another part: never of the hook's gape.
    [Fact]
    public void Of_AChange_IsOfTheLikeOfWhatWasAsked()
    {
        Assert.All(Drawn.Value.Where(p => p.First.Task is PredictTask { Question: ChangeIn }), p =>
            Assert.Subset(Changes(p.First).Select(Owner).ToHashSet(), Changes(p.Fresh).Select(Owner).ToHashSet()));

        static string Owner(RecipeChange change) => change.Path.Split('.', '[')[0];
    }

    // Nobody is failed over a degree or half a millimeter, whichever way the answer goes.
    [Fact]
    public void Of_AChange_IsPlainOrNone()
    {
        Assert.All(Drawn.Value.Where(p => p.First.Task is PredictTask { Question: ChangeIn }), p =>
        {
            GradedFigure[] figures = [.. Grader.Grade(p.Fresh, Key(p.Fresh), 0).Figures];
            double change = Math.Abs(figures[1].Si!.Value - figures[0].Si!.Value);
            // In the quantities that a beginner is failed over: millimeters of the fly, and degrees.
            double? plain = figures[0].Quantity switch
            {
                "pitch" => 10 * Math.PI / 180,
                "keel height" or "level-line keel" or "mass center, x" => 0.5e-3,
                _ => null,
            };
            if (plain is { } least) Assert.True(Key(p.Fresh) == ChangeIn.Stays ? change < 0.1 * least : change >= least, p.First.Id);
        });
    }

    [Fact]
    public void Of_TheCourse_NeitherTheOppositeNorTheSameAnswerIsWorthAVote()
    {
        (string Key, string Fresh)[] keys = [.. Drawn.Value.Select(p => (Key(p.First), Key(p.Fresh)))];
        (string Key, string Fresh)[] changes =
            [.. Drawn.Value.Where(p => p.First.Task is PredictTask { Question: ChangeIn }).Select(p => (Key(p.First), Key(p.Fresh)))];

        Assert.InRange(keys.Count(k => k.Key == k.Fresh), 1, keys.Length * 0.6);
        Assert.InRange(changes.Count(k => Opposite(k.Key) == k.Fresh), 1, changes.Length * 0.5);
        Assert.InRange(changes.Count(k => k.Key == k.Fresh), 1, changes.Length * 0.5);
    }

    private static string Key(Exercise exercise) => exercise.Kind.RightAnswer(exercise)!;

    private static string Opposite(string key) => key == ChangeIn.Rises ? ChangeIn.Falls : key == ChangeIn.Falls ? ChangeIn.Rises : key;

    private static string Line(RecipeChange change) => $"{change.Path}: {change.Before} {change.After}";

    private static RecipeChange[] Changes(Exercise exercise) =>
    [
        .. ChangeList.Between(
            RecipeParser.Parse(exercise.RecipeText!).Value!, RecipeParser.Parse(exercise.Task.ChangedRecipe!).Value!),
    ];
}
