namespace TyingClass.Balance.Fluid;

/// <summary>Drag coefficient of a smooth sphere, on its frontal area, against the Reynolds number of its diameter.</summary>
public static class SphereDrag
{
    /// <summary>Re up to 2·10⁵. Brown and Lawler, J. Environ. Eng. 129 (2003) 222, eq. 19.</summary>
    public static double BrownLawler(double reynolds) =>
        24 / reynolds * (1 + 0.150 * Math.Pow(reynolds, 0.681)) + 0.407 / (1 + 8710 / reynolds);
}
