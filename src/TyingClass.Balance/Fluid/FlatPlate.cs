namespace TyingClass.Balance.Fluid;

/// <summary>
/// Normal force of a flat plate of low aspect ratio, on its area, at any angle: a potential part K_p sin α cos α at the leading edge, an edge part
/// K_v sin² α over the plate (Polhamus, NASA TN D-3767, 1966), both lost as the flow parts from it, and broadside drag for the rest.
/// docs/formulas.md#flat-things
/// </summary>
public static class FlatPlate
{
    /// <summary>Drag coefficient broadside, aspect ratios 1 to 5: 1.17 to 1.20 (Hoerner, Fluid-Dynamic Drag, 1965, ch. 3, from memory).</summary>
    public const double Broadside = 1.17;

    /// <summary>
    /// Slope of the lift at no angle, per radian on the plate's area: 2πA/(2 + √(4 + A²)) (Helmbold 1942, from memory), → πA/2 (Jones, NACA Rep. 835, 1946).
    /// </summary>
    /// <param name="aspectRatio">A: width across the flow over length along it.</param>
    public static double LiftSlope(double aspectRatio) => 2 * Math.PI * aspectRatio / (2 + Math.Sqrt(4 + aspectRatio * aspectRatio));

    /// <summary>
    /// Where the potential part acts, from the leading edge, over the length: at the edge itself for a narrow plate (Jones), a quarter back for a wide one
    /// (thin
    /// airfoils), A/(A + b) of a quarter between.
    /// </summary>
    /// <param name="square">Of a square plate, under a quarter.</param>
    public static double PotentialCenter(double aspectRatio, double square) => 0.25 * aspectRatio / (aspectRatio + 0.25 / square - 1);
}

/// <summary>What is estimated of a flat plate's force.</summary>
/// <param name="EdgePart">
/// K_v of the side edges. Published tests at aspect ratios 0.5 to 3 are met without vortices of the leading edge (Aerospace 10 (2023) 597).
/// </param>
/// <param name="StallRad">Where half of the lift is lost.</param>
/// <param name="SquareCenter">Where the potential part acts on a square plate, from its leading edge, over its length.</param>
public readonly record struct PlateLaw(double EdgePart, double StallRad, double SquareCenter)
{
    /// <summary>Ranges and reasons stand in docs/estimates.md.</summary>
    public static readonly PlateLaw Usual = new(2.4, Math.PI / 4, 0.15);
}
