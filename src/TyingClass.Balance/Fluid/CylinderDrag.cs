namespace TyingClass.Balance.Fluid;

/// <summary>Drag coefficients of a circular cylinder.</summary>
public static class CylinderDrag
{
    /// <summary>
    /// Of an infinite cylinder across the flow, on d·ℓ, against the Reynolds number of its diameter; Re up to 2·10⁵, up to 13 % high below 10.
    /// </summary>
    /// <remarks>A fit to Wieselsberger's measurements: Cheng, J. Hydraulic Eng. 139 (2013) 602 (reference from memory).</remarks>
    public static double CrossFlow(double reynolds) =>
        11 * Math.Pow(reynolds, -0.75)
        + 0.9 * (1 - Math.Exp(-1000 / reynolds))
        + 1.2 * (1 - Math.Exp(-Math.Pow(reynolds / 4500, 0.7)));

    /// <summary>Blunt end of a cylinder along the flow, on its end area. Hoerner, Fluid-Dynamic Drag (1965), ch. 3, fig. 21 (value from memory).</summary>
    public const double BluntEnd = 0.8;

    // Diameter over length and the share of the infinite cylinder's drag that is left: 0.63, 0.68, 0.74, 0.82, 0.98 of 1.20
    // at length over diameter 1, 2, 5, 10, 40 (Wieselsberger 1922, as tabulated in fluid mechanics texts).
    private static readonly double[] DiameterOverLength = [0, 1.0 / 40, 0.1, 0.2, 0.5, 1];
    private static readonly double[] Share = [1, 0.98 / 1.20, 0.82 / 1.20, 0.74 / 1.20, 0.68 / 1.20, 0.63 / 1.20];

    /// <summary>
    /// Share of the infinite cylinder's cross-flow drag that a finite one keeps; linear between the tabulated points in d/L, constant for stubs shorter than
    /// they are wide.
    /// </summary>
    /// <param name="slendernessRatio">Length over diameter, over 0; infinity gives 1.</param>
    public static double FiniteLengthShare(double slendernessRatio)
    {
        if (!(slendernessRatio > 0))
        {
            throw new ArgumentOutOfRangeException(nameof(slendernessRatio), slendernessRatio, "Length over diameter must be over 0.");
        }

        double x = Math.Min(1, 1 / slendernessRatio);
        int i = 1;
        while (x > DiameterOverLength[i])
        {
            i++;
        }

        double t = (x - DiameterOverLength[i - 1]) / (DiameterOverLength[i] - DiameterOverLength[i - 1]);
        return Share[i - 1] + t * (Share[i] - Share[i - 1]);
    }
}

/// <summary>Skin friction of a laminar boundary layer.</summary>
public static class SkinFriction
{
    /// <summary>
    /// Mean coefficient of a flat plate along the flow, on its wetted area: 1.328/√Re of its length (Blasius 1908; Schlichting, Boundary-Layer Theory, ch. 7).
    /// </summary>
    public static double Blasius(double reynoldsOfLength) => 1.328 / Math.Sqrt(reynoldsOfLength);
}
