using System.Text.RegularExpressions;
using TyingClass.Recipes.Model;
using TyingClass.Recipes.Text;
using Xunit;

namespace TyingClass.Recipes.Tests.Text;

/// <summary>Every pair of the specification files, each a test.</summary>
public sealed class SpecificationTests
{
    public static TheoryData<string> Titles => [.. SpecificationFile.All.Keys];

    [Theory]
    [MemberData(nameof(Titles))]
    public void Parse_SpecifiedText_GivesSpecifiedOutcome(string title)
    {
        SpecificationCase pair = SpecificationFile.All[title];
        ParseResult<Recipe> result = RecipeParser.Parse(pair.RecipeText);
        if (pair.Kind == "recipe") AssertRecipe(pair, result);
        else AssertErrors(pair, result);
    }

    [Fact]
    public void All_SpecificationFiles_HoldAtLeastSeventyPairs() => Assert.True(SpecificationFile.All.Count >= 70);

    private static void AssertRecipe(SpecificationCase pair, ParseResult<Recipe> result)
    {
        Assert.True(result.Success, string.Join('\n', result.Errors));
        Assert.Equal(result.Value, RecipeParser.Parse(RecipeWriter.Write(result.Value)).Value);
        RecipeDraft written = RecipeDraft.Of(result.Value);
        string[] actual =
            [.. pair.Outcome.Select(line => line[..line.IndexOf(": ", StringComparison.Ordinal)]).Select(path => $"{path}: {written.Get(path) ?? "(none)"}")];
        Assert.Equal(pair.Outcome, actual);
    }

    private static void AssertErrors(SpecificationCase pair, ParseResult<Recipe> result)
    {
        Assert.False(result.Success);
        string[] actual = [.. result.Errors.Select(e => FormattableString.Invariant($"{e.Line}:{e.Column} {e.Path ?? "-"}: {e.Text}"))];
        bool same = actual.Length == pair.Outcome.Length && pair.Outcome.Zip(actual).All(p => Matches(p.First, p.Second));
        if (!same) Assert.Equal(string.Join('\n', pair.Outcome), string.Join('\n', actual));
    }

    private static bool Matches(string specified, string actual) =>
        Regex.IsMatch(actual, @"\A" + Regex.Escape(specified).Replace("…", ".*", StringComparison.Ordinal) + @"\z", RegexOptions.Singleline);
}
