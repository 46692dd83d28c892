namespace TyingClass.Balance.Shapes;

/// <summary>Wire wound about a core.</summary>
public static class Helix
{
    /// <summary>Length of wire in one turn, m: √((2π R)² + p²).</summary>
    /// <param name="radiusM">R, axis to the wire's center line.</param>
    /// <param name="pitchM">p, advance along the axis per turn.</param>
    public static double TurnLengthM(double radiusM, double pitchM) =>
        double.Hypot(2 * Math.PI * Require.NotNegative(radiusM, nameof(radiusM)), Require.NotNegative(pitchM, nameof(pitchM)));

    /// <summary>
    /// Whole turns wound through a length ℓ: ℓ²/12 + r²/4 along, (R² + 3r²/4)/2 across, r the wire's radius (a torus drawn out along its axis; good while the
    /// pitch is small against 2π R).
    /// </summary>
    public static Spread SpreadOf(double radiusM, double lengthM, double wireRadiusM)
    {
        Spread ring = Torus.SpreadOf(radiusM, wireRadiusM);
        return ring with { AlongM2 = ring.AlongM2 + lengthM * lengthM / 12 };
    }
}
