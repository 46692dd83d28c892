namespace TyingClass.Balance.Fluid;

/// <summary>
/// Normal force of a flat plate of low aspect ratio, on its area, at any angle: a potential part K_p sin α cos α at the leading edge, an edge part K_v sin² α over
/// the plate (Polhamus, NASA TN D-3767, 1966), both lost as the flow parts from it, and broadside drag for the rest. docs/formulas.md#flat-things
/// </summary>
public static class FlatPlate
{
    /// <summary>
    /// Estimate, range 1.6 to 3.1: K_v of the side edges. 2 after Bollay (1939), π after Polhamus (both from memory); published tests at aspect ratios 0.5 to 3
    /// are met without vortices of the leading edge (Aerospace 10 (2023) 597).
    /// </summary>
    public const double EdgePart = 2.4;

    /// <summary>Drag coefficient broadside, aspect ratios 1 to 5: 1.17 to 1.20 (Hoerner, Fluid-Dynamic Drag, 1965, ch. 3, from memory).</summary>
    public const double Broadside = 1.17;

    /// <summary>
    /// Estimate, range 35° to 55°: tangent of the angle at which half of the lift is lost. A square plate pushes hardest at about 38° (Eiffel 1910, from memory),
    /// narrower ones later.
    /// </summary>
    public const double StallTangent = 1;

    /// <summary>Slope of the lift at no angle, per radian on the plate's area: 2πA/(2 + √(4 + A²)) (Helmbold 1942, from memory), → πA/2 (Jones, NACA Rep. 835, 1946).</summary>
    /// <param name="aspectRatio">A: width across the flow over length along it.</param>
    public static double LiftSlope(double aspectRatio) => 2 * Math.PI * aspectRatio / (2 + Math.Sqrt(4 + aspectRatio * aspectRatio));

    /// <summary>
    /// Where the potential part acts, from the leading edge, over the length: at the edge itself for a narrow plate (Jones), a quarter back for a wide one (thin
    /// airfoils). Estimate between, that of a square plate range 0.1 to 0.2.
    /// </summary>
    public static double PotentialCenter(double aspectRatio) => 0.25 * aspectRatio / (aspectRatio + 0.7);
}
