using TyingClass.Balance.Bodies;
using TyingClass.Balance.Geometry;

namespace TyingClass.Balance.Towing;

/// <summary>Moment about the tow point, drag, and how the moment changes as the fly is turned.</summary>
/// <param name="MomentNM">Hook frame.</param>
/// <param name="DragN">Hook frame.</param>
/// <param name="Turning">Derivative of the moment by a small turn of the fly, both in the hook frame, N·m/rad.</param>
public readonly record struct Linearized(Vector3D MomentNM, Vector3D DragN, Matrix3 Turning);

/// <summary>A fly held at its tow point in a uniform horizontal flow: the moment function of every tow calculation.</summary>
/// <remarks>Turning the whole fly about the flow's direction changes neither the drag nor its moment as the hook sees them, so drag is a function of the flow's
/// direction in the hook frame alone and two derivatives of it are enough, not three.</remarks>
public sealed class TowedFly
{
    private const double DifferenceStep = 1e-6;

    /// <param name="drag">Its origin must be the tow point.</param>
    /// <param name="wetMassKg">M - ρV.</param>
    /// <param name="wetMomentKgM">Σ (m - ρV)(r - r_e).</param>
    /// <param name="knotStiffnessNM2">EI of a cinched leader, 0 for a loop.</param>
    /// <param name="shankLengthM">The yardstick of residuals.</param>
    public TowedFly(DragField drag, double wetMassKg, Vector3D wetMomentKgM, double knotStiffnessNM2, double shankLengthM)
    {
        ArgumentNullException.ThrowIfNull(drag);
        Drag = drag;
        WetMassKg = Require.Finite(wetMassKg, nameof(wetMassKg));
        WetMomentKgM = wetMomentKgM;
        KnotStiffnessNM2 = Require.NotNegative(knotStiffnessNM2, nameof(knotStiffnessNM2));
        ShankLengthM = Require.Positive(shankLengthM, nameof(shankLengthM));
    }

    public DragField Drag { get; }

    public double WetMassKg { get; internal set; }

    public Vector3D WetMomentKgM { get; internal set; }

    public double KnotStiffnessNM2 { get; }

    public double ShankLengthM { get; }

    /// <summary>Too little weight left in water for a keel height to mean anything (<see cref="MassMoments.IsNearNeutral"/>).</summary>
    public bool IsNearNeutral { get; private init; }

    /// <summary>1 or -1: the side that searches try first (<see cref="Handedness"/>).</summary>
    public double Hand { get; private init; } = 1;

    /// <summary>W' = (M - ρV) g, N.</summary>
    public double WetWeightN => WetMassKg * Standard.GravityMS2;

    /// <summary>A moment to measure others by: W' × shank length, N·m, kept off zero for a fly near neutral buoyancy.</summary>
    public double MomentScaleNM =>
        Math.Max(Math.Abs(WetWeightN) * ShankLengthM, Standard.GravityMS2 * WetMomentKgM.Length);

    /// <summary>From a body in the given water and state of soak.</summary>
    /// <param name="soakS">Seconds under water; positive infinity is soaked through.</param>
    public static TowedFly From(FlyBody body, FishingConditions conditions, double soakS)
    {
        ArgumentNullException.ThrowIfNull(body);
        MassMoments moments = MassMoments.Of(body.Parts, soakS);
        return new TowedFly(
            new DragField(body.Parts, conditions.Water, body.TowPointM),
            moments.WetMassKg(conditions.Water.DensityKgM3),
            moments.WetMomentKgM(conditions.Water.DensityKgM3, body.TowPointM),
            conditions.Knot == Knot.Cinched ? conditions.Leader.BendingStiffnessNM2 : 0,
            body.ShankLengthM)
        {
            IsNearNeutral = moments.IsNearNeutral(conditions.Water.DensityKgM3),
            Hand = Handedness.Of(body),
        };
    }

    /// <summary>Moment about the tow point and drag, hook frame. Allocates nothing.</summary>
    public Wrench At(in Attitude attitude, double speedMS)
    {
        Wrench drag = Drag.At(speedMS * attitude.Flow);
        return new Wrench(drag.ForceN, drag.MomentNM + RestMoment(attitude.Up, drag.ForceN));
    }

    /// <summary>Moment, drag and the moment's derivative by turning, hook frame.</summary>
    public Linearized Linearize(in Attitude attitude, double speedMS)
    {
        Vector3D flow = attitude.Flow, up = attitude.Up, across = attitude.Across;
        // Two unit directions square to the flow: every small turn moves the flow within their plane.
        (Wrench here, Wrench byUp, Wrench byAcross) = Drag.Differentiate(speedMS * flow, speedMS * up, speedMS * across);

        Vector3D rest = RestMoment(up, here.ForceN);
        return new Linearized(
            here.MomentNM + rest,
            here.ForceN,
            new Matrix3(Column(Vector3D.UnitX), Column(Vector3D.UnitY), Column(Vector3D.UnitZ)));

        Vector3D Column(Vector3D turn)
        {
            Vector3D flowChange = -Vector3D.Cross(turn, flow);
            Vector3D upChange = -Vector3D.Cross(turn, up);
            Wrench change = Vector3D.Dot(flowChange, up) * byUp + Vector3D.Dot(flowChange, across) * byAcross;
            Vector3D moment = change.MomentNM + Standard.GravityMS2 * Vector3D.Cross(upChange, WetMomentKgM);
            if (KnotStiffnessNM2 > 0)
            {
                Vector3D moved = KnotMoment(up + DifferenceStep * upChange, here.ForceN + DifferenceStep * change.ForceN);
                Vector3D back = KnotMoment(up - DifferenceStep * upChange, here.ForceN - DifferenceStep * change.ForceN);
                moment += (moved - back) / (2 * DifferenceStep);
            }

            return moment;
        }
    }

    /// <summary>What the leader pulls the eye with, hook frame, N: it balances drag and wet weight.</summary>
    public Vector3D PullN(Vector3D up, Vector3D dragN) => WetWeightN * up - dragN;

    private Vector3D RestMoment(Vector3D up, Vector3D dragN)
    {
        Vector3D weight = Standard.GravityMS2 * Vector3D.Cross(up, WetMomentKgM);
        return KnotStiffnessNM2 > 0 ? weight + KnotMoment(up, dragN) : weight;
    }

    internal Vector3D KnotMoment(Vector3D up, Vector3D dragN) => KnotMoment(PullN(up, dragN), KnotStiffnessNM2);

    /// <summary>
    /// M = 2 √(EI T) sin(ψ/2), turning the shank's forward end toward the pull (semi-infinite elastica clamped at ψ to its tension; docs/formulas.md).
    /// </summary>
    /// <param name="pull">T, N, hook frame.</param>
    /// <param name="stiffnessNM2">EI.</param>
    internal static Vector3D KnotMoment(Vector3D pull, double stiffnessNM2)
    {
        double tension = pull.Length;
        if (tension == 0)
        {
            return Vector3D.Zero;
        }

        // |a × t| = sin ψ = 2 sin(ψ/2) cos(ψ/2), with a = -x the way the leader is clamped.
        Vector3D toward = Vector3D.Cross(-Vector3D.UnitX, pull / tension);
        double cosHalf = Math.Sqrt(Math.Max(1e-12, (1 - pull.X / tension) / 2));
        return Math.Sqrt(stiffnessNM2 * tension) / cosHalf * toward;
    }
}
