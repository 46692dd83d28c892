using System.Collections.Immutable;
using TyingClass.Recipes.Model;
using TyingClass.Recipes.Supplies;
using TyingClass.Recipes.Text;
using Xunit;

namespace TyingClass.Recipes.Tests.Supplies;

public sealed class SupplyListTests
{
    [Fact]
    public void For_OneBeadInInchesAndOneInMillimeters_IsOneLineOfTwo()
    {
        // 1/8 in is 3.175 mm, sold as 3.2 mm (common practice, no source).
        ImmutableArray<Supply> all = SupplyList.For([(Bead("1/8 in"), 1), (Bead("3.2 mm"), 1)]);

        Assert.Equal(
            [
                new SupplyItem("bead") { Substance = "brass", SizeM = 3.2e-3 },
                new SupplyItem("hook, size 8, eye straight") { Hook = new HookSpec { Size = new HookSize(8) } },
            ],
            all.Select(s => s.Item));
        Assert.Equal(2, all[0].Pieces);
    }

    [Fact]
    public void For_SizesAPacketTellsApart_AreTwoLines() =>
        Assert.Equal(2, SupplyList.For([(Bead("3.2 mm"), 1), (Bead("4 mm"), 1)]).Count(s => s.Kind == SupplyKind.Bead));

    [Fact]
    public void For_Wraps_GivesTheLengthOfTheWire()
    {
        Recipe recipe = Parse("  - part: wraps\n    material: lead\n    diameter: 0.5 mm\n    turns: 10\n    at: 5 mm\n");

        Supply wire = SupplyList.For([(recipe, 3)]).Single(s => s.Kind == SupplyKind.Wire);

        Assert.Equal(new SupplyItem("wraps") { Substance = "lead", SizeM = 0.5e-3 }, wire.Item);
        Assert.Equal(30, wire.Turns);
        // A turn of a 0.5 mm wire around a hook wire of 0.4 to 1 mm: π (d + D) with one pitch along, from 2.8 to 4.8 mm by hand.
        Assert.InRange(wire.WireM / 30, 0.0028, 0.0048);
    }

    [Fact]
    public void For_SameMaterialInTwoPlaces_AddsItsMass()
    {
        Recipe recipe = Parse(
            "  - part: tail\n    material: marabou\n    length: 30 mm\n    mass: 0.05 g\n    at: 10 mm\n  - part: wing\n    material: marabou\n    length: "
                + "40 mm\n    mass: 0.08 g\n    at: 4 mm\n    side: under\n");

        Supply marabou = SupplyList.For([(recipe, 2)]).Single(s => s.Item.What == "marabou");

        Assert.Equal(2 * 0.13e-3, marabou.MassKg, 9);
    }

    [Fact]
    public void For_SpareParts_AddsThemToThoseOfTheFliesWithoutTheirHooks()
    {
        ImmutableArray<Supply> all = SupplyList.For([(Bead("3.2 mm"), 2)], [(Bead("1/8 in"), 3)]);

        Assert.Equal(5, all.Single(s => s.Kind == SupplyKind.Bead).Pieces);
        Assert.Equal(2, all.Single(s => s.Kind == SupplyKind.Hook).Pieces);
    }

    [Fact]
    public void For_NoneOfAFly_LeavesItOut() => Assert.Empty(SupplyList.For([(Bead("4 mm"), 0)]));

    [Theory]
    [InlineData(20, 1)]
    [InlineData(21, 2)]
    [InlineData(40, 2)]
    public void Packets_WithoutSpares_HoldExactlyWhatTheySay(int beads, int packets) =>
        Assert.Equal(packets, new Packets { Beads = 20, SparePieces = 0 }.For(new Supply(SupplyKind.Bead, new SupplyItem("bead"), beads, 0, 0, 0)));

    [Fact]
    public void Packets_WithSpares_RoundUpToWholePiecesAndPackets()
    {
        Packets packets = new() { Hooks = 25, SparePieces = 0.1 };
        Supply need = new(SupplyKind.Hook, new SupplyItem("hook"), 23, 0, 0, 0);

        Assert.Equal(26, packets.WithSpares(need).Pieces);
        Assert.Equal(2, packets.For(need));
    }

    [Fact]
    public void Packets_Dressing_RoundsUpToTheNextTwentiethOfAGram()
    {
        Packets packets = new() { Waste = 0.5, DressingKg = 1e-3 };
        Supply need = new(SupplyKind.Dressing, new SupplyItem("marabou"), 0, 0, 0, 0.71e-3);

        Assert.Equal(1.10e-3, packets.WithSpares(need).MassKg, 9);
        Assert.Equal(2, packets.For(need));
    }

    private static Recipe Bead(string size) => Parse($"  - part: bead\n    material: brass\n    size: {size}\n    at: 0 mm\n");

    private static Recipe Parse(string parts) =>
        RecipeParser.Parse("recipe: Slate Minnow\nintent: point down\nhook:\n  size: 8\nparts:\n" + parts).Value!;
}
