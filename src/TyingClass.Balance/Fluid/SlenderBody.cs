namespace TyingClass.Balance.Fluid;

/// <summary>
/// Side force of a round body askew to the flow, per length: ½ρ|w|² (dS/dx) sin 2α cos(α/2), square to its axis in the plane of axis and flow. Munk, NACA
/// Rep. 184 (1924); Allen and Perkins, NACA Rep. 1048 (1951); to 180°, where the ends have changed roles, Jorgensen, NASA TR R-474 (1977).
/// docs/formulas.md#side-force
/// </summary>
public static class SlenderBody
{
    /// <summary>
    /// Estimate: the share that the narrowing rear keeps, where the flow parts from the body (docs/estimates.md). Airship hulls, tapered to a point, turn with
    /// some two thirds to three quarters of the ideal moment (from memory), a share of about a half; a rear cut off square keeps next to nothing.
    /// </summary>
    public const double RearShare = 0.4;

    /// <summary>
    /// Cosine of the angle to the flow within which the ends change roles. A rounding of the corner at broadside, not physics: with 0 the force has a kink
    /// there.
    /// </summary>
    public const double ChangeOver = 0.1;
}
