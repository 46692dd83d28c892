using TyingClass.Lessons.Revisions;
using TyingClass.Recipes.Model;
using TyingClass.Recipes.Text;
using Xunit;

namespace TyingClass.Lessons.Tests.Revisions;

public sealed class RevisionComparisonTests
{
    private const string First = """
        recipe: Reed Darter
        intent: point up
        hook:
          size: 6
          eye: down 25°
        parts:
          - part: dumbbell eyes
            material: tin
            size: 3 mm
            at: 4 mm
            side: top
          - part: body
            material: fur dubbing
            mass: 0.06 g
            diameter: 5 mm
            at: 5 mm
            to: 14 mm
          - part: wing
            material: bucktail
            length: 40 mm
            at: 3 mm
            side: under
        """;

    [Fact]
    public void Between_ThreeThingsChanged_NamesThemPartByPart()
    {
        string second = First.Replace("down 25°", "straight", StringComparison.Ordinal)
            .Replace("size: 3 mm", "size: 4 mm", StringComparison.Ordinal)
            .Replace("mass: 0.06 g", "mass: 0.08 g", StringComparison.Ordinal);
        RevisionComparison compared = Compare(First, second);
        Assert.Equal(["hook", "dumbbell eyes", "body"], compared.Parts.Select(p => p.Part));
        Assert.Equal(("3 mm", "4 mm"), (compared.Parts[1].Changes.Single().Before, compared.Parts[1].Changes.Single().After));
    }

    [Fact]
    public void Between_SeveralParts_EffectsAddUpToTheWholeDifference()
    {
        string second = First.Replace("down 25°", "straight", StringComparison.Ordinal).Replace("size: 3 mm", "size: 4 mm", StringComparison.Ordinal)
            + "\n  - part: hackle\n    material: feather\n    diameter: 12 mm\n    at: 5 mm\n    to: 7 mm\n";
        RevisionComparison compared = Compare(First, second);
        Assert.Equal(["hook", "dumbbell eyes", "hackle"], compared.Parts.Select(p => p.Part));
        foreach (string figure in new[] { "keel height", "pitch", "sink rate" })
        {
            FigureDifference whole = compared.Figures.Single(f => f.Query.Name == figure);
            double sum = compared.Parts.Sum(
                p => p.Effects.Single(e => e.Query.Name == figure) is { BeforeSi: { } before, AfterSi: { } after } ? after - before : double.NaN);
            Assert.Equal(whole.AfterSi!.Value - whole.BeforeSi!.Value, sum, 9);
        }
    }

    [Fact]
    public void Between_HeavierEyes_SinksFaster()
    {
        RevisionComparison compared = Compare(First, First.Replace("size: 3 mm", "size: 5 mm", StringComparison.Ordinal));
        FigureDifference sink = Assert.Single(compared.Parts).Effects.Single(e => e.Query.Name == "sink rate");
        Assert.True(sink.AfterSi > sink.BeforeSi);
        Assert.StartsWith("+", sink.Change(UnitSystem.Metric)!, StringComparison.Ordinal);
    }

    [Fact]
    public void Between_PartTakenOut_IsNamedAsItWas()
    {
        string second = First[..First.IndexOf("  - part: wing", StringComparison.Ordinal)];
        PartDifference gone = Assert.Single(Compare(First, second).Parts);
        Assert.Equal("wing", gone.Part);
        Assert.Null(gone.Changes.Single().After);
    }

    [Fact]
    public void Between_OnlyUnitsAndName_NothingIsChanged()
    {
        string second = First.Replace("size: 3 mm", "size: 0.3 cm", StringComparison.Ordinal).Replace("Reed Darter", "Slate Minnow", StringComparison.Ordinal);
        RevisionComparison compared = Compare(First, second);
        Assert.Empty(compared.Parts);
        Assert.All(compared.Figures, f => Assert.False(f.IsNoticeable));
    }

    private static RevisionComparison Compare(string before, string after) => RevisionComparison.Between(Parse(before), Parse(after));

    private static Recipe Parse(string text) =>
        RecipeParser.Parse(text) is { Success: true, Value: { } recipe } ? recipe : throw new InvalidOperationException(text);
}
