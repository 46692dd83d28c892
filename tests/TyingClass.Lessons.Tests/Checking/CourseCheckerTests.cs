using TyingClass.Lessons.Checking;
using TyingClass.Lessons.Courses;
using Xunit;

namespace TyingClass.Lessons.Tests.Checking;

public sealed class CourseCheckerTests : CheckedFolder
{
    private const string NamedWrong = "wrong answers:\n  - answer:\n      parts[0].size: 4.4 mm\n    named: rides as intended";

    [Fact]
    public void Check_OurOwnLessons_HaveNothingWrong()
    {
        CheckResult result = CourseChecker.Check(Repo.Lessons);

        Assert.Equal([], result.Errors);
        Assert.True(result.Course.Exercises.Count() >= 5);
    }

    // An id that was never written down could vanish unseen, and students' attempts with it.
    [Fact]
    public void Record_OurOwnLessons_HasNoIdLeftToWriteDown()
    {
        string[] kept = File.ReadAllLines(Path.Combine(Repo.Lessons, IdList.FileName));
        using CourseFolder course = new(Repo.Lessons);

        string[] missing = [.. course.Current.Exercises.Select(e => e.Id).Except(kept)];

        Assert.True(missing.Length == 0, $"Run check-lessons --record: {string.Join(", ", missing)}");
    }

