using TyingClass.Balance.Bodies;
using TyingClass.Balance.Fluid;
using TyingClass.Balance.Geometry;

namespace TyingClass.Balance.Towing;

/// <summary>One flat plate with its constants multiplied out.</summary>
/// <remarks>
/// With u = w·a along it, v = w·m square to it, V² = u² + v² and f the share of the lift that is left,
/// N = ½ρA { f (K_p |u| v + K_v |v| v) + (1 - f) C₉₀ V v } along m, the potential part a lever d ahead of the middle toward the weather edge; and the
/// friction of both faces, ½ρ C_f 2A |w_t| w_t, w_t what is left of w within its plane. f = (1 - r)⁴/((1 - r)⁴ + r⁴), r = v²/(v² + u² tan² of the stall).
/// docs/formulas.md#flat-things
/// </remarks>
internal readonly record struct PlateTerm(Vector3D Arm, Vector3D Axis, Vector3D Normal)
{
    private double StallTangent2 { get; init; }

    private double Potential { get; init; }

    private double Edge { get; init; }

    private double Broadside { get; init; }

    private double LeverM { get; init; }

    private double Friction { get; init; }

    public static PlateTerm Of(SideForceElement e, Water water, Vector3D arm)
    {
        double areaM2 = e.LengthM * e.WidthM, aspect = e.WidthM / e.LengthM, half = water.DensityKgM3 / 2 * areaM2;
        return new PlateTerm(arm, e.Axis, e.Normal)
        {
            Potential = half * FlatPlate.LiftSlope(aspect),
            StallTangent2 = Math.Pow(Math.Tan(e.Law.StallRad), 2),
            Edge = half * e.Law.EdgePart,
            Broadside = half * FlatPlate.Broadside,
            LeverM = e.LengthM * (0.5 - FlatPlate.PotentialCenter(aspect, e.Law.SquareCenter)),
            Friction = 2 * half * SkinFriction.Blasius(e.LengthM * water.DensityKgM3 / water.ViscosityPaS),
        };
    }

    public Wrench At(Vector3D flowMS)
    {
        double u = Vector3D.Dot(flowMS, Axis), v = Vector3D.Dot(flowMS, Normal), total2 = u * u + v * v;
        double lift = Left(u, v).Value;
        Vector3D within = flowMS - v * Normal;
        double normal = v * (lift * (Potential * Math.Abs(u) + Edge * Math.Abs(v)) + (1 - lift) * Broadside * Math.Sqrt(total2));
        Vector3D force = normal * Normal + Friction * Math.Sqrt(within.Length) * within;
        return new Wrench(force, Vector3D.Cross(Arm, force) - LeverM * Potential * lift * u * v * Vector3D.Cross(Axis, Normal));
    }

    /// <summary>How force and moment change as the flow changes along a direction.</summary>
    public Wrench Change(Vector3D flowMS, Vector3D by)
    {
        double u = Vector3D.Dot(flowMS, Axis), v = Vector3D.Dot(flowMS, Normal), total = Math.Sqrt(u * u + v * v);
        double du = Vector3D.Dot(by, Axis), dv = Vector3D.Dot(by, Normal), dTotal = total > 0 ? (u * du + v * dv) / total : 0;
        (double lift, double slope) = Left(u, v);
        double whole = v * v + StallTangent2 * u * u;
        double dLift = whole > 0 ? slope * 2 * StallTangent2 * u * v * (u * dv - v * du) / (whole * whole) : 0;
        double normal = dLift * v * (Potential * Math.Abs(u) + Edge * Math.Abs(v) - Broadside * total)
            + lift * (Potential * (Math.Sign(u) * du * v + Math.Abs(u) * dv) + 2 * Edge * Math.Abs(v) * dv)
            + (1 - lift) * Broadside * (dv * total + v * dTotal);
        Vector3D within = flowMS - v * Normal, dWithin = by - dv * Normal;
        double speed = within.Length, root = Math.Sqrt(speed);
        Vector3D force = normal * Normal + Friction * root * dWithin;
        if (speed > 0)
        {
            force += Friction * Vector3D.Dot(within, dWithin) / (2 * speed * root) * within;
        }

        double couple = dLift * u * v + lift * (du * v + u * dv);
        return new Wrench(force, Vector3D.Cross(Arm, force) - LeverM * Potential * couple * Vector3D.Cross(Axis, Normal));
    }

    // f and its slope by r; all of it where nothing flows square to the edge.
    private (double Value, double Slope) Left(double u, double v)
    {
        double whole = v * v + StallTangent2 * u * u;
        if (!(whole > 0))
        {
            return (1, 0);
        }

        double r = v * v / whole, q = 1 - r, r3 = r * r * r, q3 = q * q * q, sum = r3 * r + q3 * q;
        return (q3 * q / sum, -4 * q3 * r3 / (sum * sum));
    }
}
