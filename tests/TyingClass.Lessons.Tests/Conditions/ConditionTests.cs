using CsCheck;
using TyingClass.Lessons.Conditions;
using TyingClass.Lessons.Quantities;
using TyingClass.Recipes.Bodies;
using TyingClass.Recipes.Model;
using TyingClass.Recipes.Text;
using Xunit;

namespace TyingClass.Lessons.Tests.Conditions;

/// <summary>Runs Specs/conditions.md, and the conditions that speak of an answer.</summary>
public sealed class ConditionTests
{
    private static readonly Recipe Given = RecipeParser.Parse(Repo.Recipe("recipes/reed-darter.fly.yaml")!).Value!;

    private static readonly Recipe Submitted = Given with
    {
        Parts = Given.Parts.SetItem(0, Given.Parts[0] with { Side = Side.Top, SizeM = 4.4e-3 }),
    };

    private static readonly FlyFigures Start = new(Given);
    private static readonly ConditionFacts Facts = new(new FlyFigures(Submitted, Start), Start);
    private static readonly ConditionScope Repair = new(true, true, null, false, [], FlyBuilder.Names(Given.Parts));
    private static readonly Lock OneAtATime = new();

    public static TheoryData<string, string> Lines() => [.. Repo.Spec("conditions.md").ReplaceLineEndings("\n").Split('\n')
        .Where(l => l.StartsWith("| ", StringComparison.Ordinal)).Skip(2)
        .Select(l => l.Trim('|').Split(" | "))
        .Select(c => (c[0].Trim(), c[1].Trim()))];

    [Theory]
    [MemberData(nameof(Lines))]
    public void Parse_Condition_HasTheOutcomeListed(string condition, string outcome)
    {
        ConditionResult result = ConditionParser.Parse(condition, Repair);

        if (outcome is "holds" or "does not hold")
        {
            Assert.Equal("", result.Error);
            lock (OneAtATime) Assert.Equal(outcome == "holds", result.Condition!.Holds(Facts));
            return;
        }

        string[] parts = outcome.Split(": ", 2);
        Assert.Null(result.Condition);
        Assert.Contains(parts[1], result.Error, StringComparison.Ordinal);
        Assert.Equal(parts[0], $"{result.Offset}");
    }

    [Theory]
    [InlineData("answer is near 5 mm", 5.4e-3, true)]
    [InlineData("answer is near 5 mm", 5.6e-3, false)]
    [InlineData("answer < 0 mm", -1e-3, true)]
    [InlineData("answer is near mass center, x", 7.9e-3, true)]
    [InlineData("answer is near -1 * mass center, x", 7.9e-3, false)]
    public void Holds_NumberAnswered_IsHeldAgainstTheTolerance(string condition, double answerM, bool holds)
    {
        ConditionScope scope = new(true, false, Dimension.Length, true, [], []);

        ConditionResult result = ConditionParser.Parse(condition, scope);

        Assert.Equal("", result.Error);
        Assert.Equal(holds, result.Condition!.Holds(new ConditionFacts(new FlyFigures(Given), null, null, answerM, 0.5e-3)));
    }

    [Theory]
    [InlineData("answer is \"point up\"", true)]
    [InlineData("answer is not “point down”", true)]
    [InlineData("answer = \"Point Down\"", false)]
    public void Holds_ChoiceAnswered_ComparesTheWords(string condition, bool holds)
    {
        ConditionScope scope = new(true, false, null, false, ["point up", "point down"], []);

        ConditionResult result = ConditionParser.Parse(condition, scope);

        Assert.Equal("", result.Error);
        Assert.Equal(holds, result.Condition!.Holds(new ConditionFacts(null, null, "point up")));
    }

    [Fact]
    public void Parse_ChoiceThatIsNoneOfThem_SaysWhichThereAre()
    {
        ConditionResult result = ConditionParser.Parse("answer is \"sideways\"", new ConditionScope(true, false, null, false, ["point up", "point down"], []));

        Assert.Equal("“sideways” is not one of the choices: point up, point down.", result.Error);
        Assert.Equal(10, result.Offset);
    }

    [Theory]
    [InlineData("mass > 1 g", false, false, "0: There is no fly in this exercise whose figures could be named.")]
    [InlineData("added mass > 1 g", true, false, "0: “added mass” needs a fly given to compare with.")]
    [InlineData("change in mass > 1 g", true, false, "10: There is no fly given to compare with in this kind of exercise.")]
    [InlineData("wing heavier", true, false, "0: There is no fly given to compare with in this kind of exercise.")]
    public void Parse_WithoutWhatItSpeaksOf_SaysWhatIsMissing(string condition, bool hasFly, bool hasStart, string said)
    {
        ConditionResult result = ConditionParser.Parse(condition, new ConditionScope(hasFly, hasStart, null, false, [], []));

        Assert.Null(result.Condition);
        Assert.Equal(said, $"{result.Offset}: {result.Error}");
    }

    /// <summary>Before the parts of the fly are known, every kind of part may be named.</summary>
    [Fact]
    public void Parse_PartOfAFlyNotKnownYet_IsAnyKindOfPart()
    {
        ConditionScope scope = new(true, true, null, false, [], []);
        Assert.Equal("", ConditionParser.Parse("cone heavier", scope).Error);
        Assert.Contains("no part called “wing 2”", ConditionParser.Parse("wing 2 heavier", scope).Error, StringComparison.Ordinal);
    }

    /// <summary>What a fly has no figure of is neither more nor less nor something else: no condition about it holds.</summary>
    [Theory]
    [InlineData("mass > 0 g", false)]
    [InlineData("mass is not 5 g", false)]
    [InlineData("mass unchanged", true)]
    [InlineData("wing unchanged", true)]
    [InlineData("hook heavier", true)]
    public void Holds_WithoutAFigureOnBothSides_DoesNot(string condition, bool compares)
    {
        Condition parsed = ConditionParser.Parse(condition, Repair).Condition!;
        Assert.False(parsed.Holds(new ConditionFacts(null, null)));
        Assert.False(parsed.Holds(new ConditionFacts(null, Start)));
        if (compares) Assert.False(parsed.Holds(new ConditionFacts(Start, null)));
    }

    [Fact]
    public void Parse_AnyText_NeverThrows()
    {
        string[] words = ["mass", ">", "0.4 mm", "and", "(", ")", "answer", "is", "keel height", "rises", "parts[0].side", "not", "\"", "×"];
        Gen<string> sentences = Gen.Int[0, words.Length - 1].Select(i => words[i]).List[0, 8].Select(w => string.Join(' ', w));

        Gen.OneOf(Gen.String, sentences).Sample(text => Assert.NotNull(ConditionParser.Parse(text, Repair)), iter: 3000);
    }
}
