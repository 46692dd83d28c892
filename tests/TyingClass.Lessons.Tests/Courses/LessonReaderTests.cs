using System.Collections.Immutable;
using TyingClass.Lessons.Courses;
using Xunit;

namespace TyingClass.Lessons.Tests.Courses;

public sealed class LessonReaderTests
{
    private const string Good = "---\ntitle: T\nsummary: S\nconcepts: [a]\nminutes: 5\nevening: 2\nglossary:\n  keel: the low side\n---\n\nHello.\n";

    [Fact]
    public void Read_GoodFile_KeepsEveryKey()
    {
        Lesson lesson = LessonReader.Read("07-keel-height.md", Good, _ => null).Lesson!;

        Assert.Equal(("keel-height", 7, "T", "S", 5, 2), (lesson.Slug, lesson.Number, lesson.Title, lesson.Summary, lesson.Minutes, lesson.Evening));
        Assert.Equal(["a"], lesson.Concepts);
        Assert.Equal(new GlossaryTerm("keel", "the low side", 8, 3), lesson.Glossary.Single());
        Assert.Equal("<p>Hello.</p>", ((ProseBlock)lesson.Blocks.Single()).Html);
    }

    [Fact]
    public void Read_FigureAndUnit_StayTogetherAndWordsDoNot() =>
        Assert.Equal(
            "<p>A bead of 4\u00A0mm has 17\u00A0800\u00A0kg/m³, in 3 minutes.</p>",
            ((ProseBlock)Repo.Read("A bead of 4 mm has 17 800 kg/m³, in 3 minutes.").Lesson!.Blocks.Single()).Html);

    [Theory]
    [InlineData("keel.md")]
    [InlineData("1-keel.md")]
    [InlineData("01-Keel.md")]
    [InlineData("01-keel height.md")]
    public void Read_BadFileName_SaysHowToNameIt(string name) =>
        Assert.Contains("as in 01-mass-center.md", Assert.Single(LessonReader.Read(name, Good, _ => null).Errors).Text, StringComparison.Ordinal);

