using TyingClass.Lessons.Courses;
using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Grading;
using TyingClass.Lessons.Practice;
using TyingClass.Telling.Reasons;
using Xunit;

namespace TyingClass.Lessons.Tests.Practice;

public sealed class PracticeAnswersTests
{
    private const int Seeds = 12;

    // A set whose answer is always the same is learned by heart.
    [Fact]
    public void Draw_EachPredictionOfTheCourse_HasMoreThanOneAnswer()
    {
        using CourseFolder folder = new(Repo.Lessons);

        string[] alike = [.. Sets(folder).Where(set => set.Template.Kind.Word == "predict")
            .Where(set => Enumerable.Range(1, Seeds).Select(seed => Right(PracticeProblems.Draw(set, seed))).OfType<string>().Distinct().Take(2).Count() < 2)
            .Select(set => set.Template.Title)];

        Assert.Equal([], alike);
    }

    [Fact]
    public void Grade_DiagnosisThatIsTheKnot_NamesTheKnotAndDrawsBoth()
    {
        using CourseFolder folder = new(Repo.Lessons);
        PracticeSet set = Sets(folder).Single(s => s.Concept == "diagnosis");
        Exercise problem = Enumerable.Range(1, 40).Select(seed => PracticeProblems.Draw(set, seed)).OfType<Exercise>()
            .First(p => Right(p)!.Contains("knot", StringComparison.Ordinal));

        foreach (string choice in problem.Choices)
        {
            Feedback feedback = Grader.Grade(problem, choice, 0).Feedback!;

            Assert.Contains("knot", feedback.First, StringComparison.Ordinal);
            Assert.Equal(FlyPair.Knot, feedback.Picture!.Pair);
        }
    }

    private static IEnumerable<PracticeSet> Sets(CourseFolder folder) =>
        folder.Current.Lessons.SelectMany(l => l.Blocks.OfType<PracticeBlock>()).Select(b => b.Practice);

    private static string? Right(Exercise? problem) => problem?.Choices.FirstOrDefault(c => Grader.Grade(problem, c, 0).Passed);
}
