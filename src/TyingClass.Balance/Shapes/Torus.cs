namespace TyingClass.Balance.Shapes;

/// <summary>A ring of round wire: center line of radius R, wire of radius r.</summary>
public static class Torus
{
    /// <summary>About the ring's axis: r²/4 along it, (R² + 3r²/4)/2 across.</summary>
    public static Spread SpreadOf(double ringRadiusM, double wireRadiusM) =>
        new(wireRadiusM * wireRadiusM / 4, (ringRadiusM * ringRadiusM + 0.75 * wireRadiusM * wireRadiusM) / 2);
}
