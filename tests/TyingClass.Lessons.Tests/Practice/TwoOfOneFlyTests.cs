using System.Collections.Immutable;
using TyingClass.Lessons.Checking;
using TyingClass.Lessons.Courses;
using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Grading;
using TyingClass.Lessons.Kinds.Measure;
using TyingClass.Lessons.Kinds.Predict;
using TyingClass.Lessons.Practice;
using TyingClass.Lessons.Quantities;
using TyingClass.Recipes.Bodies;
using TyingClass.Recipes.Doubting;
using TyingClass.Recipes.Model;
using TyingClass.Recipes.Text;
using Xunit;

namespace TyingClass.Lessons.Tests.Practice;

/// <summary>Practice that compares one fly in two waters, on two knots, in two retrieves: the sets of the course itself.</summary>
public sealed class TwoOfOneFlyTests
{
    private static readonly Lazy<ImmutableArray<PracticeSet>> Course = new(() =>
    {
        using CourseFolder folder = new(Repo.Lessons);
        IEnumerable<PracticeSet> all = folder.Current.Lessons.SelectMany(l => l.Blocks.OfType<PracticeBlock>()).Select(b => b.Practice);
        return [.. all.Where(s => s.Template.Task.ChangedRecipe is not null)];
    });

    // What varies, by the title of its set; how many problems the test can afford of it.
    public static TheoryData<string, string, int> Sets => new()
    {
        { "Two waters", "fishing.water", 12 },
        { "From the lake to the sea", "fishing.water", 12 },
        { "Two knots", "fishing.knot", 10 },
        { "Two hands", "fishing.retrieve", 4 },
    };

    [Theory, MemberData(nameof(Sets))]
    public void Draw_TwoOfOneFly_DifferInWhatTheSetComparesAndInNothingElse(string title, string path, int problems)
    {
        foreach (Exercise problem in Draw(title, problems))
        {
            RecipeDraft before = RecipeDraft.Parse(problem.RecipeText!).Value!, after = RecipeDraft.Parse(problem.Task.ChangedRecipe!).Value!;

            Assert.NotEqual(before.Get(path), after.Get(path));
            Assert.Equal(before.ToText(), after.With(path, before.Get(path)).ToText());
            Assert.Contains($"“{before.Get(path)}”", problem.PromptHtml, StringComparison.Ordinal);
            Assert.Contains($"“{after.Get(path)}”", problem.PromptHtml, StringComparison.Ordinal);
        }
    }

    // Twice what is noticed is a difference, two fifths of it are none, and nothing is asked in between. Worked out here from the two recipes.
    [Theory, MemberData(nameof(Sets))]
    public void Draw_TwoOfOneFly_DifferenceIsClearAndOnlyItsAnswerPasses(string title, string path, int problems)
    {
        Dictionary<string, int> answers = [];
        foreach (Exercise problem in Draw(title, problems))
        {
            (QuantityQuery query, double before, double after) = Figures(problem);
            double noticed = Math.Abs(after - before) / query.Quantity.NoticeableSi;
            if (problem.Task is MeasureTask task)
            {
                Assert.True(noticed >= 2, $"{title} in {path}: {noticed}");
                Assert.True(Grader.Grade(problem, query.SayStated(after, UnitSystem.Metric), 0).Passed);
                Assert.False(Grader.Grade(problem, query.SayStated(before, UnitSystem.Metric), 0).Passed);
                Assert.True(Math.Abs(after - before) > 2 * Tolerance(task, query));
                answers[after > before ? "larger" : "smaller"] = answers.GetValueOrDefault(after > before ? "larger" : "smaller") + 1;
                continue;
            }

            Assert.True(noticed is >= 2 or <= 0.4, $"{title}: {noticed}");
            string right = noticed <= 0.4 ? ChangeIn.Stays : after > before ? ChangeIn.Rises : ChangeIn.Falls;
            foreach (string choice in problem.Choices) Assert.Equal(choice == right, Grader.Grade(problem, choice, 0).Passed);
            answers[right] = answers.GetValueOrDefault(right) + 1;
        }

        Assert.True(answers.Count > 1, $"{title}: always “{answers.Keys.First()}”");
        Assert.All(answers.Values, count => Assert.True(count <= 0.75 * problems, $"{title}: {string.Join(", ", answers)}"));
    }

