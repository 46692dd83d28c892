using System.Collections.Immutable;
using TyingClass.Balance.Bodies;
using TyingClass.Balance.Fluid;
using TyingClass.Balance.Geometry;
using TyingClass.Balance.Towing;

namespace TyingClass.Balance.Sinking;

/// <summary>How a fly sinks on a slack line once it has settled.</summary>
/// <param name="Up">Up in the hook frame.</param>
/// <param name="FlowMS">Water past the fly, hook frame, m/s.</param>
/// <param name="IsIndifferent">Nothing turns it either way, as nothing turns a ball: it sinks at this rate in any attitude.</param>
public readonly record struct SteadySink(Vector3D Up, Vector3D FlowMS, bool IsStable, bool IsIndifferent = false)
{
    /// <summary>Vertical rate, m/s, positive down.</summary>
    public double RateMS => Vector3D.Dot(FlowMS, Up);

    public double PitchRad => Math.Asin(Math.Clamp(-Up.X, -1, 1));

    public double LeanRad(Intent intent)
    {
        double roll = Math.Abs(Math.Atan2(Up.Y, Up.Z));
        return intent == Intent.PointDown ? roll : Math.PI - roll;
    }
}

/// <summary>
/// A fly on a slack line in still water. Drag balances wet weight, and moments about the mass center vanish; the fly may glide aside as it sinks.
/// </summary>
/// <remarks>In the hook frame drag depends on the flow alone, so for each direction of up the flow follows from F(w) = W' up. A turn about the plumb line
/// changes nothing and is left out of the unknowns; a lopsided fly's slow spin is ignored.</remarks>
public sealed class SinkingFly
{
    private const double LongestStepRad = 0.3;
    private const double SameWayRad = 0.01;

    private readonly DragField _drag;
    private readonly double _wetWeightN;
    private readonly Vector3D _wetMoment;
    private readonly double _knotStiffness;
    private readonly double _leaderDragPerSpeed2;
    private readonly double _leaderReynoldsPerSpeed;
    private readonly Leader _leader;
    private readonly Water _water;
    private readonly double _massKg;
    private readonly Vector3D _massCenter;
    private readonly Vector3D _towPoint;
    private readonly double _momentScale;
    private readonly double _hand;

    public SinkingFly(FlyBody body, FishingConditions conditions, double soakS)
    {
        ArgumentNullException.ThrowIfNull(body);
        MassMoments moments = MassMoments.Of(body.Parts, soakS);
        double density = conditions.Water.DensityKgM3;
        _massCenter = moments.MassCenterM;
        _towPoint = body.TowPointM;
        _massKg = moments.MassKg + (double.IsPositiveInfinity(soakS) ? body.Parts.Sum(p => p.HeldWaterKg) : 0);
        _wetWeightN = moments.WetMassKg(density) * Standard.GravityMS2;
        _wetMoment = moments.WetMomentKgM(density, _massCenter);
        _drag = new DragField(body.Parts, conditions.Water, _massCenter);
        _knotStiffness = conditions.Knot == Knot.Cinched ? conditions.Leader.BendingStiffnessNM2 : 0;
        _leaderDragPerSpeed2 = density / 2 * conditions.Leader.DiameterM;
        _leaderReynoldsPerSpeed = density * conditions.Leader.DiameterM / conditions.Water.ViscosityPaS;
        (_leader, _water) = (conditions.Leader, conditions.Water);
        _hand = Handedness.Of(body);
        _momentScale = Math.Max(Math.Abs(_wetWeightN) * body.ShankLengthM, Standard.GravityMS2 * _wetMoment.Length);
    }

    /// <summary>So near the weight of the water it pushes aside that it hardly moves: under a thousandth of its own weight is left.</summary>
    public bool Hovers => Math.Abs(_wetWeightN) < 1e-3 * _massKg * Standard.GravityMS2;

