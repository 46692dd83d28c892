using TyingClass.Lessons.Checking;
using TyingClass.Lessons.Courses;
using Xunit;

namespace TyingClass.Lessons.Tests.Checking;

public sealed class ReadingLevelTests
{
    // Counted by ear, a beat to a syllable.
    [Theory]
    [InlineData(1, "eye", "eyes", "shank", "weight", "tied", "used", "makes", "tube", "flies", "straight", "guide", "the", "thought", "sea")]
    [InlineData(2, "center", "needed", "boxes", "table", "handled", "tying", "being", "fluid", "hundred", "lion", "silver", "minnow", "idle", "likely",
        "careful", "cement", "changes", "buoyant")]
    [InlineData(3, "density", "gravity", "area", "idea", "actual", "however", "example", "gravitate")]
    [InlineData(4, "material", "arithmetic")]
    public void Syllables_OfCommonWords_AreAsSpoken(int expected, params string[] words)
    {
        foreach (string word in words)
        {
            Assert.Equal((word, expected), (word, ReadingLevel.Syllables(word)));
        }
    }

    // 0.39 × words per sentence + 11.8 × syllables per word − 15.59, worked by hand.
    [Theory]
    [InlineData("The cat sat on the mat.", 6.0 / 1, 6.0 / 6)]
    [InlineData("Weigh the material. Then multiply!", 5.0 / 2, 10.0 / 5)]
    [InlineData("It weighs 0.55 g in air.", 4.0 / 1, 4.0 / 4)]
    public void Of_ShortTexts_IsTheFormula(string text, double wordsPerSentence, double syllablesPerWord)
    {
        (double grade, double perSentence) = ReadingLevel.Of([text]);

        Assert.Equal(wordsPerSentence, perSentence, 1e-9);
        Assert.Equal(0.39 * wordsPerSentence + 11.8 * syllablesPerWord - 15.59, grade, 1e-9);
    }

    [Fact]
    public void Of_NoText_IsNothing() => Assert.Equal((0.0, 0.0), ReadingLevel.Of([]));

    [Fact]
    public void Of_TablesHeadingsAndFootnotes_AreNotRead()
    {
        Lesson plain = Repo.Read("The cat sat on the mat.").Lesson!;
        Lesson dressed = Repo.Read(
            "## An extraordinary explanation\n\nThe cat sat on the mat.[^n]\n\n| extraordinary |\n| --- |\n| explanation |\n\n[^n]: Extraordinary "
                + "explanations.\n").Lesson!;

        Assert.Equal(ReadingLevel.Of(plain), ReadingLevel.Of(dressed));
    }
}
