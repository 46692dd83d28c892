namespace TyingClass.Balance.Fluid;

/// <summary>
/// Laminar friction of water along a long thin cylinder, whose boundary layer soon is far thicker than the wire: Glauert and Lighthill, Proc. R. Soc. A 230
/// (1955) 188 (from memory). docs/formulas.md#the-leader-in-the-pause
/// </summary>
/// <remarks>
/// Their logarithmic profile u = (U/α) ln(r/a) out to r = a e^α, put into the momentum integral: wall friction 2πµU/α per length, momentum lost 2πρU²a² J with
/// J = (e^2α (α - 1) + α + 1)/(4α²), and νx/(Ua²) = X(α) = α J - ∫J. Thin layers give a flat plate with a linear profile, 13 % under Blasius; thick ones
/// 4πµU/ln(4νx/(Ua²)) per length, the leading term of the exact solution.
/// </remarks>
public static class LeaderFriction
{
    private const double ThickestLayer = 40;

    // ln J against ln X, with its slope, at equal steps: a leader drawn down by a sinking fly asks for it thousands of times. The cubic through two of them
    // is off by less than 1e-7 of the force. Beyond them it is solved for.
    private const double LeastLnX = -12, MostLnX = 22, StepLnX = 1.0 / 16;
    private static readonly (double LnJ, double Slope)[] Table =
        [.. Enumerable.Range(0, (int)((MostLnX - LeastLnX) / StepLnX) + 1).Select(i => Entry(Math.Exp(LeastLnX + i * StepLnX)))];

    /// <summary>Friction of a length along its own axis, N.</summary>
    /// <param name="diameterM">0 has none.</param>
    /// <param name="lengthM">Counted from where it meets the water first.</param>
    public static double ForceN(Water water, double diameterM, double lengthM, double speedMS)
    {
        double radius = diameterM / 2;
        if (!(radius > 0 && lengthM > 0 && speedMS > 0))
        {
            return 0;
        }

        double x = water.ViscosityPaS / water.DensityKgM3 * lengthM / (speedMS * radius * radius);
        return 2 * Math.PI * water.DensityKgM3 * speedMS * speedMS * radius * radius * MomentumAt(x);
    }

    /// <summary>J(X).</summary>
    internal static double MomentumAt(double x)
    {
        double at = (Math.Log(x) - LeastLnX) / StepLnX;
        if (!(at >= 0 && at < Table.Length - 1)) return SolvedMomentumAt(x);
        int i = (int)at;
        double t = at - i, u = 1 - t;
        (double from, double fromSlope) = Table[i];
        (double to, double toSlope) = Table[i + 1];
        return Math.Exp(u * u * ((1 + 2 * t) * from + t * StepLnX * fromSlope) + t * t * ((1 + 2 * u) * to - u * StepLnX * toSlope));
    }

    internal static double SolvedMomentumAt(double x) => Momentum(Layer(x));

    // dX/dα = α dJ/dα, so d ln J/d ln X = X/(α J).
    private static (double LnJ, double Slope) Entry(double x)
    {
        double alpha = Layer(x), momentum = Momentum(alpha);
        return (Math.Log(momentum), x / (alpha * momentum));
    }

    // α from X(α), by Newton's method on ln X against ln α; X ≈ α²/12 for thin layers, e^2α/4 for thick ones.
    private static double Layer(double x)
    {
        double alpha = Math.Min(ThickestLayer, x < 1 ? Math.Sqrt(12 * x) : 0.5 * Math.Log(4 * x + 40));
        for (int i = 0; i < 30; i++)
        {
            double here = Reach(alpha), slope = alpha * MomentumSlope(alpha);
            double change = Math.Log(here / x) * here / (slope * alpha);
            alpha *= Math.Exp(-Math.Clamp(change, -0.7, 0.7));
            if (Math.Abs(change) < 1e-10)
            {
                break;
            }
        }

        return alpha;
    }

    // J, by its series where the closed form loses its digits: Σ 2ⁿ⁻³ (n - 2)/n! αⁿ⁻² from n = 3. The next term is under 1e-8 of it.
    private static double Momentum(double alpha) => alpha < 0.05
        ? alpha * (1.0 / 6 + alpha * (1.0 / 6 + alpha * (1.0 / 10 + alpha * (2.0 / 45 + alpha / 63))))
        : (Math.Exp(2 * alpha) * (alpha - 1) + alpha + 1) / (4 * alpha * alpha);

    private static double MomentumSlope(double alpha) => alpha < 0.05
        ? 1.0 / 6 + alpha * (1.0 / 3 + alpha * (3.0 / 10 + alpha * (8.0 / 45 + 5 * alpha / 63)))
        : (Math.Exp(2 * alpha) * (2 * alpha - 1) + 1) / (4 * alpha * alpha) - 2 * Momentum(alpha) / alpha;

    private static double Reach(double alpha) => alpha < 0.05
        ? alpha * alpha * (1.0 / 12 + alpha * (1.0 / 9 + alpha * (3.0 / 40 + alpha * (8.0 / 225 + 5 * alpha / 378))))
        : alpha * Momentum(alpha) - 0.25 * ((Math.Exp(2 * alpha) - 1) / alpha - 2 - Integral(2 * alpha));

    // ∫ (e^t - 1)/t dt from 0.
    private static double Integral(double x)
    {
        double sum = 0, term = 1;
        for (int n = 1; n < 400; n++)
        {
            term *= x / n;
            sum += term / n;
            if (term < 1e-16 * sum)
            {
                break;
            }
        }

        return sum;
    }
}
