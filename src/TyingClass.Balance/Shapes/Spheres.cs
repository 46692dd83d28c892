namespace TyingClass.Balance.Shapes;

/// <summary>The sphere.</summary>
public static class Spheres
{
    /// <summary>π d³/6, m³.</summary>
    public static double VolumeM3(double diameterM) => Math.PI / 6 * Math.Pow(Require.NotNegative(diameterM, nameof(diameterM)), 3);

    internal static double Square(double value) => value * value;
}

/// <summary>
/// A ball bored right through along a diameter: a bead. Its length along the bore h = √(D² - b²) is all its volume depends on (Cavalieri's "napkin ring", π
/// h³/6).
/// </summary>
public static class BoredSphere
{
    /// <summary>√(D² - b²), m.</summary>
    public static double LengthM(double diameterM, double boreM) =>
        Math.Sqrt(Spheres.Square(Require.Positive(diameterM, nameof(diameterM))) - Spheres.Square(Require.InRange(boreM, 0, diameterM, nameof(boreM))));

    /// <summary>π h³/6, m³.</summary>
    public static double VolumeM3(double diameterM, double boreM) => Spheres.VolumeM3(LengthM(diameterM, boreM));

    /// <summary>With k = h/2: k²/5 along the bore, k²/5 + b²/8 across it (integrate rings of inner radius b/2 and outer radius √(D²/4 - x²)).</summary>
    public static Spread SpreadOf(double diameterM, double boreM)
    {
        double k = LengthM(diameterM, boreM) / 2;
        return new Spread(k * k / 5, k * k / 5 + boreM * boreM / 8);
    }
}
