namespace TyingClass.Balance.Shapes;

/// <summary>Circular arcs (published tables of centroids, in any engineering handbook of statics).</summary>
public static class Arcs
{
    /// <summary>Length of an arc that spans twice <paramref name="halfAngleRad"/>, m: 2 r α.</summary>
    public static double LengthM(double radiusM, double halfAngleRad) =>
        2 * Require.NotNegative(radiusM, nameof(radiusM)) * Require.InRange(halfAngleRad, 0, Math.PI, nameof(halfAngleRad));

    /// <summary>
    /// From the circle's center to the centroid of a thin arc that spans twice <paramref name="halfAngleRad"/>, along the arc's axis of symmetry, m: r sin α /
    /// α.
    /// </summary>
    /// <param name="halfAngleRad">α, 0 to π: π/2 is a semicircle, π the whole ring.</param>
    public static double CentroidM(double radiusM, double halfAngleRad) =>
        Require.NotNegative(radiusM, nameof(radiusM)) * Sinc(Require.InRange(halfAngleRad, 0, Math.PI, nameof(halfAngleRad)));

    // sin α / α loses no digits above 1e-4; below, the next term of its series is under 1e-17.
    private static double Sinc(double angleRad) =>
        angleRad < 1e-4 ? 1 - angleRad * angleRad / 6 : Math.Sin(angleRad) / angleRad;
}