    [Theory]
    [InlineData("Hello.", "1:1", "begins with a line of three hyphens")]
    [InlineData("---\ntitle: T\n", "1:1", "never ends")]
    [InlineData("---\n---\n", "2:1", "is empty")]
    [InlineData("---\ntitle: T\nsummary: S\nconcepts: [a]\nminutes: soon\n---\n", "5:10", "whole number from 1 to 240")]
    [InlineData("---\ntitle: T\nsummary: S\nconcept: [a]\nconcepts: [b]\nminutes: 5\n---\n", "4:1", "Did you mean “concepts”?")]
    [InlineData("---\ntitle: [T]\nsummary: S\nconcepts: [b]\nminutes: 5\n---\n", "2:8", "one piece of text")]
    [InlineData("---\ntitle: T\nsummary: S\nconcepts: [b]\nminutes: 5\nfigures:\n  - file: recipes/x.fly.yaml\n    mass: 1 g\n---\n", "7:11",
        "There is no file")]
    public void Read_BadFrontMatter_GivesPlaceAndAdvice(string text, string place, string advice)
    {
        AuthorError error = LessonReader.Read("01-a.md", text, _ => null).Errors[0];

        Assert.Equal(place, $"{error.Line}:{error.Column}");
        Assert.Contains(advice, error.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Read_FlyFence_KeepsViewCaptionAndRecipe()
    {
        FlyBlock fly =
            (FlyBlock)Repo.Fence("fly keel height state=fresh", "caption: A fry.\nrecipe: Fry\nintent: point down\nhook:\n  size: 10").Lesson!.Blocks.Single();

        Assert.Equal((FlyViews.KeelHeight, "A fry.", "fresh"), (fly.View, fly.Caption, fly.Arguments["state"]));
        Assert.Equal("Fry", Recipes.Text.RecipeParser.Parse(fly.RecipeText).Value!.Name);
    }

    [Theory]
    [InlineData("fly sideways", "file: recipes/reed-darter.fly.yaml", 0, "cannot be drawn")]
    [InlineData("fly side state=damp", "file: recipes/reed-darter.fly.yaml", 0, "state=fresh or state=soaked")]
    [InlineData("fly", "caption: x\nfile: recipes/reed-darter.fly.yaml\nrecipe: x", 3, "not a key of a fly fence")]
    [InlineData("fly", "recipe: Fry\nintent: point down\ncaption: |\n  two\n  lines\nhook:\n  size: 99", 7, "99")]
    public void Read_BadFlyFence_GivesItsLine(string info, string body, int line, string text)
    {
        AuthorError error = Assert.Single(Repo.Fence(info, body).Errors);

        Assert.Equal(line, error.Line - Repo.LinesBeforeFence);
        Assert.Contains(text, error.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Read_FigureFence_KeepsKindFliesValuesAndCaption()
    {
        FigureBlock figure = (FigureBlock)Repo.Fence("figure",
            "kind: compare\ncurve: depth\ncaption: Two.\nflies:\n  - called: as tied\n    file: recipes/slate-minnow.fly.yaml\n"
            + "  - called: small bead\n    file: recipes/slate-minnow.fly.yaml\n    with: {\"parts[0].size\": 2.4 mm}").Lesson!.Blocks.Single();

        Assert.Equal(("compare", "depth", "Two."), (figure.Kind, figure.Values["curve"], figure.Caption));
        Assert.Equal(["as tied", "small bead"], figure.Flies.Select(f => f.Called));
        Assert.Equal("2.4 mm", Recipes.Text.RecipeDraft.Parse(figure.Flies[1].Text).Value!.Get("parts[0].size"));
    }

    [Theory]
    [InlineData("kind: zeppelin\nfile: recipes/reed-darter.fly.yaml", 1, "no figure of the kind “zeppelin”")]
    [InlineData("kind: garden gat\nfile: recipes/reed-darter.fly.yaml", 1, "Did you mean “garden gate”?")]
    [InlineData("kind: hook", 1, "Name one fly")]
    [InlineData("kind: hook\nfile: recipes/nothing.fly.yaml", 2, "There is no file")]
    [InlineData("kind: ship and fly\nfile: recipes/reed-darter.fly.yaml\nheel: 60", 3, "from 5 to 20")]
    [InlineData("kind: garden gate\nfile: recipes/reed-darter.fly.yaml\nheel: 10", 3, "not a key of a figure fence")]
    [InlineData("kind: air leaving hair\nmaterials: fur strip, moonbeams", 2, "“moonbeams” is no material")]
    [InlineData("kind: compare\ncurve: beauty\nflies:\n  - called: one\n    file: recipes/reed-darter.fly.yaml", 2, "No curve is called “beauty”")]
    [InlineData("kind: compare\ncurve: depth\nflies:\n  - called: one\n    file: recipes/reed-darter.fly.yaml", 4, "shows 2 to 4 flies")]
    [InlineData("kind: fly\nfile: recipes/reed-darter.fly.yaml\nlabels:\n  rudder: the rudder", 4, "“rudder” is nothing to point at")]
    public void Read_BadFigureFence_GivesPlaceAndAdvice(string body, int line, string advice)
    {
        ImmutableArray<AuthorError> errors = Repo.Fence("figure", body).Errors;

        Assert.Equal(line, errors[0].Line - Repo.LinesBeforeFence);
        Assert.Contains(advice, errors[0].Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Read_WindowsLineEndings_GiveTheSameLesson()
    {
        Lesson unix = LessonReader.Read("01-a.md", Good, _ => null).Lesson!,
            windows = LessonReader.Read("01-a.md", "\uFEFF" + Good.ReplaceLineEndings("\r\n"), _ => null).Lesson!;

        Assert.Equal(unix.Blocks.Single(), windows.Blocks.Single());
        Assert.Equal(unix.Title, windows.Title);
    }
}
