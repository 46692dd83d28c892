using TyingClass.Balance.Geometry;

namespace TyingClass.Balance.Sinking;

/// <summary>The tilting moments, and how they change as the fly is turned, about two axes square to each other and to the plumb line.</summary>
/// <param name="AA">Change of the moment about A by a turn about A, N·m/rad; <paramref name="AB"/>: of the moment about A by a turn about B.</param>
internal readonly record struct SinkTilt(Vector3D A, Vector3D B, double AroundA, double AroundB, double AA, double AB, double BA, double BB)
{
    private const double LongestStepRad = 0.3;

    public double MomentNM => Math.Sqrt(AroundA * AroundA + AroundB * AroundB);

    public double StiffnessNM => Math.Abs(AA) + Math.Abs(AB) + Math.Abs(BA) + Math.Abs(BB);

    public bool IsStable => AA + BB < 0 && AA * BB - AB * BA > 0;

    // Twice an unstable real eigenvalue λ, 2|λ|²/Re λ for a complex pair: with any less the steps would spiral in on what the fly spirals out of.
    public double LeavingRate
    {
        get
        {
            double half = (AA + BB) / 2, determinant = AA * BB - AB * BA, square = half * half - determinant;
            return square >= 0 ? 2 * (half + Math.Sqrt(square)) : 2 * determinant / half;
        }
    }

    // Implicit Euler, (rate - J) turn = M, as in Settling.
    private Vector3D Step(double rate)
    {
        double p = rate - AA, q = rate - BB, determinant = p * q - AB * BA;
        return (AroundA * q + AB * AroundB) / determinant * A + (p * AroundB + BA * AroundA) / determinant * B;
    }

    // An overlong step is taken by a shorter time, not cut to length: it then follows the fly, and does not jump over into another way to sink.
    public Vector3D BoundedStep(double rate)
    {
        Vector3D turn = Step(rate);
        double enough = MomentNM / LongestStepRad;
        for (double share = 1.0 / 64; turn.Length > LongestStepRad && share <= 1; share *= 4)
        {
            turn = Step(rate + share * enough);
        }

        double length = turn.Length;
        return length > LongestStepRad ? LongestStepRad / length * turn : turn;
    }
}
