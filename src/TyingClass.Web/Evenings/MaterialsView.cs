using System.Collections.Immutable;
using System.Globalization;
using TyingClass.Recipes.Supplies;

namespace TyingClass.Web.Evenings;

/// <param name="Need">The bare need, in words.</param>
/// <param name="Bring">With spares and waste, in words.</param>
/// <param name="Packets">Whole packets or spools that hold it.</param>
public sealed record MaterialLine(string Item, string Need, string Bring, int Packets);

/// <summary>The packet sizes as asked for in the address, so that a list can be kept as a bookmark.</summary>
public sealed class PacketQuery
{
    public int Hooks { get; set; } = Packets.Usual.Hooks;

    public int Beads { get; set; } = Packets.Usual.Beads;

    public int Eyes { get; set; } = Packets.Usual.PairsOfEyes;

    public double WireM { get; set; } = Packets.Usual.WireM;

    public double DressingG { get; set; } = Math.Round(Packets.Usual.DressingKg * 1e3, 6);

    public int SparePercent { get; set; } = (int)Math.Round(Packets.Usual.SparePieces * 100);

    public int WastePercent { get; set; } = (int)Math.Round(Packets.Usual.Waste * 100);

    /// <summary>What cannot be a packet is taken as the nearest that can.</summary>
    public Packets ToPackets() => new()
    {
        Hooks = Math.Clamp(Hooks, 1, 10_000),
        Beads = Math.Clamp(Beads, 1, 10_000),
        PairsOfEyes = Math.Clamp(Eyes, 1, 10_000),
        WireM = Clamp(WireM, 0.1, 1000),
        DressingKg = Clamp(DressingG, 0.1, 1000) / 1e3,
        SparePieces = Math.Clamp(SparePercent, 0, 500) / 100.0,
        Waste = Math.Clamp(WastePercent, 0, 500) / 100.0,
    };

    private static double Clamp(double value, double low, double high) => double.IsFinite(value) ? Math.Clamp(value, low, high) : low;
}

public static class MaterialsView
{
    public static ImmutableArray<MaterialLine> Of(IEnumerable<Supply> supplies, Packets packets)
    {
        ArgumentNullException.ThrowIfNull(supplies);
        ArgumentNullException.ThrowIfNull(packets);
        return [.. supplies.Select(s => new MaterialLine(s.Item, Say(s, exact: true), Say(packets.WithSpares(s), exact: false), packets.For(s)))];
    }

    private static string Say(Supply s, bool exact) => s.Kind switch
    {
        SupplyKind.Wire when exact => Invariant($"{s.Turns} turns, {s.WireM:0.00} m"),
        SupplyKind.Wire => Invariant($"{s.WireM:0.0} m"),
        SupplyKind.Dressing => Invariant($"{s.MassKg * 1e3:0.00} g"),
        _ => s.Pieces.ToString(CultureInfo.InvariantCulture),
    };

    private static string Invariant(FormattableString text) => FormattableString.Invariant(text);
}
