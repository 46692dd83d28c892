using TyingClass.Lessons.Checking;
using TyingClass.Lessons.Courses;
using Xunit;

namespace TyingClass.Lessons.Tests.Checking;

public sealed class CourseCheckerTests : IDisposable
{
    private const string NamedWrong = "wrong answers:\n  - answer:\n      parts[0].size: 4.4 mm\n    named: rides as intended";
    private const string Head = "---\ntitle: T\nsummary: S\nconcepts: [keel side]\nminutes: 4\n---\n\n";
    private readonly TemporaryFolder _folder = new();

    public CourseCheckerTests()
    {
        foreach (string name in new[] { "slate-minnow", "reed-darter", "alder-jig" })
        {
            _folder.Write($"recipes/{name}.fly.yaml", Repo.Recipe($"recipes/{name}.fly.yaml")!);
        }
    }

    public void Dispose() => _folder.Dispose();

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

    [Fact]
    public void Check_WordThatALaterLessonBringsIn_IsRefusedInAnEarlierQuestion()
    {
        _folder.Write("01-first.md", Head + Question("first-01", "What does its **rudder** do? Which way up does it ride?"));
        _folder.Write("02-second.md", Head.Replace("concepts:", "glossary:\n  rudder: what steers.\nconcepts:", StringComparison.Ordinal) + "The rudder.\n\n"
            + Question("second-01", "Has it a rudder? Which way up does it ride?"));

        AuthorError error = Assert.Single(CourseChecker.Check(_folder.Path).Errors, e => e.Text.Contains("rudder", StringComparison.Ordinal));

        Assert.Equal("01-first.md", error.File);
        Assert.Contains("which lesson 2 brings in", error.Text, StringComparison.Ordinal);
    }

