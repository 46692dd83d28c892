namespace TyingClass.Balance.Tests.SideForce;

/// <summary>
/// Lamb's inertia coefficients from the integral that defines them, Hydrodynamics art. 114: α₀ = a b c ∫ dλ / ((a² + λ) √((a² + λ)(b² + λ)(c² + λ))), 0 to ∞,
/// k = α₀/(2 - α₀) along that axis. Nothing of the engine's closed forms.
/// </summary>
internal static class Ellipsoid
{
    public static (double EndOn, double Broadside) Inertia(double slenderness) =>
        (Share(Integral(slenderness, 1, 1)), Share(Integral(1, slenderness, 1)));

    private static double Share(double alpha) => alpha / (2 - alpha);

    // λ = tan²-like stretch t/(1 - t) squared, midpoint rule: the integrand is smooth and falls as λ^-5/2.
    private static double Integral(double a, double b, double c)
    {
        const int steps = 200_000;
        double sum = 0;
        for (int i = 0; i < steps; i++)
        {
            double t = (i + 0.5) / steps, root = t / (1 - t), lambda = root * root, weight = 2 * root / ((1 - t) * (1 - t));
            sum += weight / ((a * a + lambda) * Math.Sqrt((a * a + lambda) * (b * b + lambda) * (c * c + lambda)));
        }

        return a * b * c * sum / steps;
    }
}