    // Thirty models with other guesses, of which the drawing knew nothing.
    [Theory, MemberData(nameof(Sets))]
    public void Draw_TwoOfOneFly_IsNoMatterOfTheModelsDoubt(string title, string path, int problems)
    {
        foreach (Exercise problem in Draw(title, Math.Min(problems, 3)))
        {
            (QuantityQuery query, double before, double after) = Figures(problem);
            bool moves = Math.Abs(after - before) >= query.Quantity.NoticeableSi;
            (Recipe first, Recipe second) = (Parse(problem.RecipeText!), Parse(problem.Task.ChangedRecipe!));
            DoubtOptions others = new(30, 0.9);
            double?[] drawn =
            [
                .. Doubt.Flies(first, others).Zip(Doubt.Flies(second, others), (a, b) => a is null || b is null ? null : Of(second, b) - Of(first, a)),
            ];

            double[] told = [.. drawn.OfType<double>()];
            int alike = told.Count(d => moves ? Math.Sign(d) == Math.Sign(after - before) && Math.Abs(d) >= query.Quantity.NoticeableSi
                : Math.Abs(d) < query.Quantity.NoticeableSi);
            Assert.True(told.Length >= 20 && alike >= 0.85 * told.Length, $"{title}, {path}: {alike} of {told.Length}");

            double? Of(Recipe recipe, BuiltFly built) => query.Of(new FlyFigures(recipe).Drawn(built, null));
        }
    }

    [Theory, MemberData(nameof(Sets))]
    public void Draw_TwoOfOneFly_AsksNothingTwiceAtWhateverLevel(string title, string path, int problems)
    {
        PracticeSet set = Set(title);
        Assert.True(set.Apart >= 12, path);
        IEnumerable<Exercise> drawn = Enumerable.Range(1, problems).Select(seed => PracticeProblems.Draw(set, seed, seed % 4 / 4.0)!);
        string[] asked = [.. drawn.Select(p => p.RecipeText + p.Task.ChangedRecipe)];

        Assert.Equal(asked.Length, asked.Distinct().Count());
    }

    [Theory, MemberData(nameof(Sets))]
    public void Grade_TwoOfOneFly_WhySumAndPictureAreOfTheChange(string title, string path, int problems)
    {
        string word = path["fishing.".Length..];
        foreach (Exercise problem in Draw(title, Math.Min(problems, 2)))
        {
            (QuantityQuery query, double before, double after) = Figures(problem);
            string right = problem.Task is MeasureTask ? query.SayStated(after, UnitSystem.Metric)
                : problem.Choices.First(c => Grader.Grade(problem, c, 0).Passed);
            Feedback feedback = Grader.Grade(problem, right, 0).Feedback!;

            Assert.Contains(word, feedback.First, StringComparison.OrdinalIgnoreCase);
            Assert.Equal(Telling.Reasons.FlyPair.Change, feedback.Picture!.Pair);

            string slip = problem.Task is MeasureTask ? query.SayStated(before, UnitSystem.Metric) : problem.Choices.First(c => c != right);
            WorkedSum? sum = WorkedSum.Of(problem, slip, UnitSystem.Metric);
            Assert.NotNull(sum);
            Assert.Equal(problem.Task is MeasureTask ? after : after - before, sum.Rows[^1].Si, 1e-6 + 1e-3 * Math.Abs(after));
            Assert.Equal(slip, sum.Yours);
            Assert.Contains(sum.Rows, row => Math.Abs(row.Si - before) < 1e-9);
            Assert.NotNull(sum.Remark);
        }
    }

