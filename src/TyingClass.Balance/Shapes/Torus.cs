namespace TyingClass.Balance.Shapes;

/// <summary>A ring of round wire: center line of radius R, wire of radius r.</summary>
public static class Torus
{
    /// <summary>2π² R r², m³ (any engineering handbook, from memory; Pappus: section π r² carried through 2π R).</summary>
    public static double VolumeM3(double ringRadiusM, double wireRadiusM) =>
        2 * Math.PI * Math.PI * Require.NotNegative(ringRadiusM, nameof(ringRadiusM))
        * Spheres.Square(Require.InRange(wireRadiusM, 0, ringRadiusM, nameof(wireRadiusM)));

    /// <summary>About the ring's axis: r²/4 along it, (R² + 3r²/4)/2 across.</summary>
    public static Spread SpreadOf(double ringRadiusM, double wireRadiusM) =>
        new(wireRadiusM * wireRadiusM / 4, (ringRadiusM * ringRadiusM + 0.75 * wireRadiusM * wireRadiusM) / 2);
}
