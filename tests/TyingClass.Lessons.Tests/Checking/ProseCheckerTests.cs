using TyingClass.Lessons.Checking;
using TyingClass.Lessons.Courses;
using Xunit;

namespace TyingClass.Lessons.Tests.Checking;

/// <summary>What check-lessons finds in a lesson's text: its links, words, figures, minutes and concepts.</summary>
public sealed class ProseCheckerTests : CheckedFolder
{
    [Theory]
    [InlineData("[x](/lessons/nowhere)", "There is no lesson at /lessons/nowhere")]
    [InlineData("[x](/lessons/a#nothing)", "has no heading for “#nothing”")]
    [InlineData("[x](#nothing)", "has no heading for “#nothing”")]
    [InlineData("[x](/exercises/nope-1)", "There is no exercise nope-1")]
    [InlineData("[x](/practice/keel)", "There is no practice of “keel”")]
    [InlineData("[x](/nowhere)", "is no page of this site")]
    public void Check_DeadLink_IsAnErrorAtItsPlace(string link, string text)
    {
        Folder.Write("01-a.md", Head + "## Here\n\nSee [good](#here) and " + link + Words());

        AuthorError error = Assert.Single(CourseChecker.Check(Folder.Path).Errors);

        Assert.Contains(text, error.Text, StringComparison.Ordinal);
        Assert.Equal(("01-a.md", 10, 23), (error.File, error.Line, error.Column));
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
            Folder.Write("01-a.md", lesson);
            Assert.Empty(CourseChecker.Check(Folder.Path).Errors);
            return;
        }

        AssertFinds(lesson, text);
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
            Folder.Write("01-a.md", lesson);
            Assert.Empty(CourseChecker.Check(Folder.Path).Errors);
            return;
        }

        AssertFinds(lesson, text);
    }

    [Fact]
    public void Check_WordDefinedTwice_IsAnErrorAtTheSecondPlace()
    {
        Folder.Write("01-a.md",
            Head.Replace("minutes: 4\n", "minutes: 4\nglossary:\n  bead: a ball with a hole\n", StringComparison.Ordinal) + "A bead." + Words());
        Folder.Write("02-b.md",
            Head.Replace("minutes: 4\n", "minutes: 4\nglossary:\n  Beads: balls with holes\n", StringComparison.Ordinal) + "Some beads." + Words());

        AuthorError error = Assert.Single(CourseChecker.Check(Folder.Path).Errors);

        Assert.Equal(("02-b.md", 7, 3), (error.File, error.Line, error.Column));
        Assert.Contains("is defined already in 01-a.md", error.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Check_WordDefinedAndNotUsed_IsAnError() =>
        AssertFinds(Head.Replace("minutes: 4\n", "minutes: 4\nglossary:\n  bead: a ball with a hole\n", StringComparison.Ordinal) + "A plain fly." + Words(),
        "nowhere uses “bead”");

    [Fact]
    public void Check_WordThatALaterLessonBringsIn_IsRefusedInAnEarlierQuestion()
    {
        Folder.Write("01-first.md", Head + Question("first-01", "What does its **rudder** do? Which way up does it ride?"));
        Folder.Write("02-second.md", Head.Replace("concepts:", "glossary:\n  rudder: what steers.\nconcepts:", StringComparison.Ordinal) + "The rudder.\n\n"
            + Question("second-01", "Has it a rudder? Which way up does it ride?"));

        AuthorError error = Assert.Single(CourseChecker.Check(Folder.Path).Errors, e => e.Text.Contains("rudder", StringComparison.Ordinal));

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
        Folder.Write("01-first.md", $"{Head}{prose}\n\n{Question("first-01", "Which way up does it ride?")}");

        AuthorError[] found = [.. CourseChecker.Check(Folder.Path).Errors.Where(e => e.Text.Contains("stands above it", StringComparison.Ordinal))];

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
        Folder.Write("01-first.md", Head + prose + "\n\n```exercise\nid: first-01\nkind: measure\ntitle: T\nconcepts: [keel side]\n"
            + "prompt: What does it weigh?\nfile: recipes/slate-minnow.fly.yaml\nquantity: mass\ntolerance: 0.03 g\n"
            + "model answer: 0.555 g\nwrong answers: [2 g]\n```\n");

        Assert.Equal(refused,
            CourseChecker.Check(Folder.Path).Errors.Any(e => e.Text.Contains("first-01: its answer stands above it", StringComparison.Ordinal)));
    }
}
