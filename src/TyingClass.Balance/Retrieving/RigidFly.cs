using System.Collections.Immutable;
using TyingClass.Balance.Bodies;
using TyingClass.Balance.Fluid;
using TyingClass.Balance.Geometry;
using TyingClass.Balance.Sinking;
using TyingClass.Balance.Towing;

namespace TyingClass.Balance.Retrieving;

/// <summary>Velocity of the eye and turning of the fly, both in the hook frame, m/s and rad/s; or what goes with them.</summary>
internal readonly record struct Twist(Vector3D Eye, Vector3D Turn)
{
    public static Twist operator +(Twist a, Twist b) => new(a.Eye + b.Eye, a.Turn + b.Turn);

    public static Twist operator -(Twist a, Twist b) => new(a.Eye - b.Eye, a.Turn - b.Turn);

    public static Twist operator *(double s, Twist a) => new(s * a.Eye, s * a.Turn);

    public static Twist operator /(Twist a, double s) => new(a.Eye / s, a.Turn / s);
}

/// <summary>Where the fly is and how it lies.</summary>
internal readonly record struct FlyPose(Vector3D EyeM, Frame Frame);

/// <summary>A fly as a rigid body: everything that acts on it but the pull itself, about the eye.</summary>
/// <remarks>
/// Euler's equations about the eye in the hook frame: of the fly's own mass ṗ + ω × p = F, l̇ + ω × l + u × p = M. The moving water adds its inertia to ṗ and
/// l̇ only: its quadratic terms are the side forces of the strips, which hold at the strips' own speed. docs/formulas.md#the-fly-in-motion
/// </remarks>
internal sealed class RigidFly
{
    /// <summary>Rounds the surface off for a fly, m.</summary>
    private const double SurfaceM = 0.005;
    private const int BedPoints = 14;

    // Regularization: within this of bent right back, a knot's moment goes to nothing, so that it passes through the turn and does not jump there.
    private const double PassageRad = 10 * Math.PI / 180;

    private readonly FlyBody _body;
    private readonly DragField _drag;
    private readonly Water _water;
    private readonly Leader _leader;
    private readonly double _knotStiffness;
    private readonly Bed? _bed;
    private readonly ImmutableArray<Vector3D> _touching;
    private readonly Vector3D _middle;
    private readonly double _bedStiffness, _bedDamping;
    private readonly MassMoments _solid;
    private MassMoments _wet;

    public RigidFly(FlyBody body, FishingConditions conditions, Bed? bed, bool movesWater = true)
    {
        (_body, _water, _leader, _bed) = (body, conditions.Water, conditions.Leader, bed);
        _drag = new DragField(body.Parts, conditions.Water, body.TowPointM);
        _knotStiffness = conditions.Knot == Knot.Cinched ? conditions.Leader.BendingStiffnessNM2 : 0;
        Inertia = FlyInertia.Of(body, conditions.Water, movesWater);
        _solid = MassMoments.Of(body.Parts, double.PositiveInfinity);
        _wet = _solid;
        _middle = _solid.MassCenterM - body.TowPointM;
        _touching = Outline(body);
        _bedStiffness = Bed.StiffnessFor(Inertia.MassKg * Standard.GravityMS2);
        _bedDamping = 2 * Math.Sqrt(_bedStiffness * Inertia.MassKg);
    }

    public FlyInertia Inertia { get; }

    /// <summary>Takes the air as it is after so many seconds under water.</summary>
    public void Soak(double seconds) => _wet = MassMoments.Of(_body.Parts, seconds);

    /// <summary>Force and moment about the eye, hook frame, gyroscopic terms with them.</summary>
    /// <param name="pullN">Of the leader, world.</param>
    public Wrench Loads(in FlyPose pose, Twist motion, Vector3D pullN)
    {
        Vector3D up = pose.Frame.Up, u = motion.Eye, w = motion.Turn;
        double height = pose.EyeM.Z + pose.Frame.ToWorld(_middle).Z, under = Math.Clamp(0.5 - height / (2 * SurfaceM), 0, 1);
        Wrench drag = under > 0 ? under * _drag.At(-u, w) : default;
        double density = under * _water.DensityKgM3;
        Vector3D force = drag.ForceN - _wet.WetMassKg(density) * Standard.GravityMS2 * up;
        Vector3D moment = drag.MomentNM + Standard.GravityMS2 * Vector3D.Cross(up, _wet.WetMomentKgM(density, _body.TowPointM));
        if (_knotStiffness > 0) moment += KnotMoment(pose.Frame.ToHook(pullN), -u);
        if (_bed is { } bed && pose.EyeM.Z < bed.LevelM + 0.3) AddBed(bed, pose, motion, ref force, ref moment);

        Vector3D momentum = Inertia.MassKg * u + Vector3D.Cross(w, Inertia.MassMomentKgM);
        Vector3D angular = Inertia.Turning * w + Vector3D.Cross(Inertia.MassMomentKgM, u);
        force -= Vector3D.Cross(w, momentum);
        moment -= Vector3D.Cross(w, angular) + Vector3D.Cross(u, momentum);
        return new Wrench(force, moment);
    }

