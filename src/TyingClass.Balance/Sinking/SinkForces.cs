using TyingClass.Balance.Bodies;
using TyingClass.Balance.Fluid;
using TyingClass.Balance.Geometry;
using TyingClass.Balance.Towing;

namespace TyingClass.Balance.Sinking;

/// <summary>
/// What acts on a sinking fly: the water on it and, where it is cinched, on the slack leader; and the flow at which that balances its weight.
/// </summary>
internal sealed class SinkForces
{
    private readonly DragField _drag;
    private readonly Vector3D _wetMoment;
    private readonly double _knotStiffness;
    private readonly double _leaderDragPerSpeed2;
    private readonly double _leaderReynoldsPerSpeed;
    private readonly Vector3D _towPoint;
    private readonly Vector3D _massCenter;

    public SinkForces(FlyBody body, FishingConditions conditions, MassMoments moments)
    {
        double density = conditions.Water.DensityKgM3;
        _massCenter = moments.MassCenterM;
        _towPoint = body.TowPointM;
        WetWeightN = moments.WetMassKg(density) * Standard.GravityMS2;
        _wetMoment = moments.WetMomentKgM(density, _massCenter);
        _drag = new DragField(body.Parts, conditions.Water, _massCenter);
        _knotStiffness = conditions.Knot == Knot.Cinched ? conditions.Leader.BendingStiffnessNM2 : 0;
        _leaderDragPerSpeed2 = density / 2 * conditions.Leader.DiameterM;
        _leaderReynoldsPerSpeed = density * conditions.Leader.DiameterM / conditions.Water.ViscosityPaS;
        MomentScaleNM = Math.Max(Math.Abs(WetWeightN) * body.ShankLengthM, Standard.GravityMS2 * _wetMoment.Length);
    }

    public double WetWeightN { get; }

    /// <summary>A moment to measure others by.</summary>
    public double MomentScaleNM { get; }

    private readonly record struct Derivatives(Wrench Wrench, Matrix3 Force, Matrix3 Moment);

    public bool TryTilt(Vector3D up, ref Vector3D flow, out SinkTilt tilt)
    {
        tilt = default;
        if (!TryBalance(up, ref flow, out Derivatives d))
        {
            return false;
        }

        Vector3D a = Vector3D.Cross(up, Math.Abs(up.X) < 0.7 ? Vector3D.UnitX : Vector3D.UnitY).Normalized();
        Vector3D b = Vector3D.Cross(up, a);
        Vector3D moment = d.Wrench.MomentNM + Standard.GravityMS2 * Vector3D.Cross(up, _wetMoment);
        Vector3D ja = Turn(a, up, d), jb = Turn(b, up, d);
        // A lopsided fly has a moment left about the plumb line. It stays there as the fly tilts, so it shows up about the tilted axes.
        double about = Vector3D.Dot(moment, up);
        tilt = new SinkTilt(
            a, b, Vector3D.Dot(moment, a), Vector3D.Dot(moment, b),
            Vector3D.Dot(ja, a), Vector3D.Dot(jb, a) + about, Vector3D.Dot(ja, b) - about, Vector3D.Dot(jb, b));
        return true;
    }

    private Vector3D Turn(Vector3D axis, Vector3D up, in Derivatives d)
    {
        Vector3D upChange = -Vector3D.Cross(axis, up);
        Vector3D flowChange = d.Force.TrySolve(WetWeightN * upChange, out Vector3D solved) ? solved : Vector3D.Zero;
        return d.Moment * flowChange + Standard.GravityMS2 * Vector3D.Cross(upChange, _wetMoment);
    }

    // Newton on F(w) = W' up. Drag grows as about the square of speed, so an overlong flow shrinks by about half a step and cannot diverge; a turn of the flow
    // is limited instead.
    private bool TryBalance(Vector3D up, ref Vector3D flow, out Derivatives derivatives)
    {
        Vector3D wanted = WetWeightN * up;
        for (int i = 0; i < 60; i++)
        {
            derivatives = Differentiate(flow);
            Vector3D missing = wanted - derivatives.Wrench.ForceN;
            if (missing.Length <= 1e-11 * Math.Abs(WetWeightN))
            {
                return true;
            }

            if (!derivatives.Force.TrySolve(missing, out Vector3D change))
            {
                return false;
            }

            double limit = 0.7 * flow.Length, length = change.Length;
            flow += length > limit ? limit / length * change : change;
        }

        derivatives = Differentiate(flow);
        return (wanted - derivatives.Wrench.ForceN).Length <= 1e-7 * Math.Abs(WetWeightN);
    }

    private Derivatives Differentiate(Vector3D flow)
    {
        Wrench here = Total(flow);
        double h = 1e-6 * flow.Length;
        Wrench x = (Total(flow + new Vector3D(h, 0, 0)) - here) / h;
        Wrench y = (Total(flow + new Vector3D(0, h, 0)) - here) / h;
        Wrench z = (Total(flow + new Vector3D(0, 0, h)) - here) / h;
        return new Derivatives(here, new Matrix3(x.ForceN, y.ForceN, z.ForceN), new Matrix3(x.MomentNM, y.MomentNM, z.MomentNM));
    }

    public Wrench Total(Vector3D flow)
    {
        Wrench drag = _drag.At(flow);
        if (_knotStiffness == 0)
        {
            return drag;
        }

        double speed = flow.Length;
        double perLength = _leaderDragPerSpeed2 * DragTable.Cylinder.At(speed * _leaderReynoldsPerSpeed) * speed * speed;
        Wrench leader = SlackLeader.On(flow, perLength, _knotStiffness);
        return drag + new Wrench(leader.ForceN, leader.MomentNM + Vector3D.Cross(_towPoint - _massCenter, leader.ForceN));
    }
}
