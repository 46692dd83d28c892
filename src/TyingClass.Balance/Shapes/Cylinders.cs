namespace TyingClass.Balance.Shapes;

/// <summary>Rods, discs and tubes of circular section.</summary>
public static class Cylinders
{
    /// <summary>Area of a disc, m²: π d²/4.</summary>
    public static double SectionM2(double diameterM) => Math.PI / 4 * Spheres.Square(Require.NotNegative(diameterM, nameof(diameterM)));

    /// <summary>π (D² - b²) ℓ/4, m³.</summary>
    /// <param name="boreM">b, 0 for a solid rod.</param>
    public static double VolumeM3(double diameterM, double lengthM, double boreM = 0) =>
        (SectionM2(diameterM) - SectionM2(Require.InRange(boreM, 0, diameterM, nameof(boreM)))) * Require.NotNegative(lengthM, nameof(lengthM));

    /// <summary>ℓ²/12 along, (D² + b²)/16 across.</summary>
    public static Spread SpreadOf(double diameterM, double lengthM, double boreM = 0) =>
        new(lengthM * lengthM / 12, (diameterM * diameterM + boreM * boreM) / 16);
}
