using System.Collections.Immutable;
using System.Globalization;
using TyingClass.Recipes.Supplies;
using TyingClass.Recipes.Text;
using TyingClass.Telling.Figures;
using TyingClass.Telling.Sentences;

namespace TyingClass.Web.Evenings;

/// <param name="Need">The bare need, in words.</param>
/// <param name="Bring">With spares and waste, in words.</param>
/// <param name="Packets">Whole packets or spools that hold it.</param>
/// <param name="Ask">How to say it in a shop; may be empty.</param>
public sealed record MaterialLine(string Item, string Need, string Bring, int Packets, string Ask);

/// <summary>The packet sizes as asked for in the address, so that a list can be kept as a bookmark; without any, those the class keeps. What cannot be a
/// packet is taken, and shown, as the nearest that can.</summary>
public sealed class PacketQuery
{
    public const int MostPieces = 10_000;
    public const int MostPercent = 500;
    private const double LeastMeasure = 0.1;
    private const double MostMeasure = 1000;

    public int Hooks { get; set => field = Pieces(value); } = Packets.Usual.Hooks;

    public int Beads { get; set => field = Pieces(value); } = Packets.Usual.Beads;

    public int Eyes { get; set => field = Pieces(value); } = Packets.Usual.PairsOfEyes;

    public double WireM { get; set => field = Measure(value); } = Packets.Usual.WireM;

    /// <summary>The same for a reader of feet; what is asked for comes in one of the two.</summary>
    public double? WireFt { get => null; set => WireM = value is { } ft ? Units.ToSi(ft, Dimension.Length, "ft") : WireM; }

    public double DressingG { get; set => field = Measure(value); } = Math.Round(Packets.Usual.DressingKg * 1e3, 6);

    /// <summary>The same for a reader of ounces.</summary>
    public double? DressingOz { get => null; set => DressingG = value is { } oz ? 1e3 * Units.ToSi(oz, Dimension.Mass, "oz") : DressingG; }

    public int SparePercent { get; set => field = Percent(value); } = (int)Math.Round(Packets.Usual.SparePieces * 100);

    public int WastePercent { get; set => field = Percent(value); } = (int)Math.Round(Packets.Usual.Waste * 100);

    private static readonly string[] Fields = ["hooks", "beads", "eyes", "wireM", "wireFt", "dressingG", "dressingOz", "sparePercent", "wastePercent"];

    public static PacketQuery Of(Packets packets)
    {
        ArgumentNullException.ThrowIfNull(packets);
        return new PacketQuery
        {
            Hooks = packets.Hooks,
            Beads = packets.Beads,
            Eyes = packets.PairsOfEyes,
            WireM = packets.WireM,
            DressingG = Math.Round(packets.DressingKg * 1e3, 6),
            SparePercent = (int)Math.Round(packets.SparePieces * 100),
            WastePercent = (int)Math.Round(packets.Waste * 100),
        };
    }

    /// <summary>Sizes stand in the address, or in the form.</summary>
    public bool WasAsked(HttpRequest request)
    {
        ArgumentNullException.ThrowIfNull(request);
        return Fields.Any(f => request.Query.ContainsKey(f) || (request.HasFormContentType && request.Form.ContainsKey(f)));
    }

    public Packets ToPackets() => new()
    {
        Hooks = Hooks,
        Beads = Beads,
        PairsOfEyes = Eyes,
        WireM = WireM,
        DressingKg = DressingG / 1e3,
        SparePieces = SparePercent / 100.0,
        Waste = WastePercent / 100.0,
    };

    /// <summary>A packet's measure to stand in its field, in the reader's unit.</summary>
    public static string Shown(double si, Dimension dimension, string symbol) =>
        Math.Round(Units.FromSi(si, dimension, symbol), 4).ToString(CultureInfo.InvariantCulture);

    private static int Pieces(int value) => Math.Clamp(value, 1, MostPieces);

    private static int Percent(int value) => Math.Clamp(value, 0, MostPercent);

    private static double Measure(double value) => double.IsFinite(value) ? Math.Clamp(value, LeastMeasure, MostMeasure) : LeastMeasure;
}

public static class MaterialsView
{
    public static ImmutableArray<MaterialLine> Of(IEnumerable<Supply> supplies, Packets packets, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(supplies);
        ArgumentNullException.ThrowIfNull(packets);
        return [.. supplies.Select(s => new MaterialLine(
            SupplyWords.Of(s, units), Say(s, exact: true, units), Say(packets.WithSpares(s), exact: false, units), packets.For(s), ShopWords.Of(s, units)))];
    }

    private static string Say(Supply s, bool exact, UnitSystem units) => s.Kind switch
    {
        SupplyKind.Wire when exact && s.Turns > 0 => $"{Numbers.Write(s.Turns, 0)} turns, {Wire(s.WireM, 2, units)}",
        SupplyKind.Wire => Wire(s.WireM, 1, units),
        SupplyKind.Dressing => units == UnitSystem.Metric ? $"{Numbers.Fixed(s.MassKg * 1e3, 2)} g" : Stated.SayWeightToBuy(s.MassKg, units),
        _ => s.Pieces.ToString(CultureInfo.InvariantCulture),
    };

    private static string Wire(double wireM, int decimals, UnitSystem units) => units == UnitSystem.Metric
        ? $"{Numbers.Fixed(wireM, decimals)} m"
        : $"{Numbers.Fixed(Units.FromSi(wireM, Dimension.Length, "ft"), decimals)} ft";
}
