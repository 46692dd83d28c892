using CsCheck;
using TyingClass.Recipes.Model;
using TyingClass.Recipes.Text;
using Xunit;

namespace TyingClass.Recipes.Tests.Text;

public sealed class RecipeDraftTests
{
    private static readonly RecipeDraft Minnow = RecipeDraft.Parse(Samples.Minimal + """
        parts:
          - {part: bead, size: 5/64 in, at: 0}
          - {part: tail, length: 1 1/4 in, side offset: wide, at: 20 mm}
        """).Value!;

    [Fact]
    public void Get_FieldAsTyped_IsTheVeryString()
    {
        Assert.Equal("5/64 in", Minnow.Get("parts[0].size"));
        Assert.Equal("wide", Minnow.Get("parts[1].side offset"));
        Assert.Equal("25 mm", Minnow.Get("hook.shank"));
    }

    [Theory]
    [InlineData("hook")]
    [InlineData("hook.gape")]
    [InlineData("parts[7].size")]
    [InlineData("recipe.size")]
    [InlineData("")]
    [InlineData("parts[")]
    public void Get_NoSuchField_IsNull(string path) => Assert.Null(Minnow.Get(path));

    [Fact]
    public void With_NewField_TakesItsUsualPlace()
    {
        RecipeDraft changed = Minnow.With("parts[0].material", "brass").With("hook.gape", "8 mm").With("fishing.knot", "loop");
        Assert.Equal(["part", "material", "size", "at"], changed.Fields("parts[0]").Select(f => f.Key));
        Assert.EndsWith("fishing:\n  knot: loop\n", changed.ToText(), StringComparison.Ordinal);
        Assert.Null(Minnow.Get("hook.gape"));
    }

    [Fact]
    public void With_Null_TakesTheFieldAway()
    {
        Assert.Null(Minnow.With("hook.shank", null).Get("hook.shank"));
        Assert.Equal(Minnow, Minnow.With("fishing.water", null));
        Assert.Equal(1, Minnow.With("parts[0]", null).PartCount);
    }

    [Theory]
    [InlineData("parts[9].size")]
    [InlineData("parts[0]..size")]
    [InlineData("")]
    public void With_ImpossiblePath_Throws(string path) => Assert.Throws<ArgumentException>(() => Minnow.With(path, "x"));

    [Fact]
    public void Parts_AddedMovedRemoved_KeepTheirFields()
    {
        RecipeDraft three = Minnow.AddPart(KeyValuePair.Create("part", "wing"));
        Assert.Equal(["bead", "tail", "wing"], Kinds(three));
        Assert.Equal(["wing", "bead", "tail"], Kinds(three.MovePart(2, 0)));
        Assert.Equal(["bead", "wing"], Kinds(three.RemovePart(1)));
        Assert.Equal("1 1/4 in", three.MovePart(1, 2).Get("parts[2].length"));
    }

    [Fact]
    public void Errors_OfDraftText_NameTheFieldsThatAreWrong()
    {
        ParseResult<Recipe> result = RecipeParser.Parse(Minnow.ToText());
        Assert.Equal(["parts[0].at", "parts[1].side offset"], result.Errors.Select(e => e.Path));
        Assert.Equal(["0", "wide"], result.Errors.Select(e => Minnow.Get(e.Path!)));
    }

    [Fact]
    public void FromFields_PostedForm_ClosesGapsAndIgnoresStrangers()
    {
        RecipeDraft draft = RecipeDraft.FromFields(
        [
            KeyValuePair.Create("parts[3].at", "2 mm"), KeyValuePair.Create("parts[3].part", "tail"), KeyValuePair.Create("recipe", "Slate Minnow"),
            KeyValuePair.Create("hook.size", "8"), KeyValuePair.Create("hook.gape", "  "), KeyValuePair.Create("parts[1].part", "bead"),
            KeyValuePair.Create("__token", "x"), KeyValuePair.Create("parts[0][1].x", "y"), KeyValuePair.Create("a.b.c", "z"),
        ]);
        Assert.Equal(["bead", "tail"], Kinds(draft));
        Assert.Equal(
            ["recipe: Slate Minnow", "hook.size: 8", "parts[0].part: bead", "parts[1].part: tail", "parts[1].at: 2 mm"],
            draft.Values.Select(v => $"{v.Key}: {v.Value}"));
    }

