namespace TyingClass.Recipes.Supplies;

/// <summary>
/// What one packet holds, and how much more than the bare need is bought. The defaults are common practice, no source: look at your own packets.
/// </summary>
public sealed record Packets
{
    public static Packets Usual { get; } = new();

    public int Hooks { get; init; } = 25;

    public int Beads { get; init; } = 20;

    public int PairsOfEyes { get; init; } = 10;

    /// <summary>On a spool, m.</summary>
    public double WireM { get; init; } = 3;

    /// <summary>In a packet of dressing, kg.</summary>
    public double DressingKg { get; init; } = 0.002;

    /// <summary>Hooks, beads and eyes beyond the bare need: one is always under the table. Share of the need, 0 or more.</summary>
    public double SparePieces { get; init; } = 0.1;

    /// <summary>Wire and dressing beyond the bare need: what is trimmed off. Share of the need, 0 or more.</summary>
    public double Waste { get; init; } = 0.5;

    /// <summary>What to lay out, waste and spares included: whole pieces, wire to the next 0.1 m, dressing to the next 0.05 g.</summary>
    public Supply WithSpares(Supply need)
    {
        ArgumentNullException.ThrowIfNull(need);
        return need with
        {
            Pieces = (int)Up(need.Pieces * (1 + SparePieces), 1),
            WireM = Up(need.WireM * (1 + Waste), 0.1),
            MassKg = Up(need.MassKg * (1 + Waste), 0.05e-3),
        };
    }

    /// <summary>Whole packets or spools that hold a need together with its spares.</summary>
    public int For(Supply need)
    {
        ArgumentNullException.ThrowIfNull(need);
        Supply all = WithSpares(need);
        return (int)(need.Kind switch
        {
            SupplyKind.Hook => Up((double)all.Pieces / Hooks, 1),
            SupplyKind.Bead => Up((double)all.Pieces / Beads, 1),
            SupplyKind.Eyes => Up((double)all.Pieces / PairsOfEyes, 1),
            SupplyKind.Wire => Up(all.WireM / WireM, 1),
            _ => Up(all.MassKg / DressingKg, 1),
        });
    }

    // 2.0000001 packets are 2: the excess is arithmetic, not dressing.
    private static double Up(double value, double step) => Math.Ceiling(value / step - 1e-6) * step;
}