    // Archimedes: the fly's mass less the water pushed aside, whose mass goes with the water's density. EOS-80: 1026.6 and 999.5 kg/m³ at 12 °C, from memory.
    [Fact]
    public void WorkedSum_FromTheLakeToTheSea_IsThatOfArchimedes()
    {
        foreach (Exercise problem in Draw("From the lake to the sea", 4))
        {
            RecipeDraft fly = RecipeDraft.Parse(problem.RecipeText!).Value!;
            double massKg = 1e-3 * (0.23 + Grams(fly, 0) + Grams(fly, 1));
            (_, double before, _) = Figures(problem);
            double ratio = fly.Get("fishing.water") == "fresh 12 °C" ? 1026.6 / 999.5 : 999.5 / 1026.6;

            WorkedSum sum = WorkedSum.Of(problem, "9 g", UnitSystem.Metric)!;

            Assert.Equal(massKg - (massKg - before) * ratio, sum.Rows[^1].Si, 2e-7);
        }

        static double Grams(RecipeDraft fly, int part) =>
            Units.TryParse(fly.Get($"parts[{part}].mass"), Dimension.Mass, out double kg, out _) ? 1e3 * kg : double.NaN;
    }

    [Theory]
    [InlineData("kind: predict\nask: nose\nvary:\n  - change.fishing.knot: [loop, cinched]", "write “change:” above")]
    [InlineData("kind: predict\nask: change in pitch\nchange:\n  fishing.knot: loop\nvary:\n  - change.fishing.water: [fresh, sea]", "write “change:” above")]
    [InlineData("kind: measure\nquantity: mass\ntolerance: 0.01 g\nchange: sea\nvary:\n  - parts[0].size: 3 mm … 4 mm", "Say what is done to the fly")]
    public void Read_ChangeThatIsNone_SaysWhatToWrite(string rest, string text)
    {
        LessonResult result = Repo.Fence("practice", $"title: T\nconcepts: [keel side]\nprompt: P\nfile: recipes/slate-minnow.fly.yaml\n{rest}");

        Assert.Contains(text, string.Join('\n', result.Errors.Select(e => e.Text)), StringComparison.Ordinal);
    }

    // A bead that stays dry-heavy hardly notices the sea; and a tolerance as wide as the change would take the old figure for the new one.
    [Theory]
    [InlineData("wet weight", "0.001 g", "fishing.water: sea 12 °C", "the least that is clear to see")]
    [InlineData("mass", "0.2 g", "parts[0].size: 4.8 mm", "more than half of the change")]
    public void Check_MeasureOfAChangeThatIsNotClear_IsRefused(string quantity, string tolerance, string change, string text)
    {
        LessonResult result = Repo.Fence("exercise", $"""
            id: change-1
            kind: measure
            title: Changed
            concepts: [mass center]
            prompt: How much?
            file: recipes/slate-minnow.fly.yaml
            quantity: {quantity}
            tolerance: {tolerance}
            change:
              {change}
            model answer: 1 g
            wrong answers: [2 g]
            """);
        Assert.Equal([], result.Errors);

        Assert.Contains(text, KeyClearance.Complaint(result.Lesson!.Exercises.Single()), StringComparison.Ordinal);
    }

    private static IEnumerable<Exercise> Draw(string title, int problems) =>
        Enumerable.Range(1, problems).Select(seed => PracticeProblems.Draw(Set(title), seed) ?? throw new InvalidOperationException($"{title}: {seed}."));

    private static PracticeSet Set(string title) => Course.Value.Single(s => s.Template.Title == title);

    private static (QuantityQuery Query, double Before, double After) Figures(Exercise problem)
    {
        string name = problem.Task is MeasureTask measure ? measure.Quantity : ((PredictTask)problem.Task).Quantity!;
        Assert.True(QuantityQuery.TryParse(name, out QuantityQuery query, out string error), error);
        return (query, query.Of(new FlyFigures(Parse(problem.RecipeText!)))!.Value, query.Of(new FlyFigures(Parse(problem.Task.ChangedRecipe!)))!.Value);
    }

    private static double Tolerance(MeasureTask task, QuantityQuery query) =>
        Units.TryParse(task.ToleranceText, query.Quantity.Dimension!.Value, out double si, out _) ? si : double.NaN;

    private static Recipe Parse(string text) => RecipeParser.Parse(text).Value!;
}
