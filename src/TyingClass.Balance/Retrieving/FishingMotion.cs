using TyingClass.Balance.Geometry;
using TyingClass.Balance.Towing;

namespace TyingClass.Balance.Retrieving;

/// <summary>Line and fly together, stepped through time.</summary>
/// <remarks>
/// Two implicit stages of γh, γ = 1 - 1/√2, the second from what the first leaves: the L-stable singly diagonal method of second order (Alexander, SIAM J.
/// Numer. Anal. 14 (1977) 1006). What is much faster than a step, the trembling of the line and the weathercock of a small fly, is passed over; what is
/// slower is followed. The frame moves with the water, so a steady current is a rod tip and a bed that drift.
/// </remarks>
internal sealed class FishingMotion
{
    private static readonly double Gamma = 1 - 1 / Math.Sqrt(2);
    private const int MostIterations = 16;
    private const double PullToleranceN = 5e-6;

    // The stretch bent at a cinched knot follows the pull within this time. Estimate; any less and moment and pull chase each other.
    private const double KnotS = 0.02;

    private readonly LineChain _line;
    private readonly RigidFly _fly;
    private readonly double[] _jacobian = new double[36];
    private readonly Vector3D[] _placesM, _speedsMS, _baseMS, _firstMS;

    public FishingMotion(LineChain line, RigidFly fly, FlyPose pose)
    {
        (_line, _fly, Pose) = (line, fly, pose);
        int nodes = line.PositionM.Length;
        (_placesM, _speedsMS, _baseMS, _firstMS) = (new Vector3D[nodes], new Vector3D[nodes], new Vector3D[nodes], new Vector3D[nodes]);
    }

    private double _felt;

    public FlyPose Pose { get; private set; }

    public Twist Motion { get; private set; }

    /// <summary>Rod tip, world, against seconds.</summary>
    public required Func<double, Vector3D> TipM { get; init; }

    /// <summary>Line drawn in since the start, m, against seconds.</summary>
    public required Func<double, double> DrawnM { get; init; }

    /// <summary>One step; false, and nothing changed, when it was too long for what happened in it.</summary>
    /// <param name="force">Takes it however coarse it is, but only where its equations were solved: what they were not is no motion.</param>
    public bool TryStep(double fromS, double stepS, StepTolerance tolerance, bool force)
    {
        int last = _line.Count;
        Array.Copy(_line.PositionM, _placesM, last + 1);
        Array.Copy(_line.VelocityMS, _speedsMS, last + 1);
        (FlyPose pose, Twist motion, double restM) = (Pose, Motion, _line.RestM[0]);
        double stage = Gamma * stepS, early = stepS - stage, drawn = DrawnM(fromS);

        Array.Copy(_speedsMS, _baseMS, last + 1);
        SetEnds(fromS + stage, restM, drawn);
        bool solved = Solve(stage, pose, motion, fresh: true);
        Twist first = (Motion - motion) / stage;
        FlyPose half = new(pose.EyeM + early * Pose.Frame.ToWorld(Motion.Eye), pose.Frame.Turned(early * Motion.Turn));
        Twist halfMotion = motion + early * first;
        for (int i = 1; i < last; i++)
        {
            Vector3D gained = (_line.VelocityMS[i] - _speedsMS[i]) / stage;
            _line.PositionM[i] = _placesM[i] + early * _line.VelocityMS[i];
            _baseMS[i] = _speedsMS[i] + early * gained;
        }

        SetEnds(fromS + stepS, restM, drawn);
        solved &= Solve(stage, half, halfMotion, fresh: false);
        Twist second = (Motion - halfMotion) / stage, off = stage * (second - first);
        bool fine = stepS * off.Eye.Length < tolerance.PlaceM && stepS * off.Turn.Length < tolerance.TurnRad;
        if (solved && (fine || force))
        {
            _line.TakeIn();
            _felt += (1 - Math.Exp(-stepS / KnotS)) * (_line.PullN - _felt);
            return true;
        }

        Array.Copy(_placesM, _line.PositionM, last + 1);
        Array.Copy(_speedsMS, _line.VelocityMS, last + 1);
        (Pose, Motion, _line.RestM[0]) = (pose, motion, restM);
        return false;
    }

    private void SetEnds(double atS, double restM, double drawnM)
    {
        _line.RestM[0] = Math.Max(1e-3, restM - (DrawnM(atS) - drawnM));
        _line.PositionM[0] = TipM(atS);
    }