    /// <summary>
    /// The stable sink a fly settles into when the line goes slack, let go a hair off an attitude so that an unstable one is left. False when it finds none.
    /// </summary>
    public bool TryFindStable(Vector3D up, out SteadySink steady)
    {
        Vector3D start = (up + new Vector3D(0.003, _hand * 0.01, 0)).Normalized();
        // Drag turns with the flow, so whatever circles about one attitude for ever may rest in the opposite one.
        return (TryFindSteady(start, out steady) && steady.IsStable) || (TryFindSteady(-start, out steady) && steady.IsStable);
    }

    /// <summary>Every stable way to sink and the share of releases that end in it, the commonest first. Shares sum to under 1 when some never settle.</summary>
    public ImmutableArray<(SteadySink Sink, double Share)> Ways()
    {
        List<(SteadySink Sink, int Count)> found = [];
        foreach (Vector3D start in SinkStarts.All)
        {
            if (!TryFindSteady(_hand < 0 ? start with { Y = -start.Y } : start, out SteadySink steady) || !steady.IsStable)
            {
                continue;
            }

            int i = found.FindIndex(f => Vector3D.Cross(f.Sink.Up, steady.Up).Length < SameWayRad && Vector3D.Dot(f.Sink.Up, steady.Up) > 0);
            if (i < 0)
            {
                found.Add((steady, 1));
            }
            else
            {
                found[i] = (found[i].Sink, found[i].Count + 1);
            }
        }

        return [.. found.OrderByDescending(f => f.Count).Select(f => (f.Sink, f.Count / (double)SinkStarts.All.Length))];
    }

    /// <summary>The steady sink reached from an attitude. False when the fly hovers, or does not settle.</summary>
    public bool TryFindSteady(Vector3D up, out SteadySink steady)
    {
        steady = default;
        if (Hovers)
        {
            return false;
        }

        Vector3D flow = Math.Sign(_wetWeightN) * 0.2 * up;
        if (!TryTilt(up, ref flow, out Tilt tilt))
        {
            return false;
        }

        for (int step = 0; step < 300; step++)
        {
            bool stable = tilt.IsStable;
            if (tilt.MomentNM <= 1e-9 * _momentScale)
            {
                steady = new SteadySink(up, flow, stable, tilt.StiffnessNM <= 1e-9 * _momentScale || _momentScale == 0);
                return true;
            }

            Vector3D turn = BoundedStep(tilt, stable ? 0 : tilt.LeavingRate);
            if (!double.IsFinite(turn.Length))
            {
                return false;
            }

            Vector3D from = up, fromFlow = flow;
            double size = tilt.MomentNM;
            for (int halving = 0; ; halving++)
            {
                (up, flow) = (Turned(from, turn).Normalized(), Turned(fromFlow, turn));
                if (!TryTilt(up, ref flow, out tilt))
                {
                    return false;
                }

                if (!stable || tilt.MomentNM <= size || halving == 5)
                {
                    break;
                }

                turn *= 0.5;
            }
        }

        return false;
    }

    /// <summary>
    /// Depth against time from rest at the attitude of the steady sink, the leader drawn down behind it: M dv/dt = W' - drag(v) - friction along the leader
    /// + its
    /// weight. The water set in motion with the fly (added mass) is left out, and so is the nose that the leader lifts as it grows.
    /// </summary>
    /// <param name="steady">From <see cref="TryFindSteady"/>.</param>
    /// <param name="untilS">Length of the pause, s.</param>
    /// <param name="points">How many equal steps to report.</param>
    /// <returns>The points, and the mean rate over the first meter; null when it takes over ten times the pause, or rises.</returns>
    public (ImmutableArray<(double TimeS, double DepthM)> Points, double? FirstMeterMS) DepthFromRest(SteadySink steady, double untilS, int points)
    {
        double terminal = steady.FlowMS.Length;
        if (terminal == 0)
        {
            return ([(0, 0)], null);
        }

        Vector3D way = steady.FlowMS / terminal;
        double drive = Vector3D.Dot(Total(steady.FlowMS).ForceN, way), downShare = Vector3D.Dot(way, steady.Up);
        Pause pause = new(_massKg, drive, v => Vector3D.Dot(Total(v * way).ForceN, way));
        // What rises draws no leader down.
        if (downShare > 0)
        {
            double section = Math.PI / 4 * _leader.DiameterM * _leader.DiameterM;
            double weightNM = section * (_leader.DensityKgM3 - _water.DensityKgM3) * Standard.GravityMS2 * downShare * downShare;
            pause = new Pause(pause.MassKg, pause.DriveN, pause.DragN)
            {
                LeaderN = (v, s) => _leader.FrictionFactor * LeaderFriction.ForceN(_water, _leader.DiameterM, s, v) - weightNM * s,
                LeaderKgM = section * _leader.DensityKgM3,
            };
        }

        (ImmutableArray<double> gone, double? meterAfterS) = pause.Run(terminal, untilS, points, downShare > 0 ? 1 / downShare : double.PositiveInfinity);
        return ([.. gone.Select((m, i) => (untilS * i / points, m * downShare))], 1 / meterAfterS);
    }

