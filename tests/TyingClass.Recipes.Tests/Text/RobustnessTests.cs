using System.Text;
using CsCheck;
using TyingClass.Recipes.Model;
using TyingClass.Recipes.Text;
using Xunit;

namespace TyingClass.Recipes.Tests.Text;

/// <summary>Whatever is typed or sent: a value, or errors that point into the text; never an exception.</summary>
public sealed class RobustnessTests
{
    private const string Signs = " \t\n\r:-#&*!|>'\"%@`?{}[],\\~0123456789.abmx/°³\u0000\u0007\u0085\u00A0\u2028\uFEFF\uD83D\uDC1F\uFFFD";

    private static readonly Gen<string> Mutated =
        from text in Gen.OneOf(Samples.All)
        from edits in Gen.Select(Gen.Int[0, 2], Gen.Double[0, 1], Gen.String[Gen.Char[Signs], 0, 4]).Array[1, 6]
        select edits.Aggregate(text, Edit);

    [Fact]
    public void Parse_MutatedText_GivesValueOrErrorsWithinTheText() => Mutated.Sample(AssertSound, iter: 3000);

    [Fact]
    public void Parse_Garbage_GivesValueOrErrorsWithinTheText() =>
        Gen.String[Gen.Char[Signs], 0, 200].Sample(AssertSound, iter: 3000);

    [Fact]
    public void Draft_OfMutatedText_KeepsEveryFieldAndEveryComplaint() =>
        Mutated.Sample(text =>
        {
            ParseResult<RecipeDraft> draft = RecipeDraft.Parse(text);
            if (!draft.Success) return;
            string rewritten = draft.Value.ToText();
            Assert.Equal(draft.Value.Values, RecipeDraft.Parse(rewritten).Value!.Values);
            Assert.Equal(Complaints(text), Complaints(rewritten));
        }, iter: 3000);

    [Theory]
    [InlineData("  size: # six\n", "  size: # six\n")]
    [InlineData("  size:   # \"`4eric scale\n", "  size: # \"`4eric scale\n")]
    [InlineData("  size: #\n", "  size: #\n")]
    public void Draft_OfARemarkWhereAValueShouldStand_KeepsIt(string typed, string kept)
    {
        string text = Samples.Minimal.Replace("  size: 8\n", typed, StringComparison.Ordinal);
        string rewritten = RecipeDraft.Parse(text).Value!.ToText();
        Assert.Contains(kept, rewritten, StringComparison.Ordinal);
        Assert.Equal(Complaints(text), Complaints(rewritten));
    }

    [Theory]
    [InlineData("[")]
    [InlineData("{")]
    [InlineData("- ")]
    [InlineData("? ")]
    [InlineData("a: ")]
    [InlineData("[{a: ")]
    [InlineData("\"")]
    [InlineData("!")]
    [InlineData("a:\n")]
    [InlineData("&a ")]
    [InlineData("\t")]
    [InlineData("---\n")]
    [InlineData("|\n")]
    [InlineData("x")]
    public void Parse_OneThingOverAndOver_GivesErrorsWithinTheText(string piece)
    {
        string text = new StringBuilder().Insert(0, piece, 60_000 / piece.Length).ToString();
        AssertSound(text);
        Assert.False(RecipeParser.Parse(text).Success);
    }

    [Fact]
    public void Parse_NestedTooDeep_SaysSo()
    {
        RecipeError error = Assert.Single(RecipeParser.Parse(Samples.Minimal + "parts: [[[[[[[[[[]]]]]]]]]]\n").Errors, e => e.Path is null);
        Assert.Equal("6:15: Lists and groups are nested far deeper here than any recipe needs. Check the indentation and the brackets.", error.ToString());
    }

    [Fact]
    public void Parse_JustWithin64Kilobytes_IsRead()
    {
        string padding = "#" + new string('x', 65_536 - Samples.Minimal.Length - 1);
        Assert.True(RecipeParser.Parse(Samples.Minimal + padding).Success);
    }

