using TyingClass.Balance.Geometry;
using TyingClass.Balance.Towing;

namespace TyingClass.Balance.Sinking;

/// <summary>What a slack leader, cinched to the eye, does to a sinking fly: the water holds the leader back and its stiffness holds the nose.</summary>
/// <remarks>
/// A long elastic line clamped at angle ψ to the flow and bent into line with it by cross-flow drag f sin²α per length, f = ½ρ C_n d v².
/// In units of ℓ = (EI/f)^⅓, with X and Y the drag still to come along and across the flow: α'' = X sin α - Y cos α, X' = -sin³α, Y' = sin²α cos α, all → 0 far
/// away.
/// Every such line is a piece of one curve, whose tail is α = 60/s³; it is followed back from there once and kept as a table. For small ψ the
/// clamp carries M = 180 (ψ/60)^(4/3) (f EI²)^⅓. The leader's weight in water is left out: at sinking speeds it is some hundredth of the drag.
/// docs/formulas.md#slack-leader
/// </remarks>
public static class SlackLeader
{
    private const int TableSize = 181;
    // The moment is kept over ψ^(4/3), its way of starting, so that small angles come out right between the first two entries.
    private static readonly (double Moment, double Along, double Across)[] Table = Integrate();

    /// <summary>Force and moment on the eye, hook frame, moment about the eye.</summary>
    /// <param name="flowMS">Velocity of the water past the fly, hook frame.</param>
    /// <param name="dragPerLengthNM">f at that speed, N/m.</param>
    /// <param name="stiffnessNM2">EI, over 0.</param>
    public static Wrench On(Vector3D flowMS, double dragPerLengthNM, double stiffnessNM2)
    {
        double speed = flowMS.Length;
        if (speed == 0 || dragPerLengthNM == 0)
        {
            return default;
        }

        Vector3D flow = flowMS / speed, forward = -Vector3D.UnitX;
        double ahead = Vector3D.Dot(flow, forward);
        Vector3D side = forward - ahead * flow;
        double sideLength = side.Length;
        // Not by the cosine alone, which is blind under 10⁻⁸ rad: on a stout leader a light hook comes to rest nearer the flow than that.
        (double moment, double along, double across) = At(Math.Atan2(sideLength, ahead));
        double length = Math.Cbrt(stiffnessNM2 / dragPerLengthNM);
        if (sideLength < 1e-9)
        {
            return new Wrench(dragPerLengthNM * length * along * flow, Vector3D.Zero);
        }

        side /= sideLength;
        return new Wrench(
            dragPerLengthNM * length * (along * flow + across * side),
            stiffnessNM2 / length * moment * Vector3D.Cross(side, flow));
    }

    private static (double Moment, double Along, double Across) At(double angleRad)
    {
        angleRad = Math.Clamp(angleRad, 0, Math.PI);
        double x = angleRad / Math.PI * (TableSize - 1);
        int i = Math.Min((int)x, TableSize - 2);
        double t = x - i;
        (double m0, double a0, double c0) = Table[i];
        (double m1, double a1, double c1) = Table[i + 1];
        return ((m0 + t * (m1 - m0)) * Math.Pow(angleRad, 4.0 / 3), a0 + t * (a1 - a0), c0 + t * (c1 - c0));
    }

    private static (double, double, double)[] Integrate()
    {
        // State (α, α', X, Y) walked back along the line from far out on the tail.
        double s = Math.Cbrt(60 / 1e-3);
        double[] y = [60 / (s * s * s), -180 / Math.Pow(s, 4), 27000 / Math.Pow(s, 8), -720 / Math.Pow(s, 5)];
        (double, double, double)[] table = new (double, double, double)[TableSize];
        table[0] = (180 / Math.Pow(60, 4.0 / 3), 0, 0);
        double previousAngle = 0;
        (double M, double A, double C) previous = default;
        int next = 1;
        while (next < TableSize)
        {
            double step = Math.Min(0.02, 0.005 / Math.Max(1e-3, -y[1]));
            y = RungeKutta(y, -step);
            (double M, double A, double C) here = (-y[1], y[2], y[3]);
            while (next < TableSize && y[0] >= next * Math.PI / (TableSize - 1))
            {
                double wanted = next * Math.PI / (TableSize - 1);
                double t = (wanted - previousAngle) / (y[0] - previousAngle);
                table[next++] = ((previous.M + t * (here.M - previous.M)) / Math.Pow(wanted, 4.0 / 3), previous.A + t * (here.A - previous.A),
                    previous.C + t * (here.C - previous.C));
            }

            (previousAngle, previous) = (y[0], here);
        }

        return table;
    }

    private static double[] RungeKutta(double[] y, double h)
    {
        double[] k1 = Slope(y), k2 = Slope(Add(y, k1, h / 2)), k3 = Slope(Add(y, k2, h / 2)), k4 = Slope(Add(y, k3, h));
        double[] result = new double[4];
        for (int i = 0; i < 4; i++)
        {
            result[i] = y[i] + h / 6 * (k1[i] + 2 * k2[i] + 2 * k3[i] + k4[i]);
        }

        return result;

        static double[] Slope(double[] v)
        {
            (double sin, double cos) = Math.SinCos(v[0]);
            return [v[1], v[2] * sin - v[3] * cos, -sin * sin * sin, sin * sin * cos];
        }

        static double[] Add(double[] v, double[] k, double h) => [v[0] + h * k[0], v[1] + h * k[1], v[2] + h * k[2], v[3] + h * k[3]];
    }
}
