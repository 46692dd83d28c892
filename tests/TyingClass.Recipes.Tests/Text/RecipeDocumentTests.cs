using System.Text.RegularExpressions;
using TyingClass.Recipes.Parts;
using TyingClass.Recipes.Text;
using Xunit;

namespace TyingClass.Recipes.Tests.Text;

/// <summary>docs/recipes.md says what the parser does.</summary>
public sealed partial class RecipeDocumentTests
{
    private static readonly string Document = File.ReadAllText(Path.Combine(AppContext.BaseDirectory, "Text", "recipes.md"));

    [Fact]
    public void Examples_InTheDocument_AllParse()
    {
        MatchCollection examples = Example().Matches(Document);
        Assert.NotEmpty(examples);
        Assert.All(examples, e => Assert.Empty(RecipeParser.Parse(e.Groups[1].Value).Errors));
    }

    [Fact]
    public void PartsTable_OfTheDocument_ListsTheKeysTaken() => Assert.All(KindsOfPart.All, kind =>
    {
        string? row = Document.Split('\n').FirstOrDefault(line => line.StartsWith($"| `{kind.Word}` |", StringComparison.Ordinal));
        Assert.True(row is not null, $"Write a row for “{kind.Word}” into the table under “The parts” of docs/recipes.md.");
        string[] listed = [.. Code().Matches(row).Skip(1).Select(m => m.Groups[1].Value), "part", "at", "material", "density", "side offset", "clocked"];
        Assert.Equal(listed.Order(), kind.Keys.Order());
    });

    [Theory]
    [InlineData("size", "0.5 mm to 12 mm", "part: bead, at: 0 mm", "90 mm")]
    [InlineData("turns", "1 to 200", "part: wraps, at: 0 mm", "201")]
    [InlineData("clocked", "-180° to 180°", "part: wraps, at: 0 mm", "181°")]
    [InlineData("mass", "0.1 mg to 10 g", "part: tail, at: 0 mm", "11 g")]
    [InlineData("density", "10 kg/m³ to 20000 kg/m³", "part: tail, at: 0 mm", "21 g/cm³")]
    public void RangesTable_OfTheDocument_AgreesWithTheErrors(string key, string range, string part, string tooMuch)
    {
        Assert.Contains(Document.Split('\n'),
            line => line.StartsWith($"| `{key}` |", StringComparison.Ordinal) && line.Contains(range, StringComparison.Ordinal));
        RecipeError error = Assert.Single(RecipeParser.Parse(Samples.Minimal + $"parts: [{{{part}, {key}: {tooMuch}}}]\n").Errors);
        Assert.Contains(range, error.Text, StringComparison.Ordinal);
    }

    // EOS-80, the density of sea water, holds to 42 g/kg (UNESCO 1981, from memory); the viscosity's formula (Sharqawy 2010) reaches farther.
    [Fact]
    public void SalinityRow_OfTheDocument_IsTheParsers()
    {
        string row = Assert.Single(Document.Split('\n'), line => line.StartsWith("| `water` |", StringComparison.Ordinal));
        string most = SalinityRange().Match(row).Groups[1].Value;

        Assert.Equal("42", most);
        Assert.Empty(RecipeParser.Parse(Samples.Minimal + $"fishing: {{water: sea {most} g/kg 12 °C}}\n").Errors);
        Assert.Contains($"0 g/kg to {most} g/kg",
            Assert.Single(RecipeParser.Parse(Samples.Minimal + $"fishing: {{water: sea {most}.1 g/kg 12 °C}}\n").Errors).Text, StringComparison.Ordinal);
    }

    [GeneratedRegex(@"0 g/kg to ([0-9]+) g/kg")]
    private static partial Regex SalinityRange();

    [GeneratedRegex(@"^```yaml\n(.*?)^```", RegexOptions.Multiline | RegexOptions.Singleline)]
    private static partial Regex Example();

    [GeneratedRegex("`([^`]+)`")]
    private static partial Regex Code();
}
