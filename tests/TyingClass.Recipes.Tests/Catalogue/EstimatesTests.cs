using System.Collections.Immutable;
using System.Globalization;
using System.Reflection;
using TyingClass.Balance.Bodies;
using TyingClass.Recipes.Bodies;
using TyingClass.Recipes.Catalogue;
using TyingClass.Recipes.Model;
using TyingClass.Recipes.Parts;
using Xunit;

namespace TyingClass.Recipes.Tests.Catalogue;

public sealed class EstimatesTests
{
    private static readonly ImmutableArray<Recipe> Flies = [.. Gallery()];

    public static TheoryData<string> Names => [.. Estimates.All.Select(e => e.Name!)];

    [Fact]
    public void All_Names_AreDistinct() => Assert.Equal(Estimates.All.Length, Estimates.All.Select(e => e.Name).Distinct().Count());

    [Fact]
    public void All_Rows_HaveAValueWithinTheirRangeAndAReason() => Assert.All(Estimates.All, e =>
    {
        Assert.True(e.Low < e.High, $"{e.Name} leaves nothing to doubt: then it is no estimate.");
        Assert.InRange(e.Value, e.Low, e.High);
        Assert.True(e.Source.Length > Figure.Estimate.Length + 4, $"{e.Name} has no reason.");
    });

    // Whatever is marked as an estimate is in the table, or it is a choice of the tyer, or none of a thing.
    [Fact]
    public void All_EstimatesOfTheCatalogue_AreInTheTableOrChosen()
    {
        string[] chosen =
        [
            "wraps", "loops of a weed guard", "balls in a rattle", "turns of a rib", "water temperature", "speed", "leader diameter",
            "a fly heavy enough for the casting warning",
        ];
        Assert.Equal(chosen.Order(), CatalogueFigures.All.Where(f => f.Figure.IsEstimate && f.Figure.Name is null).Select(f => f.What).Order());
        Assert.All(Materials.All, m => Assert.All(m.Figures.Where(f => f.Figure.IsEstimate && f.Figure.Name is null && f.Figure.Value != 0), f =>
            Assert.True(
                (f.What == "soak time" && m.CaughtAir.Value == 0) || (f.What == "streamer coefficient" && m.Suppleness.Value == 0), $"{f.What} {m.Name}")));
    }

    [Fact]
    public void All_NamedFiguresAnywhereInTheCode_AreInTheTable()
    {
        IEnumerable<Figure> written = typeof(Materials).Assembly.GetTypes()
            .SelectMany(t => t.GetFields(BindingFlags.Static | BindingFlags.Public | BindingFlags.NonPublic))
            .Where(f => f.FieldType == typeof(Figure)).Select(f => (Figure)f.GetValue(null)!).Where(f => f.Name is not null);
        Assert.Empty(written.Select(f => f.Name).Except(Estimates.All.Select(e => e.Name)));
    }

    // A row that no fly is built by would be doubted in vain, and a number that is used past its row would not be doubted at all.
    [Theory]
    [MemberData(nameof(Names))]
    public void Build_OneEstimateOtherwise_MakesAnotherFlyOfSomeRecipe(string name)
    {
        Guesses other = new(e => e.Name == name ? e.Low : e.Value), usual = new(e => e.Value);

        Assert.Contains(Flies, fly => !Same(FlyBuilder.Build(fly, usual), FlyBuilder.Build(fly, other)));
    }

    [Fact]
    public void Build_EveryEstimateAsInTheTable_IsTheUsualFly()
    {
        Guesses table = new(e => Estimates.All.Single(row => row.Name == e.Name).Value);

        Assert.All(Flies, fly => Assert.True(Same(FlyBuilder.Build(fly), FlyBuilder.Build(fly, table))));
    }

    [Fact]
    public void Docs_TableOfEstimates_IsTheTableOfTheCode()
    {
        string[] rows = [.. File.ReadLines(Path.Combine(Docs(), "estimates.md")).Where(l => l.StartsWith("| ", StringComparison.Ordinal)).Skip(1)];

        string[] table = [.. Estimates.All.Select(Row)];
        Assert.True(table.Except(rows).FirstOrDefault() is null, $"Write into docs/estimates.md:\n{string.Join("\n", table.Except(rows))}");
        Assert.Equal(table, rows);
    }

    private static string Row(Figure e)
    {
        string unit = e.Unit == "1" ? "" : e.Unit, why = e.Source[(Figure.Estimate.Length + 2)..];
        return string.Create(CultureInfo.InvariantCulture, $"| {e.Name} | {unit} | {e.Value:0.####} | {e.Low:0.####} | {e.High:0.####} | {why} |");
    }

    private static bool Same(BuiltFly a, BuiltFly b) =>
        a.Conditions == b.Conditions && a.Body.TowPointM == b.Body.TowPointM && a.Body.ShankLengthM == b.Body.ShankLengthM
        && a.Body.Parts.Zip(b.Body.Parts).All(p => Same(p.First, p.Second));

    private static bool Same(BodyPart a, BodyPart b) =>
        a.Masses.SequenceEqual(b.Masses) && a.Solids.SequenceEqual(b.Solids) && a.Air.SequenceEqual(b.Air) && a.Drag.SequenceEqual(b.Drag)
        && a.SideForces.SequenceEqual(b.SideForces) && a.HeldWaterKg == b.HeldWaterKg && a.Room == b.Room;

    // Every kind with nothing stated and with everything of it stated but its mass, every material, every hook, both knots and both lines.
    private static IEnumerable<Recipe> Gallery()
    {
        FishingSpec strong = new() { LeaderStrengthN = 20, Knot = Knot.Cinched };
        foreach (EyeKind eye in Enum.GetValues<EyeKind>())
            foreach (BendKind bend in Enum.GetValues<BendKind>())
                yield return Fly(new HookSpec { Size = new HookSize(6), Eye = eye, Bend = bend }, strong);
        yield return Fly(Hook, strong with { LeaderMaterial = LeaderMaterial.Fluorocarbon });
        foreach (KindOfPart kind in KindsOfPart.All)
        {
            PartSpec part = new(kind.Kind) { AtM = 2e-3 };
            yield return Fly(Hook, strong, part);
            yield return Fly(Hook, strong, new PartSpec(PartKind.Bead) { SizeM = 3e-3 }, part with { AtM = 4e-3 }, part with { AtM = 6e-3, Loops = 2 });
            foreach (string material in kind.SuitedMaterials) yield return Fly(Hook, strong, part with { Material = material });
        }

        // A body that a lump of wraps nearly fills, and dressing of a stated mass.
        PartSpec wraps = new(PartKind.Wraps) { DiameterM = 1e-3, Turns = 8, AtM = 2e-3 };
        yield return Fly(Hook, strong, wraps, new PartSpec(PartKind.Body) { DiameterM = 2.9e-3, AtM = 1e-3, ToM = 12e-3 });
        foreach (Material material in Materials.All.Where(m => m.LinearDensity.Value > 0))
            yield return Fly(Hook, strong, new PartSpec(PartKind.Wing) { Material = material.Name, AtM = 2e-3, LengthM = 20e-3 });
    }

    private static HookSpec Hook => new() { Size = new HookSize(6) };

    private static Recipe Fly(HookSpec hook, FishingSpec fishing, params ImmutableArray<PartSpec> parts) =>
        new("gallery", Intent.PointDown, hook, parts, fishing);

    private static string Docs()
    {
        DirectoryInfo? folder = new(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "TyingClass.sln"))) folder = folder.Parent;
        return Path.Combine(folder!.FullName, "docs");
    }
}
