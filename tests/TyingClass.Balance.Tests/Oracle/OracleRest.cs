using TyingClass.Balance.Bodies;

namespace TyingClass.Balance.Tests.Oracle;

/// <summary>Where a fly came to rest, or was last when it did not.</summary>
/// <param name="Settled">False when it still moved at the end.</param>
/// <param name="Flow">The flow's direction in the hook frame; zero for a sinking fly.</param>
/// <param name="Up">The plumb line, up, in the hook frame.</param>
/// <param name="RateMS">Sink rate, m/s, positive down; 0 for a towed fly.</param>
internal readonly record struct OracleRest(bool Settled, OracleVector Flow, OracleVector Up, double RateMS)
{
    private const double DegreesPerRad = 180 / Math.PI;

    /// <summary>Positive nose up; the nose is the -x end.</summary>
    public double PitchDeg => DegreesPerRad * Math.Asin(Math.Clamp(-Up.X, -1, 1));

    /// <summary>0 as intended, 180 turned over.</summary>
    public double LeanDeg(Intent intent)
    {
        double roll = DegreesPerRad * Math.Abs(Math.Atan2(Up.Y, Up.Z));
        return intent == Intent.PointDown ? roll : 180 - roll;
    }

    /// <summary>How far a reported pitch and lean are from this rest, degrees. Lean counts less the steeper the fly hangs, as on a globe.</summary>
    public double MissDeg(double pitchDeg, double leanDeg, Intent intent)
    {
        double lean = (leanDeg - LeanDeg(intent)) * Math.Cos(PitchDeg / DegreesPerRad);
        return Math.Sqrt(Math.Pow(pitchDeg - PitchDeg, 2) + lean * lean);
    }

    /// <summary>The single turn from this attitude to another, degrees.</summary>
    public double TurnToDeg(OracleRest other)
    {
        double up = Angle(Up, other.Up);
        return Flow.Length == 0 ? up : Math.Max(up, Angle(Flow, other.Flow));
    }

    private static double Angle(OracleVector a, OracleVector b) =>
        DegreesPerRad * Math.Atan2(OracleVector.Cross(a, b).Length, OracleVector.Dot(a, b));
}