    private readonly record struct Derivatives(Wrench Wrench, Matrix3 Force, Matrix3 Moment);

    /// <summary>The tilting moments, and how they change as the fly is turned, about two axes square to each other and to the plumb line.</summary>
    /// <param name="AA">Change of the moment about A by a turn about A, N·m/rad; <paramref name="AB"/>: of the moment about A by a turn about B.</param>
    private readonly record struct Tilt(Vector3D A, Vector3D B, double AroundA, double AroundB, double AA, double AB, double BA, double BB)
    {
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
        public Vector3D Step(double rate)
        {
            double p = rate - AA, q = rate - BB, determinant = p * q - AB * BA;
            return (AroundA * q + AB * AroundB) / determinant * A + (p * AroundB + BA * AroundA) / determinant * B;
        }
    }

    private bool TryTilt(Vector3D up, ref Vector3D flow, out Tilt tilt)
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
        tilt = new Tilt(
            a, b, Vector3D.Dot(moment, a), Vector3D.Dot(moment, b),
            Vector3D.Dot(ja, a), Vector3D.Dot(jb, a) + about, Vector3D.Dot(ja, b) - about, Vector3D.Dot(jb, b));
        return true;
    }

    // An overlong step is taken by a shorter time, not cut to length: it then follows the fly, and does not jump over into another way to sink.
    private static Vector3D BoundedStep(in Tilt tilt, double rate)
    {
        Vector3D turn = tilt.Step(rate);
        double enough = tilt.MomentNM / LongestStepRad;
        for (double share = 1.0 / 64; turn.Length > LongestStepRad && share <= 1; share *= 4)
        {
            turn = tilt.Step(rate + share * enough);
        }

        double length = turn.Length;
        return length > LongestStepRad ? LongestStepRad / length * turn : turn;
    }

    // What the fly sees of a fixed direction after it has turned.
    private static Vector3D Turned(Vector3D v, Vector3D turn)
    {
        double angle = turn.Length;
        return angle > 0 ? v.RotatedAbout(turn / angle, -angle) : v;
    }

    private Vector3D Turn(Vector3D axis, Vector3D up, in Derivatives d)
    {
        Vector3D upChange = -Vector3D.Cross(axis, up);
        Vector3D flowChange = d.Force.TrySolve(_wetWeightN * upChange, out Vector3D solved) ? solved : Vector3D.Zero;
        return d.Moment * flowChange + Standard.GravityMS2 * Vector3D.Cross(upChange, _wetMoment);
    }

    // Newton on F(w) = W' up. Drag grows as about the square of speed, so an overlong flow shrinks by about half a step and cannot diverge; a turn of the flow
    // is limited instead.
    private bool TryBalance(Vector3D up, ref Vector3D flow, out Derivatives derivatives)
    {
        Vector3D wanted = _wetWeightN * up;
        for (int i = 0; i < 60; i++)
        {
            derivatives = Differentiate(flow);
            Vector3D missing = wanted - derivatives.Wrench.ForceN;
            if (missing.Length <= 1e-11 * Math.Abs(_wetWeightN))
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
        return (wanted - derivatives.Wrench.ForceN).Length <= 1e-7 * Math.Abs(_wetWeightN);
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

    private Wrench Total(Vector3D flow)
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