    [Fact]
    public void Parse_Over64KilobytesOfUtf8_IsRefusedWhereItPasses()
    {
        // Two bytes each: 1 + 2 × 32 767 = 65 535 bytes fit, the next letter does not.
        RecipeError error = Assert.Single(RecipeParser.Parse("#" + new string('é', 32_768)).Errors);
        Assert.Equal((1, 32_769, (string?)null), (error.Line, error.Column, error.Path));
        Assert.StartsWith("The text is longer than 64 KB", error.Text, StringComparison.Ordinal);
    }

    // Recipes of up to 60 parts were kept before: they still read, are written back the same and can be computed.
    [Fact]
    public void Parse_AsManyPartsAsEverWereTaken_StillReadsAndBuilds()
    {
        string text = Samples.Minimal + "parts:\n" + string.Concat(Enumerable.Repeat("  - {part: tail, at: 20 mm, length: 30 mm}\n", 60));
        Recipe recipe = RecipeParser.Parse(text).Value!;

        Assert.Equal(60, recipe.Parts.Length);
        Assert.Equal(recipe, RecipeParser.Parse(RecipeWriter.Write(recipe)).Value);
        Assert.Equal(61, TyingClass.Recipes.Bodies.FlyBuilder.Build(recipe).Body.Parts.Length);
    }

    [Fact]
    public void Parse_TooManyParts_SaysHowMany()
    {
        string parts = string.Concat(Enumerable.Repeat("  - {part: tail, at: 20 mm}\n", 61));
        RecipeError error = Assert.Single(RecipeParser.Parse(Samples.Minimal + "parts:\n" + parts).Errors);
        Assert.Equal(
            "67:5: There are 61 parts; a fly may have at most 60, so that it can be worked out while you wait. Write parts that are alike and lie together "
                + "as one.", error.ToString());
    }

    [Fact]
    public void Parse_ThousandsOfMistakes_ListsTheFirstTwoHundredAndCountsTheRest()
    {
        string wrong = string.Concat(Enumerable.Range(0, 1000).Select(i => $"wrong{i}: 1\n"));
        ParseResult<Recipe> result = RecipeParser.Parse(Samples.Minimal + wrong);
        Assert.Equal(201, result.Errors.Length);
        Assert.Equal("206:1: There are 800 more mistakes from here on. Mend the ones above first.", result.Errors[^1].ToString());
    }

    [Fact]
    public void Parse_ByteOrderMarkAndWindowsLineEnds_AreTaken()
    {
        Assert.True(RecipeParser.Parse("\uFEFF" + Samples.Minimal.Replace("\n", "\r\n", StringComparison.Ordinal)).Success);
    }

    [Fact]
    public void Parse_HostileValue_IsQuotedCutAndVisible()
    {
        RecipeError error =
            Assert.Single(RecipeParser.Parse(Samples.Minimal + "  gape: \"\\u0007\\n<script>alert(1)</script>" + new string('y', 500) + "\"\n").Errors);
        Assert.DoesNotContain(error.Text, char.IsControl);
        Assert.True(error.Text.Length < 250);
    }

    private static string Edit(string text, (int What, double Where, string Piece) edit)
    {
        int at = (int)(edit.Where * text.Length);
        int to = Math.Min(text.Length, at + edit.Piece.Length);
        return edit.What switch
        {
            0 => text.Insert(at, edit.Piece),
            1 => text.Remove(at, to - at),
            _ => text[..at] + edit.Piece + text[to..],
        };
    }

    private static void AssertSound(string text)
    {
        ParseResult<Recipe> result = RecipeParser.Parse(text);
        Assert.Equal(result.Success, result.Errors.IsEmpty);
        string[] lines = text.TrimStart('\uFEFF').Replace("\r\n", "\n", StringComparison.Ordinal).Replace('\r', '\n').Split('\n');
        Assert.All(result.Errors, e =>
        {
            Assert.InRange(e.Line, 1, lines.Length);
            Assert.InRange(e.Column, 1, lines[e.Line - 1].Length + 1);
            Assert.NotEmpty(e.Text);
        });
    }

    private static string[] Complaints(string text) => [.. RecipeParser.Parse(text).Errors.Select(e => $"{e.Path}: {e.Text}").Order(StringComparer.Ordinal)];
}
