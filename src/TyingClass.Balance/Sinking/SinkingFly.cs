using System.Collections.Immutable;
using TyingClass.Balance.Bodies;
using TyingClass.Balance.Fluid;
using TyingClass.Balance.Geometry;
using TyingClass.Balance.Reports;

namespace TyingClass.Balance.Sinking;

/// <summary>
/// A fly on a slack line in still water. Drag balances wet weight, and moments about the mass center vanish; the fly may glide aside as it sinks.
/// </summary>
/// <remarks>In the hook frame drag depends on the flow alone, so for each direction of up the flow follows from F(w) = W' up. A turn about the plumb line
/// changes nothing and is left out of the unknowns; a lopsided fly's slow spin is ignored.</remarks>
public sealed class SinkingFly
{
    private const double SameWayRad = 0.01;

    private readonly SinkForces _forces;
    private readonly Leader _leader;
    private readonly Water _water;
    private readonly double _massKg;
    private readonly double _hand;

    public SinkingFly(FlyBody body, FishingConditions conditions, double soakS)
    {
        ArgumentNullException.ThrowIfNull(body);
        MassMoments moments = MassMoments.Of(body.Parts, soakS);
        _forces = new SinkForces(body, conditions, moments);
        _massKg = moments.MassKg + (double.IsPositiveInfinity(soakS) ? body.Parts.Sum(p => p.HeldWaterKg) : 0);
        (_leader, _water) = (conditions.Leader, conditions.Water);
        _hand = Handedness.Of(body);
    }

    /// <summary>So near the weight of the water it pushes aside that it hardly moves: under a thousandth of its own weight is left.</summary>
    public bool Hovers => Math.Abs(_forces.WetWeightN) < 1e-3 * _massKg * Standard.GravityMS2;

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
            StopSignal.Heed();
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

        Vector3D flow = Math.Sign(_forces.WetWeightN) * 0.2 * up;
        if (!_forces.TryTilt(up, ref flow, out SinkTilt tilt))
        {
            return false;
        }

        for (int step = 0; step < 300; step++)
        {
            bool stable = tilt.IsStable;
            if (tilt.MomentNM <= 1e-9 * _forces.MomentScaleNM)
            {
                steady = new SteadySink(up, flow, stable, tilt.StiffnessNM <= 1e-9 * _forces.MomentScaleNM || _forces.MomentScaleNM == 0);
                return true;
            }

            Vector3D turn = tilt.BoundedStep(stable ? 0 : tilt.LeavingRate);
            if (!double.IsFinite(turn.Length))
            {
                return false;
            }

            Vector3D from = up, fromFlow = flow;
            double size = tilt.MomentNM;
            for (int halving = 0; ; halving++)
            {
                (up, flow) = (Turned(from, turn).Normalized(), Turned(fromFlow, turn));
                if (!_forces.TryTilt(up, ref flow, out tilt))
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
        double drive = Vector3D.Dot(_forces.Total(steady.FlowMS).ForceN, way), downShare = Vector3D.Dot(way, steady.Up);
        Pause pause = new(_massKg, drive, v => Vector3D.Dot(_forces.Total(v * way).ForceN, way));
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

    // What the fly sees of a fixed direction after it has turned.
    private static Vector3D Turned(Vector3D v, Vector3D turn)
    {
        double angle = turn.Length;
        return angle > 0 ? v.RotatedAbout(turn / angle, -angle) : v;
    }
}
