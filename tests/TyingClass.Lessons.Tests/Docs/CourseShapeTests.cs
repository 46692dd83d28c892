using TyingClass.Balance.Bodies;
using TyingClass.Lessons.Checking;
using TyingClass.Lessons.Courses;
using TyingClass.Lessons.Kinds;
using TyingClass.Recipes.Model;
using TyingClass.Recipes.Parts;
using TyingClass.Recipes.Text;
using Xunit;

namespace TyingClass.Lessons.Tests.Docs;

/// <summary>What the seventeen lessons promise: every part of a lesson is there, every kind of exercise and every part of a fly is used.</summary>
public sealed class CourseShapeTests
{
    private static readonly Course Course = Load();

    public static TheoryData<string> Slugs() => [.. Course.Lessons.Select(l => l.Slug)];

    [Fact]
    public void Course_Lessons_AreEighteenWithAtLeastOneHundredAndFiftyExercises()
    {
        Assert.Equal(Enumerable.Range(0, 18), Course.Lessons.Select(l => l.Number));
        Assert.True(Course.Exercises.Count() >= 150);
    }

    [Fact]
    public void Course_EveryKindOfExercise_IsUsed() => Assert.Equal([],
        ExerciseKinds.All.Except(Course.Exercises.Select(e => e.Kind))
            .Select(k => $"Write an exercise of the kind “{k.Word}” into a lesson, lessons/NN-….md: no student meets one yet."));

    [Theory]
    [MemberData(nameof(Slugs))]
    public void Lesson_SizeExercisesAndReadingLevel_AreWithinTheBands(string slug) => Assert.Empty(LessonMeasure.Of(Lesson(slug)).Remarks);

    // Written for grown beginners. Plain is never too plain: a floor once made chains of "because" and "whereas".
    [Theory]
    [MemberData(nameof(Slugs))]
    public void Lesson_ReadingLevel_IsAtMostGradeEight(string slug) => Assert.InRange(LessonMeasure.Of(Lesson(slug)).Grade, 0.1, 8);

    [Theory]
    [MemberData(nameof(Slugs))]
    public void Lesson_EveryPartOfALesson_IsThere(string slug)
    {
        Lesson lesson = Lesson(slug);
        string prose = string.Concat(lesson.Blocks.OfType<ProseBlock>().Select(p => p.Html));

        Assert.IsType<ProseBlock>(lesson.Blocks[0]);
        Assert.Contains(lesson.Blocks, b => b is FlyBlock or FigureBlock);
        Assert.NotEmpty(lesson.Blocks.OfType<PracticeBlock>());
        Assert.Contains("worked example", prose, StringComparison.OrdinalIgnoreCase);
        Assert.Matches("<h2[^>]*>[^<]*(bench|tub|glass|thread|examination)", prose);
        Assert.Contains(">To sum up</h2>", prose, StringComparison.Ordinal);
        Assert.Contains(">What the model leaves out</h2>", prose, StringComparison.Ordinal);
        Assert.NotEmpty(lesson.Glossary);
        Assert.Matches("(?i)glasses|barb|resin|safety", prose);
    }

    // Recognizing comes before designing.
    [Theory]
    [MemberData(nameof(Slugs))]
    public void Lesson_FirstExercise_AsksToRecognizeAndComposingComesLater(string slug)
    {
        ExerciseKind[] kinds = [.. Lesson(slug).Exercises.Select(e => e.Kind)];

        if (slug != "field-clinic") Assert.Contains(kinds[0], ExerciseKinds.All.Where(k => k.Word is "predict" or "measure" or "sort"));
        int compose = Array.FindIndex(kinds, k => k.Word == "compose");
        if (compose >= 0) Assert.True(compose >= kinds.Length / 2, $"{slug} composes as exercise {compose + 1} of {kinds.Length}.");
    }

    [Fact]
    public void Recipes_Patterns_AreManyAndUseEveryPart()
    {
        Recipe[] recipes =
            [.. Directory.EnumerateFiles(Path.Combine(Repo.Lessons, "recipes"), "*.fly.yaml").Select(f => RecipeParser.Parse(File.ReadAllText(f)).Value!)];

        Assert.True(recipes.Select(r => r.Name).Distinct().Count() >= 30);
        IEnumerable<string> untied = KindsOfPart.All.Select(k => k.Kind).Except(recipes.SelectMany(r => r.Parts.Select(p => p.Kind)))
            .Select(k => $"Write a fly with a part of the kind {k} in lessons/recipes.");
        Assert.Empty(untied);
        Assert.Equal(Enum.GetValues<Intent>(), recipes.Select(r => r.Intent).Distinct().Order());
    }

    private static Lesson Lesson(string slug) => Course.Lessons.Single(l => l.Slug == slug);

    private static Course Load()
    {
        using CourseFolder folder = new(Repo.Lessons);
        return folder.Current;
    }
}
