namespace TyingClass.Balance.Fluid;

/// <summary>
/// Water set in motion by an ellipsoid of revolution in an ideal fluid, as shares of the water it pushes aside. Lamb, The Inertia Coefficients of an Ellipsoid
/// (ARC R&amp;M 623, 1918); the closed forms stand in Lamb, Hydrodynamics, art. 114.
/// </summary>
public static class LambInertia
{
    // So near a ball the closed forms lose their digits: first terms of their series, within 10⁻⁶.
    private const double NearBall = 1e-3;

    /// <summary>k₁, moving end on, and k₂, broadside.</summary>
    /// <param name="slenderness">Length along the axis over width, over 0: 1 is a ball, under 1 a lens.</param>
    public static (double EndOn, double Broadside) Of(double slenderness)
    {
        Require.Positive(slenderness, nameof(slenderness));
        if (Math.Abs(slenderness - 1) < NearBall)
        {
            return (0.5 - 0.6 * (slenderness - 1), 0.5 + 0.3 * (slenderness - 1));
        }

        // α₀ + 2β₀ = 2.
        double alpha = slenderness > 1 ? Long(slenderness) : Flat(slenderness), beta = 1 - alpha / 2;
        return (alpha / (2 - alpha), beta / (2 - beta));
    }

    /// <summary>k₂ - k₁: what is left of the slender body's side force. 0 for a ball, under 0 for a lens, which turns its face to the flow.</summary>
    public static double SideShare(double slenderness)
    {
        (double endOn, double broadside) = Of(slenderness);
        return broadside - endOn;
    }

    private static double Long(double ratio)
    {
        double square = 1 - 1 / (ratio * ratio), e = Math.Sqrt(square);
        return 2 * (1 - square) / (square * e) * (Math.Atanh(e) - e);
    }

    private static double Flat(double ratio)
    {
        double square = 1 - ratio * ratio, e = Math.Sqrt(square);
        return 2 / square * (1 - ratio / e * Math.Asin(e));
    }
}