    // The stage from base places and speeds; the line's places hold the base when it begins.
    private bool Solve(double stageS, FlyPose basePose, Twist baseMotion, bool fresh)
    {
        int eye = _line.Count;
        _line.PositionM[eye] = basePose.EyeM;
        _line.Begin();
        for (int i = 1; i < eye; i++)
        {
            _line.VelocityMS[i] = _baseMS[i];
            _line.PositionM[i] += stageS * _line.VelocityMS[i];
        }

        Motion = baseMotion;
        Move(stageS, basePose);
        bool agreed = false;
        for (int iteration = 0; iteration < MostIterations && !(agreed && iteration > 1); iteration++)
        {
            _line.PositionM[eye] = Pose.EyeM;
            _line.Eliminate(stageS, _baseMS, PullToleranceN);
            Vector3D pull = _felt * _line.AwayFromEye;
            Wrench loads = _fly.Loads(Pose, Motion, pull);
            if (fresh && iteration == 0) Differentiate(stageS, basePose, pull, loads);
            Twist change = Calm(iteration) * Change(stageS, baseMotion, loads, _line.PullN * _line.AwayFromEye);
            Frame before = Pose.Frame;
            Motion += change;
            agreed = _line.Substitute(stageS, before.ToWorld(change.Eye), PullToleranceN)
                && change.Eye.Length < 1e-4 && stageS * change.Turn.Length < 1e-3;
            Move(stageS, basePose);
            if (!(Motion.Eye.LengthSquared < 1e4 && Motion.Turn.LengthSquared < 1e10)) return false;
        }

        _line.PositionM[eye] = Pose.EyeM;
        _line.VelocityMS[eye] = Pose.Frame.ToWorld(Motion.Eye);
        return agreed;
    }

    // Where a load jumps, as that of a leader bent right back over the fly does, Newton's steps go to and fro for ever: shorter and shorter ones close in.
    private static double Calm(int iteration) => iteration < 4 ? 1 : 1.0 / (iteration - 2);

    private void Move(double stageS, FlyPose from)
    {
        Frame frame = from.Frame.Turned(stageS * Motion.Turn);
        Pose = new FlyPose(from.EyeM + stageS * frame.ToWorld(Motion.Eye), frame);
    }

    // How the loads change with the motion, by differences: kept over the iterations and stages of a step.
    private void Differentiate(double stageS, FlyPose basePose, Vector3D pull, Wrench here)
    {
        Twist motion = Motion;
        double speed = 1e-6 * (motion.Eye.Length + 1e-3), turn = 1e-6 * (motion.Turn.Length + 0.1);
        for (int column = 0; column < 6; column++)
        {
            double by = column < 3 ? speed : turn;
            Vector3D unit = new(column % 3 == 0 ? by : 0, column % 3 == 1 ? by : 0, column % 3 == 2 ? by : 0);
            Motion = column < 3 ? motion with { Eye = motion.Eye + unit } : motion with { Turn = motion.Turn + unit };
            Move(stageS, basePose);
            Wrench change = (_fly.Loads(Pose, Motion, pull) - here) / by;
            _jacobian[column] = change.ForceN.X;
            _jacobian[6 + column] = change.ForceN.Y;
            _jacobian[12 + column] = change.ForceN.Z;
            _jacobian[18 + column] = change.MomentNM.X;
            _jacobian[24 + column] = change.MomentNM.Y;
            _jacobian[30 + column] = change.MomentNM.Z;
        }

        Motion = motion;
        Move(stageS, basePose);
    }

    private Twist Change(double stageS, Twist baseMotion, Wrench loads, Vector3D pull)
    {
        (Symmetric3 resistance, Vector3D eyeForce) = _line.AtEye;
        Frame frame = Pose.Frame;
        Vector3D force = loads.ForceN + frame.ToHook(eyeForce), moment = loads.MomentNM, pulled = frame.ToHook(pull);
        Twist gained = (Motion - baseMotion) / stageS;
        Span<double> right = [force.X, force.Y, force.Z, moment.X, moment.Y, moment.Z];
        Span<double> speedUp = [gained.Eye.X, gained.Eye.Y, gained.Eye.Z, gained.Turn.X, gained.Turn.Y, gained.Turn.Z];
        Span<double> matrix = stackalloc double[36];
        double[] inertia = _fly.Inertia.Whole;
        for (int row = 0; row < 6; row++)
        {
            for (int column = 0; column < 6; column++)
            {
                right[row] -= inertia[6 * row + column] * speedUp[column];
                matrix[6 * row + column] = inertia[6 * row + column] / stageS - _jacobian[6 * row + column];
            }
        }

        Vector3D x = frame.ToHook(resistance * frame.X), y = frame.ToHook(resistance * frame.Y), z = frame.ToHook(resistance * frame.Z);
        AddColumn(matrix, 0, x);
        AddColumn(matrix, 1, y);
        AddColumn(matrix, 2, z);
        // The pull keeps its direction in the world as the fly turns.
        AddColumn(matrix, 3, -stageS * Vector3D.Cross(pulled, Vector3D.UnitX));
        AddColumn(matrix, 4, -stageS * Vector3D.Cross(pulled, Vector3D.UnitY));
        AddColumn(matrix, 5, -stageS * Vector3D.Cross(pulled, Vector3D.UnitZ));
        Linear6.Solve(matrix, right);
        return new Twist(new Vector3D(right[0], right[1], right[2]), new Vector3D(right[3], right[4], right[5]));

        static void AddColumn(Span<double> matrix, int column, Vector3D v)
        {
            matrix[column] += v.X;
            matrix[6 + column] += v.Y;
            matrix[12 + column] += v.Z;
        }
    }
}

/// <summary>How far two methods of different order may lie apart after a step.</summary>
/// <param name="PlaceM">Of the eye, m.</param>
/// <param name="TurnRad">rad.</param>
internal readonly record struct StepTolerance(double PlaceM, double TurnRad);
