namespace TyingClass.Balance.Fluid;

/// <summary>Drag coefficient of a smooth sphere, on its frontal area, against the Reynolds number of its diameter.</summary>
public static class SphereDrag
{
    /// <summary>Re up to 2·10⁵. Brown and Lawler, J. Environ. Eng. 129 (2003) 222, eq. 19. The engine uses this one.</summary>
    public static double BrownLawler(double reynolds) =>
        24 / reynolds * (1 + 0.150 * Math.Pow(reynolds, 0.681)) + 0.407 / (1 + 8710 / reynolds);

    /// <summary>Re up to 2.6·10⁵. Haider and Levenspiel, Powder Technology 58 (1989) 63.</summary>
    public static double HaiderLevenspiel(double reynolds) =>
        24 / reynolds * (1 + 0.1806 * Math.Pow(reynolds, 0.6459)) + 0.4251 / (1 + 6880.95 / reynolds);

    /// <summary>Re up to 3.38·10⁵, the standard drag curve in pieces. Clift, Grace and Weber, Bubbles, Drops and Particles (1978), table 5.2.</summary>
    public static double CliftGraceWeber(double reynolds)
    {
        double w = Math.Log10(reynolds);
        return reynolds switch
        {
            < 0.01 => 3.0 / 16 + 24 / reynolds,
            <= 20 => 24 / reynolds * (1 + 0.1315 * Math.Pow(reynolds, 0.82 - 0.05 * w)),
            <= 260 => 24 / reynolds * (1 + Math.Pow(10, -0.7133 + 0.6305 * w)),
            <= 1500 => Math.Pow(10, 1.6435 + w * (-1.1242 + 0.1558 * w)),
            <= 1.2e4 => Math.Pow(10, -2.4571 + w * (2.5558 + w * (-0.9295 + 0.1049 * w))),
            <= 4.4e4 => Math.Pow(10, -1.9181 + w * (0.6370 - 0.0636 * w)),
            _ => Math.Pow(10, -4.3390 + w * (1.5809 - 0.1546 * w)),
        };
    }
}