    // The Slate Minnow rides point down as meant and weighs 0.555 g (both computed by the engine).
    [Theory]
    [InlineData("The Slate Minnow rides point down.", true)]
    [InlineData("The Slate Minnow is meant to swim so. Another rides point down.", false)]
    [InlineData("Does the Slate Minnow ride point down?", false)]
    public void Check_WayUpSaidAboveTheQuestion_IsRefusedWithThePassage(string prose, bool refused)
    {
        _folder.Write("01-first.md", $"{Head}{prose}\n\n{Question("first-01", "Which way up does it ride?")}");

        AuthorError[] found = [.. CourseChecker.Check(_folder.Path).Errors.Where(e => e.Text.Contains("stands above it", StringComparison.Ordinal))];

        Assert.Equal(refused, found.Length == 1);
        Assert.All(found, e => Assert.Contains($"first-01: its answer stands above it, in “{prose}”", e.Text, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("The Slate Minnow has 0.555 g on the scale.", true)]
    [InlineData("Its mass is 0.55 g.", true)]
    [InlineData("The Slate Minnow has 0.9 g on the scale.", false)]
    [InlineData("A pebble has 0.555 g.", false)]
    public void Check_FigureSaidAboveTheQuestion_IsRefused(string prose, bool refused)
    {
        _folder.Write("01-first.md", Head + prose + "\n\n```exercise\nid: first-01\nkind: measure\ntitle: T\nconcepts: [keel side]\n"
            + "prompt: What does it weigh?\nfile: recipes/slate-minnow.fly.yaml\nquantity: mass\ntolerance: 0.03 g\n"
            + "model answer: 0.555 g\nwrong answers: [2 g]\n```\n");

        Assert.Equal(refused,
            CourseChecker.Check(_folder.Path).Errors.Any(e => e.Text.Contains("first-01: its answer stands above it", StringComparison.Ordinal)));
    }

    [Theory]
    [InlineData("evenings:\n  - evening: 2\n    title: T\n    plan: P\n", "01-first.md", "evening 1, which evenings.yaml does not plan")]
    [InlineData("evenings:\n  - evening: 2\n    title: T\n    plan: P\n", "evenings.yaml", "No lesson is read for evening 2")]
    [InlineData("evenings:\n  - evening: 1\n    title: T\n    plan: P\n    in the room: [no-01]\n", "evenings.yaml", "has an exercise “no-01”")]
    [InlineData("evenings:\n  - evening: 1\n    title: T\n    plan: P\n    watch four: x\n", "evenings.yaml", "Did you mean “watch for”?")]
    [InlineData("evenings:\n  - evening: 1\n    title: T\n", "evenings.yaml", "“plan” is missing")]
    public void Check_EveningsThatDoNotFitTheLessons_AreErrorsWithTheirPlace(string plans, string file, string text)
    {
        _folder.Write("01-first.md", Head.Replace("minutes:", "evening: 1\nminutes:", StringComparison.Ordinal) + Question("first-01",
            "Which way up does it ride?"));
        _folder.Write("evenings.yaml", plans);

        Assert.Contains(CourseChecker.Check(_folder.Path).Errors, e => e.File == file && e.Text.Contains(text, StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("", true)]
    [InlineData("    in the room: [first-01]\n", false)]
    public void Check_MoreThanAnHourAtHome_IsRefusedUnlessWorkedInTheRoom(string inTheRoom, bool refused)
    {
        // 14 200 words are 59.7 minutes at 238 words a minute; a prediction is one and a half more.
        _folder.Write("01-first.md", Head.Replace("minutes:", "evening: 1\nminutes:", StringComparison.Ordinal) + Words(14_200) + "\n"
            + Question("first-01", "Up?"));
        _folder.Write("evenings.yaml", "evenings:\n  - evening: 1\n    title: T\n    plan: P\n" + inTheRoom);

        Assert.Equal(refused, CourseChecker.Check(_folder.Path).Errors.Any(e => e.Text.Contains("61 minutes at home, more than 60", StringComparison.Ordinal)));
    }

    [Fact]
    public void Check_NineQuestionsWithOneAnswer_AreRefusedAsUnbalanced()
    {
        _folder.Write("01-first.md", Head + string.Concat(Enumerable.Range(1, 9).Select(i => Question($"first-0{i}", "Which way up does it ride?"))));

        string[] errors = [.. CourseChecker.Check(_folder.Path).Errors.Select(e => e.Text)];

        Assert.Contains(errors, e => e.Contains("Of 9 questions “which way up” in the course, 9 have the answer “point down”", StringComparison.Ordinal));
        Assert.Contains(errors, e => e.Contains("number 5 running", StringComparison.Ordinal));
        Assert.Equal(new KeyCount("which way up", "point down", 9, 9), Assert.Single(CourseChecker.Check(_folder.Path).Keys));
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
        _folder.Write("recipes/hair.fly.yaml", Repo.Recipe("recipes/reed-darter.fly.yaml")!
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
        _folder.Write("recipes/twin.fly.yaml", twin);

        AssertFinds(
            Exercise("sort",
                "flies:\n  - file: recipes/slate-minnow.fly.yaml\n  - file: recipes/twin.fly.yaml\n  - file: recipes/reed-darter.fly.yaml\nby: mass"),
            "too near each other");
    }

    [Theory]
    [InlineData("[x](/lessons/nowhere)", "There is no lesson at /lessons/nowhere")]
    [InlineData("[x](/lessons/a#nothing)", "has no heading for “#nothing”")]
    [InlineData("[x](#nothing)", "has no heading for “#nothing”")]
    [InlineData("[x](/exercises/nope-1)", "There is no exercise nope-1")]
    [InlineData("[x](/practice/keel)", "There is no practice of “keel”")]
    [InlineData("[x](/nowhere)", "is no page of this site")]
    public void Check_DeadLink_IsAnErrorAtItsPlace(string link, string text)
    {
        _folder.Write("01-a.md", Head + "## Here\n\nSee [good](#here) and " + link + Words());

        AuthorError error = Assert.Single(CourseChecker.Check(_folder.Path).Errors);

        Assert.Contains(text, error.Text, StringComparison.Ordinal);
        Assert.Equal(("01-a.md", 10, 23), (error.File, error.Line, error.Column));
    }

    [Fact]
    public void Check_PublishedIdGone_IsAnError()
    {
        _folder.Write("01-a.md", Head + Words());
        _folder.Write(IdList.FileName, "# published\nold-1\n");

        AuthorError error = Assert.Single(CourseChecker.Check(_folder.Path).Errors);

        Assert.Equal((IdList.FileName, 2), (error.File, error.Line));
        Assert.Contains("old-1", error.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Record_NewIds_AreAddedOnce()
    {
        _folder.Write("01-a.md", Exercise("explain", "model answer: Because."));
        Course course = CourseChecker.Check(_folder.Path).Course;

        Assert.Equal(["x-1"], IdList.Record(_folder.Path, course));
        Assert.Empty(IdList.Record(_folder.Path, course));
        Assert.Equal(["x-1"], File.ReadAllLines(Path.Combine(_folder.Path, IdList.FileName)));
    }

    [Fact]
    public void Check_ConceptNobodyTeaches_IsAnError() =>
        AssertFinds(
        Exercise("explain", "model answer: Because.").Replace("concepts: [keel side]\nprompt", "concepts: [keel sides]\nprompt", StringComparison.Ordinal),
        "No lesson teaches “keel sides”. Did you mean “keel side”?");

    [Fact]
    public void Check_MinutesFarOff_IsAnError() =>
        AssertFinds(Head.Replace("minutes: 4", "minutes: 60", StringComparison.Ordinal) + Words(), "“minutes” says 60, but");

    [Theory]
    [InlineData("mass: 0.55 g", "It weighs 0.55 g.", null)]
    [InlineData("mass: 0.56 g", "It weighs 0.56 g.", "the engine finds 0.55469 g for mass, not 0.56 g")]
    [InlineData("mass: 0.55 g", "It weighs a bit.", "nowhere says “0.55 g”")]
    public void Check_FigureStated_IsHeldAgainstEngineAndProse(string figure, string prose, string? text)
    {
        string lesson = Head.Replace("minutes: 4\n", $"minutes: 4\nfigures:\n  - file: recipes/slate-minnow.fly.yaml\n    {figure}\n", StringComparison.Ordinal)
            + prose + "\n" + Words();
        if (text is null)
        {
            _folder.Write("01-a.md", lesson);
            Assert.Empty(CourseChecker.Check(_folder.Path).Errors);
            return;
        }

        AssertFinds(lesson, text);
    }

    [Fact]
    public void Check_BrokenRecipeFile_IsReportedThere()
    {
        _folder.Write("01-a.md", Head + Words());
        _folder.Write("recipes/broken.fly.yaml", "recipe: X\nintent: point down\nhook:\n  size: many\n");

        AuthorError error = Assert.Single(CourseChecker.Check(_folder.Path).Errors);

        Assert.Equal(("recipes/broken.fly.yaml", 4), (error.File, error.Line));
    }

    [Fact]
    public void Check_NoSuchFolder_IsAnError() => Assert.Single(CourseChecker.Check(Path.Combine(_folder.Path, "gone")).Errors);

    [Fact]
    public void Check_EmptyFolder_SaysWhatALessonIs()
    {
        using TemporaryFolder empty = new();

        Assert.Contains("01-mass-center.md", Assert.Single(CourseChecker.Check(empty.Path).Errors).Text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("holds: pitch while sinking < -30° and mass of bead > 0.1 g", null)]
    [InlineData("holds: [mass < 1 g, pitch while sinking > 0°]", "Slate Minnow: the engine does not find that pitch while sinking > 0°.")]
    [InlineData("with: {\"parts[0].size\": 3.2 mm}\n    holds: mass < 0.5 g", null)]
    [InlineData("with: {\"parts[9].size\": 3.2 mm}\n    holds: mass < 0.5 g", "there is no parts[9].size")]
    [InlineData("with: {\"parts[0].size\": wide}\n    holds: mass < 0.5 g", "The fly so changed cannot be read")]
    [InlineData("holds: mss < 1 g", "mss")]
    public void Check_FactSaidInWords_IsHeldAgainstEngine(string item, string? text)
    {
        string lesson = Head.Replace("minutes: 4\n", $"minutes: 4\nfigures:\n  - file: recipes/slate-minnow.fly.yaml\n    {item}\n", StringComparison.Ordinal)
            + "It dives.\n" + Words();
        if (text is null)
        {
            _folder.Write("01-a.md", lesson);
            Assert.Empty(CourseChecker.Check(_folder.Path).Errors);
            return;
        }

        AssertFinds(lesson, text);
    }

    [Fact]
    public void Check_WordDefinedTwice_IsAnErrorAtTheSecondPlace()
    {
        _folder.Write("01-a.md",
            Head.Replace("minutes: 4\n", "minutes: 4\nglossary:\n  bead: a ball with a hole\n", StringComparison.Ordinal) + "A bead." + Words());
        _folder.Write("02-b.md",
            Head.Replace("minutes: 4\n", "minutes: 4\nglossary:\n  Beads: balls with holes\n", StringComparison.Ordinal) + "Some beads." + Words());

        AuthorError error = Assert.Single(CourseChecker.Check(_folder.Path).Errors);

        Assert.Equal(("02-b.md", 7, 3), (error.File, error.Line, error.Column));
        Assert.Contains("is defined already in 01-a.md", error.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Check_WordDefinedAndNotUsed_IsAnError() =>
        AssertFinds(Head.Replace("minutes: 4\n", "minutes: 4\nglossary:\n  bead: a ball with a hole\n", StringComparison.Ordinal) + "A plain fly." + Words(),
        "nowhere uses “bead”");

    private void AssertFinds(string lesson, string text)
    {
        _folder.Write("01-a.md", lesson);

        CheckResult result = CourseChecker.Check(_folder.Path);

        AuthorError error = Assert.Single(result.Errors);
        Assert.Equal("01-a.md", error.File);
        Assert.Contains(text, error.Text, StringComparison.Ordinal);
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

    private static string Exercise(string kind, string rest) =>
        $"{Head}{Words(400)}\n```exercise\nid: x-1\nkind: {kind}\ntitle: T\nconcepts: [keel side]\nprompt: P\n{rest.TrimEnd()}\n```\n";

    // About what the stated minutes call for.
    private static string Words(int count = 800) => " " + string.Concat(Enumerable.Repeat("word ", count)) + "\n";

    private static string Question(string id, string prompt) =>
        $"```exercise\nid: {id}\nkind: predict\ntitle: T\nconcepts: [keel side]\nprompt: {prompt}\n"
        + "file: recipes/slate-minnow.fly.yaml\nask: which way up\n```\n\n";
}