    [Fact]
    public void ToText_HostileStrings_ReadBackUnchanged() =>
        Gen.Select(Hostile, Hostile, Hostile).Sample((name, value, key) =>
        {
            RecipeDraft draft = RecipeDraft.Empty.With("recipe", name).AddPart(KeyValuePair.Create("part", value), KeyValuePair.Create(key, value));
            RecipeDraft back = RecipeDraft.Parse(draft.ToText()).Value!;
            Assert.Equal(name, back.Get("recipe"));
            Assert.Equal(KeyValuePair.Create(key, value), back.Fields("parts[0]")[^1]);
        }, iter: 3000);

    // A form's recipe is read without being printed: that must tell no other fly, and no other mistake.
    [Fact]
    public void ParseDraft_HostileStrings_IsAsFromItsText() =>
        Gen.Select(Hostile, Hostile).Sample((a, b) => AssertSame(RecipeDraft.FromFields(
        [
            KeyValuePair.Create("recipe", a), KeyValuePair.Create("intent", "point up"), KeyValuePair.Create("hook.size", "6"),
            KeyValuePair.Create("parts[0].part", "bead"), KeyValuePair.Create("parts[0].size", b), KeyValuePair.Create("parts[0].at", "0"),
        ])), iter: 2000);

    [Fact]
    public void ParseDraft_AnyValidRecipe_IsAsFromItsText() => RecipeGen.Valid.Sample(recipe =>
    {
        Assert.Equal(recipe, RecipeParser.Parse(RecipeDraft.Of(recipe)).Value);
    }, iter: 300);

    [Theory]
    [InlineData("hook.size", "7x", "hook.size")]
    [InlineData("fishing.speed", "fast", "fishing.speed")]
    [InlineData("parts[1].side offset", "wide", "parts[1].side offset")]
    public void ParseDraft_Mistake_HasThePlaceOfItsText(string path, string value, string complaint)
    {
        RecipeDraft draft = Minnow.With(path, value);
        AssertSame(draft);
        Assert.Contains(RecipeParser.Parse(draft).Errors, e => e.Path == complaint && e.Line > 1);
    }

    [Theory]
    [InlineData("null")]
    [InlineData("~")]
    [InlineData("")]
    [InlineData("x: y")]
    [InlineData("- x")]
    [InlineData("# x")]
    [InlineData("---")]
    [InlineData("...")]
    [InlineData("\u202E\u0000\t\r\n\u0085\u2028 x ")]
    [InlineData("*a &b !c |")]
    public void ToText_TroublesomeString_ReadsBackUnchanged(string value) =>
        Assert.Equal(value, RecipeDraft.Parse(RecipeDraft.Empty.With("recipe", value).ToText()).Value!.Get("recipe"));

    [Theory]
    [InlineData("recipe: \"open", 1, 9)]
    [InlineData("recipe: *x", 1, 9)]
    [InlineData("", 1, 1)]
    [InlineData("- a", 1, 1)]
    public void Parse_BrokenLayout_SaysWhere(string text, int line, int column)
    {
        ParseResult<RecipeDraft> result = RecipeDraft.Parse(text);
        Assert.False(result.Success);
        Assert.Equal((line, column), (result.Errors[0].Line, result.Errors[0].Column));
    }

    [Fact]
    public void Of_AnyValidRecipe_ParsesBackEqual() =>
        RecipeGen.Valid.Sample(recipe => recipe == RecipeParser.Parse(RecipeDraft.Of(recipe).ToText()).Value, iter: 300);

    private static void AssertSame(RecipeDraft draft)
    {
        ParseResult<Recipe> direct = RecipeParser.Parse(draft), fromText = RecipeParser.Parse(draft.ToText());
        Assert.Equal(fromText.Value, direct.Value);
        Assert.Equal(fromText.Errors, direct.Errors);
    }

    // Any text a form can post: no lone surrogates, since UTF-8 has none.
    private static Gen<string> Hostile =>
        Gen.String[Gen.OneOf(Gen.Char["ab01 :-#&*!|>'\"%@`?{}[],\\~\t\n\r\u0000\u0007\u0085\u00A0\u2028\u202E\uFEFF°³"], Gen.Char['\u0000', '\uD7FF']), 0, 12];

    private static IEnumerable<string?> Kinds(RecipeDraft draft) => Enumerable.Range(0, draft.PartCount).Select(i => draft.Get($"parts[{i}].part"));
}
