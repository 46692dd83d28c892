using TyingClass.Balance.Reports;

namespace TyingClass.Balance.Tying;

/// <summary>Standard deviations of one tyer's errors. All are estimates: common practice, no source.</summary>
/// <param name="SideM">Lateral offset of a part, m.</param>
/// <param name="ClockRad">Turn of a part about the shank, rad.</param>
/// <param name="AlongM">Place along the shank, m.</param>
/// <param name="MassShare">Mass of a part, as a share of it.</param>
/// <param name="AirShare">Air a part holds, as a share of it.</param>
public readonly record struct TyingSpread(double SideM, double ClockRad, double AlongM, double MassShare, double AirShare)
{
    private const double Degree = Math.PI / 180;

    public static TyingSpread Of(TyingAccuracy accuracy) => accuracy switch
    {
        TyingAccuracy.FirstSeason => new(0.4e-3, 10 * Degree, 0.8e-3, 0.12, 0.30),
        TyingAccuracy.Practiced => new(0.2e-3, 5 * Degree, 0.4e-3, 0.06, 0.20),
        TyingAccuracy.Production => new(0.1e-3, 2 * Degree, 0.2e-3, 0.03, 0.10),
        _ => throw new ArgumentOutOfRangeException(nameof(accuracy), accuracy, "No such tying accuracy."),
    };
}

/// <summary>A share and the interval that covers it with 95 % confidence.</summary>
public readonly record struct ShareInterval(double Share, double Low, double High)
{
    private const double Z = 1.959963984540054;

    /// <summary>Wilson's score interval (Wilson, J. Am. Stat. Assoc. 22 (1927) 209).</summary>
    public static ShareInterval Wilson(int hits, int trials)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(trials, 1);
        ArgumentOutOfRangeException.ThrowIfNegative(hits);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(hits, trials);
        double n = trials, p = hits / n, z2 = Z * Z;
        double middle = (p + z2 / (2 * n)) / (1 + z2 / n);
        double half = Z / (1 + z2 / n) * Math.Sqrt(p * (1 - p) / n + z2 / (4 * n * n));
        return new ShareInterval(p, hits == 0 ? 0 : middle - half, hits == trials ? 1 : middle + half);
    }
}
