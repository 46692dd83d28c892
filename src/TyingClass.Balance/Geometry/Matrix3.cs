namespace TyingClass.Balance.Geometry;

/// <summary>A 3×3 matrix by columns.</summary>
public readonly record struct Matrix3(Vector3D Column0, Vector3D Column1, Vector3D Column2)
{
    public double Determinant => Vector3D.Dot(Column0, Vector3D.Cross(Column1, Column2));

    public double Trace => Column0.X + Column1.Y + Column2.Z;

    /// <summary>Sum of the principal 2×2 minors: the middle coefficient of the characteristic polynomial.</summary>
    public double PrincipalMinors =>
        Column0.X * Column1.Y - Column1.X * Column0.Y
        + Column0.X * Column2.Z - Column2.X * Column0.Z
        + Column1.Y * Column2.Z - Column2.Y * Column1.Z;

    /// <summary>All eigenvalues have negative real parts, by the Routh-Hurwitz conditions on λ³ + a λ² + b λ + c.</summary>
    public bool IsStable
    {
        get
        {
            double a = -Trace, b = PrincipalMinors, c = -Determinant;
            return a > 0 && c > 0 && a * b > c;
        }
    }

    /// <summary>
    /// How fast an implicit step must be clocked so that it leaves an unstable state as the motion does: over the eigenvalues λ of positive real part, the
    /// greatest 2|λ|²/Re λ, which is 2λ for a real one. 0 when all are stable.
    /// </summary>
    /// <remarks>Implicit Euler at the rate 1/h multiplies a departure by 1/(1 - hλ): with any h over 2 Re λ/|λ|² it would shrink, and the steps would spiral in
    /// on what the motion spirals out of. A real root of the characteristic cubic is found by Newton's method from outside all roots, then the quadratic that
    /// is left.</remarks>
    public double LeavingRate
    {
        get
        {
            double a = -Trace, b = PrincipalMinors, c = -Determinant;
            // Cauchy's bound, on the side of the largest real root; from there Newton's method falls monotonically on it.
            double scale = Math.Max(Math.Abs(a), Math.Max(Math.Sqrt(Math.Abs(b)), Math.Cbrt(Math.Abs(c))));
            if (scale == 0)
            {
                return 0;
            }

            double root = 2 * scale;
            for (int i = 0; i < 60; i++)
            {
                double value = ((root + a) * root + b) * root + c;
                double slope = (3 * root + 2 * a) * root + b;
                if (slope == 0)
                {
                    break;
                }

                double change = value / slope;
                root -= change;
                if (Math.Abs(change) <= 1e-12 * scale)
                {
                    break;
                }
            }

            // λ² + p λ + q, half its sum of roots and the square of half their difference.
            double p = a + root, q = b + root * p, half = -p / 2, square = half * half - q;
            double rest = square >= 0 ? 2 * (half + Math.Sqrt(square)) : half > 0 ? 2 * q / half : 0;
            return Math.Max(Math.Max(2 * root, rest), 0);
        }
    }

    public static Vector3D operator *(Matrix3 m, Vector3D v) => v.X * m.Column0 + v.Y * m.Column1 + v.Z * m.Column2;

    /// <summary>This matrix with <paramref name="value"/> added along the diagonal.</summary>
    public Matrix3 PlusDiagonal(double value) => new(
        Column0 + new Vector3D(value, 0, 0), Column1 + new Vector3D(0, value, 0), Column2 + new Vector3D(0, 0, value));

    /// <summary>Solves M x = b by Cramer's rule; false when the matrix is singular.</summary>
    public bool TrySolve(Vector3D b, out Vector3D x)
    {
        Vector3D c12 = Vector3D.Cross(Column1, Column2);
        double determinant = Vector3D.Dot(Column0, c12);
        if (determinant == 0 || !double.IsFinite(determinant))
        {
            x = default;
            return false;
        }

        x = new Vector3D(
            Vector3D.Dot(b, c12),
            Vector3D.Dot(Column0, Vector3D.Cross(b, Column2)),
            Vector3D.Dot(Column0, Vector3D.Cross(Column1, b))) / determinant;
        return true;
    }
}
