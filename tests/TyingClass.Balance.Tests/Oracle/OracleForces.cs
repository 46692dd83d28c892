using TyingClass.Balance.Bodies;

namespace TyingClass.Balance.Tests.Oracle;

/// <summary>Drag on one element, straight from section 4 of the balance model.</summary>
internal static class OracleForces
{
    /// <param name="w">Water's velocity past the element, m/s.</param>
    /// <param name="rho">kg/m³.</param>
    /// <param name="mu">Pa·s.</param>
    public static OracleVector Drag(DragElement e, OracleVector w, double rho, double mu) => e.Shape switch
    {
        DragShape.Cylinder => Cylinder(e, w, rho, mu),
        DragShape.Sphere => Sphere(e.DiameterM, w, rho, mu),
        DragShape.Streamer => 0.5 * rho * e.StreamerAreaM2 * w.Length * w,
        _ => throw new NotSupportedException(),
    };

    /// <summary>
    /// Side force, as the books write it, in angles: force and its moment about the element's own place. Round: ½ρw² ΔS sin 2α cos(α/2), α counted from the
    /// nearer
    /// end, and a share of it at the lee end; the ends change roles within about 6° of broadside.
    /// </summary>
    public static (OracleVector Force, OracleVector Moment) Side(SideForceElement e, OracleVector w, double rho, double mu) =>
        w.Length == 0 ? default : e.Shape == SideForceShape.Plate ? Plate(e, w, rho, mu) : (Round(e, w, rho), default);

    private static OracleVector Round(SideForceElement e, OracleVector w, double rho)
    {
        OracleVector a = OracleVector.Of(e.Axis), across = w - OracleVector.Dot(w, a) * a;
        double n = across.Length, alpha = Math.Atan2(n, OracleVector.Dot(w, a)), fromNearerEnd = Math.Min(alpha, Math.PI - alpha);
        if (n == 0) return default;
        double cos = Math.Cos(alpha), roundedSign = cos * Math.Sqrt(1.01 / (cos * cos + 0.01));
        double weather = (1 + Math.Sign(e.SectionStepM2) * roundedSign) / 2;
        double kept = weather + (1 - weather) * e.RearShare;
        return 0.5 * rho * w.Length * w.Length * e.SectionStepM2 * Math.Sin(2 * alpha) * Math.Cos(fromNearerEnd / 2) * kept / n * across;
    }

    // Potential part at its own center of pressure, the rest in the middle, friction of both faces along the plate.
    private static (OracleVector Force, OracleVector Moment) Plate(SideForceElement e, OracleVector w, double rho, double mu)
    {
        OracleVector a = OracleVector.Of(e.Axis), m = OracleVector.Of(e.Normal);
        double u = OracleVector.Dot(w, a), v = OracleVector.Dot(w, m), area = e.LengthM * e.WidthM, aspect = e.WidthM / e.LengthM;
        double q = 0.5 * rho * (u * u + v * v), alpha = Math.Atan2(Math.Abs(v), Math.Abs(u)), sin = Math.Sin(alpha), cos = Math.Cos(alpha);
        double kept = 1 / (1 + Math.Pow(Math.Tan(alpha) / Math.Tan(e.Law.StallRad), 8));
        double potential = kept * 2 * Math.PI * aspect / (2 + Math.Sqrt(4 + aspect * aspect)) * sin * cos;
        double rest = kept * e.Law.EdgePart * sin * sin + (1 - kept) * 1.17 * sin;
        OracleVector along = w - v * m;
        double slip = along.Length, friction = slip > 0 ? rho * area * 1.328 / Math.Sqrt(rho * slip * e.LengthM / mu) * slip : 0;
        double aheadOfMiddle = e.LengthM * (0.5 - 0.25 * aspect / (aspect + 0.25 / e.Law.SquareCenter - 1));
        OracleVector lift = q * area * potential * Math.Sign(v) * m;
        return (lift + q * area * rest * Math.Sign(v) * m + friction * along, OracleVector.Cross(-aheadOfMiddle * Math.Sign(u) * a, lift));
    }

    /// <summary>Brown and Lawler 2003.</summary>
    public static double SphereCoefficient(double re) => 24 / re * (1 + 0.15 * Math.Pow(re, 0.681)) + 0.407 / (1 + 8710 / re);

    public static double CylinderCoefficient(double re) =>
        11 * Math.Pow(re, -0.75) + 0.9 * (1 - Math.Exp(-1000 / re)) + 1.2 * (1 - Math.Exp(-Math.Pow(re / 4500, 0.7)));

    /// <summary>Finite length: table by length over diameter, straight lines between in diameter over length.</summary>
    public static double FiniteLength(double lengthOverDiameter)
    {
        if (lengthOverDiameter <= 1) return 0.63 / 1.20;
        double x = 1 / lengthOverDiameter;
        (double X, double C)[] table = [(0, 1.20), (1.0 / 40, 0.98), (1.0 / 10, 0.82), (1.0 / 5, 0.74), (1.0 / 2, 0.68), (1, 0.63)];
        int i = 1;
        while (table[i].X < x) i++;
        double share = (x - table[i - 1].X) / (table[i].X - table[i - 1].X);
        return (table[i - 1].C * (1 - share) + table[i].C * share) / 1.20;
    }

    private static OracleVector Sphere(double d, OracleVector w, double rho, double mu)
    {
        double speed = w.Length;
        return speed * d == 0 ? default : 0.5 * rho * SphereCoefficient(rho * speed * d / mu) * Math.PI / 4 * d * d * speed * w;
    }

    private static OracleVector Cylinder(DragElement e, OracleVector w, double rho, double mu)
    {
        double d = e.DiameterM, length = e.LengthM;
        OracleVector a = OracleVector.Of(e.Axis);
        double along = OracleVector.Dot(w, a);
        OracleVector across = w - along * a;
        OracleVector force = default;
        double speed = across.Length;
        if (speed * d > 0)
        {
            double cn = FiniteLength(e.SlendernessRatio) * CylinderCoefficient(rho * speed * d / mu);
            force += 0.5 * rho * cn * d * length * speed * across;
        }

        double reference = double.IsInfinity(e.SlendernessRatio) ? length : e.SlendernessRatio * d;
        if (Math.Abs(along) * reference > 0)
        {
            double cf = 1.328 / Math.Sqrt(rho * Math.Abs(along) * reference / mu);
            force += 0.5 * rho * cf * Math.PI * d * length * Math.Abs(along) * along * a;
        }

        return force + 0.5 * rho * 0.8 * e.BluntShare * Math.PI / 4 * d * d * Math.Abs(along) * along * a;
    }
}