    /// <summary>Height of its lowest firm point, m.</summary>
    public double LowestM(in FlyPose pose)
    {
        double lowest = double.PositiveInfinity;
        foreach (Vector3D arm in _touching) lowest = Math.Min(lowest, pose.EyeM.Z + pose.Frame.ToWorld(arm).Z);
        return lowest;
    }

    /// <summary>Kinetic energy with the moving water's, and potential energy in water, J.</summary>
    public double EnergyJ(in FlyPose pose, Twist motion)
    {
        Span<double> v = [motion.Eye.X, motion.Eye.Y, motion.Eye.Z, motion.Turn.X, motion.Turn.Y, motion.Turn.Z];
        double kinetic = 0;
        for (int i = 0; i < 36; i++) kinetic += 0.5 * Inertia.Whole[i] * v[i / 6] * v[i % 6];
        double density = _water.DensityKgM3;
        Vector3D arm = pose.Frame.ToWorld(_wet.WetMomentKgM(density, _body.TowPointM));
        return kinetic + Standard.GravityMS2 * (_wet.WetMassKg(density) * pose.EyeM.Z + arm.Z);
    }

    /// <summary>
    /// A cinched leader under a pull turns the fly as the towed one's, slack as the sinking one's. They change over, smoothly, where the pull is as great as
    /// the water's hold on the stretch that is bent. Estimate: the ends are exact, the way between them is not.
    /// </summary>
    private Vector3D KnotMoment(Vector3D pullN, Vector3D flowMS)
    {
        double speed = flowMS.Length, pull = pullN.Length;
        double perLength = speed > 0
            ? _water.DensityKgM3 / 2 * _leader.DiameterM * speed * speed
                * DragTable.Cylinder.One(speed * _leader.DiameterM * _water.DensityKgM3 / _water.ViscosityPaS).Coefficient
            : 0;
        double held = perLength > 0 ? Math.Cbrt(perLength * perLength * _knotStiffness) : 0;
        if (pull + held == 0) return default;
        double taut = Math.Pow(pull, 4) / (Math.Pow(pull, 4) + Math.Pow(held, 4));
        Vector3D moment = taut * Passing(pullN) * TowedFly.KnotMoment(pullN, _knotStiffness);
        return perLength > 0 ? moment + (1 - taut) * Passing(flowMS) * SlackLeader.On(flowMS, perLength, _knotStiffness).MomentNM : moment;
    }

    // 1, but to nothing where the leader is drawn right back along the shank.
    private static double Passing(Vector3D along)
    {
        if (along.X <= 0) return 1;
        double aside = Math.Sqrt(along.Y * along.Y + along.Z * along.Z), share = Math.Min(1, Math.Atan2(aside, along.X) / PassageRad);
        return share * share * (3 - 2 * share);
    }

    private void AddBed(Bed bed, in FlyPose pose, Twist motion, ref Vector3D force, ref Vector3D moment)
    {
        foreach (Vector3D arm in _touching)
        {
            double height = pose.EyeM.Z + pose.Frame.ToWorld(arm).Z;
            if (height >= bed.LevelM) continue;
            Vector3D velocity = pose.Frame.ToWorld(motion.Eye + Vector3D.Cross(motion.Turn, arm));
            Vector3D push = pose.Frame.ToHook(bed.Push(_bedStiffness, _bedDamping, height, velocity).ForceN);
            force += push;
            moment += Vector3D.Cross(arm, push);
        }
    }

    // The farthest firm points in fourteen directions, six along the axes and eight between: enough to lie on.
    private static ImmutableArray<Vector3D> Outline(FlyBody body)
    {
        List<Vector3D> points = [default];
        foreach (DragElement e in body.Parts.SelectMany(p => p.Drag).Where(e => e.Shape != DragShape.Streamer))
        {
            Vector3D middle = e.PositionM - body.TowPointM;
            foreach (Vector3D aside in (Vector3D[])[Vector3D.UnitX, Vector3D.UnitY, Vector3D.UnitZ])
            {
                Vector3D reach = e.Shape == DragShape.Cylinder
                    ? Vector3D.Dot(aside, e.Axis) * e.LengthM / 2 * e.Axis + e.DiameterM / 2 * (aside - Vector3D.Dot(aside, e.Axis) * e.Axis)
                    : e.DiameterM / 2 * aside;
                points.Add(middle + reach);
                points.Add(middle - reach);
            }
        }

        List<Vector3D> farthest = [];
        for (int i = 0; i < 27 && farthest.Count < BedPoints; i++)
        {
            Vector3D way = new(i % 3 - 1, i / 3 % 3 - 1, i / 9 - 1);
            if (way.LengthSquared is not (1 or 3)) continue;
            Vector3D point = points.MaxBy(p => Vector3D.Dot(p, way));
            if (!farthest.Contains(point)) farthest.Add(point);
        }

        return [.. farthest];
    }
}