    [Theory]
    [InlineData("evenings:\n  - evening: 2\n    title: T\n    plan: P\n", "01-first.md", "evening 1, which evenings.yaml does not plan")]
    [InlineData("evenings:\n  - evening: 2\n    title: T\n    plan: P\n", "evenings.yaml", "No lesson is read for evening 2")]
    [InlineData("evenings:\n  - evening: 1\n    title: T\n    plan: P\n    in the room: [no-01]\n", "evenings.yaml", "has an exercise “no-01”")]
    [InlineData("evenings:\n  - evening: 1\n    title: T\n    plan: P\n    first at home: [no-01]\n", "evenings.yaml", "has an exercise “no-01”")]
    [InlineData("evenings:\n  - evening: 1\n    title: T\n    plan: P\n    in the room: [first-01]\n    first at home: [first-01]\n", "evenings.yaml",
        "“first-01” is worked in the room and comes first at home")]
    [InlineData("evenings:\n  - evening: 1\n    title: T\n    plan: P\n    spares: [eyes]\n", "evenings.yaml", "Each spare part is a group of keys")]
    [InlineData("evenings:\n  - evening: 1\n    title: T\n    plan: P\n    spares: [{part: eyebrows, material: brass, size: 3 mm, to show: 1}]\n",
        "evenings.yaml", "No such spare part")]
    [InlineData("evenings:\n  - evening: 1\n    title: T\n    plan: P\n    spares: [{part: bead, material: brass, size: 3 mm}]\n", "evenings.yaml",
        "Nobody is to have the spare bead")]
    [InlineData("evenings:\n  - evening: 1\n    title: T\n    plan: P\n    watch four: x\n", "evenings.yaml", "Did you mean “watch for”?")]
    [InlineData("evenings:\n  - evening: 1\n    title: T\n", "evenings.yaml", "“plan” is missing")]
    [InlineData("evenings:\n  - evening: 1\n    title: T\n    plan: P\n    flies: [{file: recipes/no.fly.yaml}]\n", "evenings.yaml", "There is no recipe")]
    [InlineData("evenings:\n  - evening: 1\n    title: T\n    plan: P\n    flies: [one]\n", "evenings.yaml", "Each fly is a group of keys")]
    public void Check_EveningsThatDoNotFitTheLessons_AreErrorsWithTheirPlace(string plans, string file, string text)
    {
        Folder.Write("01-first.md", Head.Replace("minutes:", "evening: 1\nminutes:", StringComparison.Ordinal) + Question("first-01",
            "Which way up does it ride?"));
        Folder.Write("evenings.yaml", plans);

        Assert.Contains(CourseChecker.Check(Folder.Path).Errors, e => e.File == file && e.Text.Contains(text, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("{file: recipes/reed.fly.yaml}", "Nobody ties Reed Fry of recipes/reed.fly.yaml")]
    [InlineData("{file: recipes/reed.fly.yaml, to show: many}", "“to show” must be a whole number")]
    [InlineData("{file: recipes/reed.fly.yaml, to show: 1}, {file: recipes/reed.fly.yaml, to show: 1}", "Reed Fry is listed twice")]
    [InlineData("{file: recipes/reed.fly.yaml, for two neighbors: 1}", null)]
    public void Check_FliesOfAnEvening_AreTiedBySomebodyAndListedOnce(string flies, string? text)
    {
        Folder.Write("recipes/reed.fly.yaml",
            "recipe: Reed Fry\nintent: point down\nhook:\n  size: 6\nparts:\n  - part: bead\n    material: brass\n    size: 4 mm\n    at: 0 mm\n");
        Folder.Write("01-first.md", Head.Replace("minutes:", "evening: 1\nminutes:", StringComparison.Ordinal) + Question("first-01",
            "Which way up does it ride?"));
        Folder.Write("evenings.yaml", $"evenings:\n  - evening: 1\n    title: T\n    plan: P\n    flies: [{flies}]\n");

        string[] errors = [.. CourseChecker.Check(Folder.Path).Errors.Where(e => e.File == "evenings.yaml").Select(e => e.Text)];

        if (text is null) Assert.Empty(errors);
        else Assert.Contains(errors, e => e.Contains(text, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("", true)]
    [InlineData("    in the room: [first-01]\n", false)]
    public void Check_MoreThanAnHourAtHome_IsRefusedUnlessWorkedInTheRoom(string inTheRoom, bool refused)
    {
        // 14 200 words are 59.7 minutes at 238 words a minute; a prediction is one and a half more.
        Folder.Write("01-first.md", Head.Replace("minutes:", "evening: 1\nminutes:", StringComparison.Ordinal) + Words(14_200) + "\n"
            + Question("first-01", "Up?"));
        Folder.Write("evenings.yaml", "evenings:\n  - evening: 1\n    title: T\n    plan: P\n" + inTheRoom);

        Assert.Equal(refused, CourseChecker.Check(Folder.Path).Errors.Any(e => e.Text.Contains("61 minutes at home, more than 60", StringComparison.Ordinal)));
    }

    [Theory]
    [InlineData("", false)]
    [InlineData("    first at home: [first-01]\n", true)]
    public void Check_MoreThanHalfAnHourFirstAtHome_IsRefused(string first, bool refused)
    {
        // 7 100 words are 29.8 minutes at 238 words a minute; a prediction is one and a half more.
        Folder.Write("01-first.md", Head.Replace("minutes:", "evening: 1\nminutes:", StringComparison.Ordinal) + Words(7_100) + "\n"
            + Question("first-01", "Up?"));
        Folder.Write("evenings.yaml", "evenings:\n  - evening: 1\n    title: T\n    plan: P\n" + first);

        Assert.Equal(refused, CourseChecker.Check(Folder.Path).Errors.Any(e => e.Text.Contains("takes 31 minutes, more than 30", StringComparison.Ordinal)));
    }

    [Fact]
    public void Check_NineQuestionsWithOneAnswer_AreRefusedAsUnbalanced()
    {
        Folder.Write("01-first.md", Head + string.Concat(Enumerable.Range(1, 9).Select(i => Question($"first-0{i}", "Which way up does it ride?"))));

        string[] errors = [.. CourseChecker.Check(Folder.Path).Errors.Select(e => e.Text)];

        Assert.Contains(errors, e => e.Contains("Of 9 questions “which way up” in the course, 9 have the answer “point down”", StringComparison.Ordinal));
        Assert.Contains(errors, e => e.Contains("number 5 running", StringComparison.Ordinal));
        Assert.Equal(new KeyCount("which way up", "point down", 9, 9), Assert.Single(CourseChecker.Check(Folder.Path).Keys));
    }

    [Theory]
    [InlineData("parts[0].size: 4.4 mm", "The model answer fails: of 100 flies tied like it, at least 90 ride as intended: 0 %")]
    [InlineData("hook.eye: up", "The model answer is refused")]
    public void Check_ModelAnswerThatDoesNotPass_IsAnError(string model, string text) =>
        AssertFinds(Repair($"model answer:\n  {model}\n{NamedWrong}"), text);

    [Theory]
    [InlineData("- answer:\n      parts[0].side: top", "passes.")]
    [InlineData("- answer:\n      parts[0].size: 4.4 mm\n    named: added mass", "fails, but not for “added mass”. What is named: rides as intended; flips")]
    [InlineData("- answer:\n      hook.eye: up\n    named: flips", "is refused, not marked wrong")]
    public void Check_WrongAnswerThatDoesNotFailAsSaid_IsAnError(string wrong, string text) =>
        AssertFinds(Repair($"model answer:\n  parts[0].side: top\n{NamedWrong}\n  {wrong}"), text);

    [Theory]
    [InlineData("")]
    [InlineData("\nwrong answers:\n  - parts[0].size: 4.4 mm")]
    [InlineData("\nwrong answers:\n  - answer:\n      hook.eye: up\n    named: refused")]
    public void Check_RepairWithoutAWrongAnswerThatFailsAsNamed_IsAnError(string wrong) =>
        AssertFinds(Repair("model answer:\n  parts[0].side: top" + wrong), "List at least one wrong answer that fails");

    [Fact]
    public void Check_NothingToRepair_IsAnError() =>
        AssertFinds(
            Repair("model answer:\n  parts[0].side: top\nwrong answers:\n  - answer:\n      parts[0].size: 6 mm\n    named: mass")
                .Replace("rides as intended: at least 90 %", "mass: at most 0.8 g", StringComparison.Ordinal),
            "already meets every goal");

    [Fact]
    public void Check_PredictionTooCloseToCall_IsAnError() =>
        AssertFinds(
            Exercise("predict",
                "file: recipes/slate-minnow.fly.yaml\nchoices:\n  - say: less\n    when: mass < 0.5547 g\n  - say: more\n    when: mass >= 0.5547 g"),
            "too near its threshold to ask");

    // Eyes of next to nothing on top of the shank barely outvote the bend: most tyings ride the right way up though tilted, but not nine in ten.
    [Fact]
    public void Check_FlyNearTheTippingPoint_CannotBeAskedWhichWayUp()
    {
        Folder.Write("recipes/hair.fly.yaml", Repo.Recipe("recipes/reed-darter.fly.yaml")!
            .Replace("side: under\n  - part: body", "side: top\n  - part: body", StringComparison.Ordinal)
            .Replace("size: 4 mm", "size: 1.8 mm", StringComparison.Ordinal));

        AssertFinds(Exercise("predict", "file: recipes/hair.fly.yaml\nask: which way up"), "too near a coin toss to ask");
    }

    [Fact]
    public void Check_ToleranceFinerThanTying_IsAnError() =>
        AssertFinds(Exercise("measure", "file: recipes/slate-minnow.fly.yaml\nquantity: mass center, x\ntolerance: 0.001 mm"),
        "is finer than two flies tied alike differ");

    [Fact]
    public void Check_SortOfNearTwins_IsAnError()
    {
        string twin = Repo.Recipe("recipes/slate-minnow.fly.yaml")!.Replace("Slate Minnow", "Twin", StringComparison.Ordinal).Replace("size: 4 mm",
            "size: 4.01 mm", StringComparison.Ordinal);
        Folder.Write("recipes/twin.fly.yaml", twin);

        AssertFinds(
            Exercise("sort",
                "flies:\n  - file: recipes/slate-minnow.fly.yaml\n  - file: recipes/twin.fly.yaml\n  - file: recipes/reed-darter.fly.yaml\nby: mass"),
            "too near each other");
    }

    [Fact]
    public void Check_PublishedIdGone_IsAnError()
    {
        Folder.Write("01-a.md", Head + Words());
        Folder.Write(IdList.FileName, "# published\nold-1\n");

        AuthorError error = Assert.Single(CourseChecker.Check(Folder.Path).Errors);

        Assert.Equal((IdList.FileName, 2), (error.File, error.Line));
        Assert.Contains("old-1", error.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Record_NewIds_AreAddedOnce()
    {
        Folder.Write("01-a.md", Exercise("explain", "model answer: Because."));
        Course course = CourseChecker.Check(Folder.Path).Course;

        Assert.Equal(["x-1"], IdList.Record(Folder.Path, course));
        Assert.Empty(IdList.Record(Folder.Path, course));
        Assert.Equal(["x-1"], File.ReadAllLines(Path.Combine(Folder.Path, IdList.FileName)));
    }

    [Fact]
    public void Check_BrokenRecipeFile_IsReportedThere()
    {
        Folder.Write("01-a.md", Head + Words());
        Folder.Write("recipes/broken.fly.yaml", "recipe: X\nintent: point down\nhook:\n  size: many\n");

        AuthorError error = Assert.Single(CourseChecker.Check(Folder.Path).Errors);

        Assert.Equal(("recipes/broken.fly.yaml", 4), (error.File, error.Line));
    }

    [Fact]
    public void Check_NoSuchFolder_IsAnError() => Assert.Single(CourseChecker.Check(Path.Combine(Folder.Path, "gone")).Errors);

    [Fact]
    public void Check_EmptyFolder_SaysWhatALessonIs()
    {
        using TemporaryFolder empty = new();

        Assert.Contains("01-mass-center.md", Assert.Single(CourseChecker.Check(empty.Path).Errors).Text, StringComparison.Ordinal);
    }

    private static string Repair(string rest) => Exercise("repair", $"""
        file: recipes/reed-darter.fly.yaml
        allow:
          - parts[0].side
          - parts[0].size: 3 mm … 6 mm
        goals:
          - rides as intended: at least 90 %
        {rest}
        """);
}
