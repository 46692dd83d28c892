using TyingClass.Balance.Bodies;
using TyingClass.Balance.Geometry;
using TyingClass.Balance.Reports;

namespace TyingClass.Balance.Retrieving;

/// <summary>One retrieve followed through time: steps as long as the motion allows, a point at equal times.</summary>
internal sealed class RetrieveRun
{
    private const double PointS = 0.05;
    private const int MostPoints = 1200;
    // Steps divide a point's interval by powers of two, down to the first of these for the sake of tolerance, on to the second until they are solved.
    private const int FinestLevel = 9, LastLevel = 15;
    private const int MostTries = 200_000;
    private const double LongestStripStepS = 0.0125;

    private readonly FlyBody _body;
    private readonly RetrievePlan _plan;
    private readonly Timeline _timeline;
    private readonly LineChain _line;
    private readonly RigidFly _fly;
    private readonly FishingMotion _motion;
    private readonly Bed? _bed;
    private readonly double _landingM;
    private readonly RetrieveFineness _fineness;
    private readonly StepTolerance _tolerance;
    private int _level = 2, _tries;
    private double _pullN;

    public RetrieveRun(FlyBody body, FishingConditions conditions, RetrievePlan plan, Timeline timeline, RetrieveFineness fineness)
    {
        (_body, _plan, _timeline, _fineness) = (body, plan, timeline, fineness);
        Vector3D drift = new(-plan.CurrentMS, 0, 0);
        _bed = plan.BottomM is { } depth ? new Bed(-depth, drift) : null;
        _line = new LineChain(LineLayout.Of(plan, conditions.Leader, conditions.Water, fineness.Line), conditions.Water, _bed);
        _fly = new RigidFly(body, conditions, _bed);
        Vector3D tip = new(0, 0, plan.RodTipM);
        _landingM = Math.Sqrt(Math.Max(0, plan.LineOutM * plan.LineOutM - plan.RodTipM * plan.RodTipM));
        Vector3D landing = new(_landingM, 0, 0);
        double laid = 0;
        for (int i = 0; i <= _line.Count; i++)
        {
            _line.PositionM[i] = tip + laid / plan.LineOutM * (landing - tip);
            if (i < _line.Count) laid += _line.RestM[i];
        }

        // A hair off the level and to the side it is heavier on, so that nothing stands on a knife's edge.
        Frame upright = body.Intent == Intent.PointDown ? Frame.World : new Frame(Vector3D.UnitX, -Vector3D.UnitY, -Vector3D.UnitZ);
        FlyPose start = new(landing, upright.Turned(new Vector3D(0.02 * Handedness.Of(body), 0.01, 0)));
        _motion = new FishingMotion(_line, _fly, start) { TipM = t => tip + t * drift, DrawnM = timeline.DrawnM };
        _tolerance = new StepTolerance(4e-4 * fineness.Step * fineness.Step, 0.02 * fineness.Step * fineness.Step);
        double seconds = timeline.EndS;
        PointIntervalS = PointS * Math.Max(1, Math.Ceiling(seconds / PointS / MostPoints));
    }

    public double PointIntervalS { get; }

    public List<RetrievePoint> Path { get; } = [];

    public RetrievePoint? TouchesBottom { get; private set; }

    /// <summary>Steps taken, for whoever measures.</summary>
    public int Steps { get; private set; }

    /// <summary>To the end of the last round; false when the motion could not be followed.</summary>
    public bool Follow()
    {
        Path.Add(Point(0));
        int points = (int)Math.Ceiling(_timeline.EndS / PointIntervalS - 1e-9);
        for (int i = 0; i < points; i++)
        {
            if (!TryAdvance(i * PointIntervalS)) return false;
            Path.Add(Point((i + 1) * PointIntervalS));
        }

        return true;
    }

    /// <summary>Holds the line still from the end on until the nose points down: when, s; null when it does not before the time given.</summary>
    public double? HoldUntilDown(double untilS)
    {
        for (double at = Path[^1].TimeS; at < untilS; at += PointIntervalS)
        {
            if (!TryAdvance(at)) return null;
            if (Point(at + PointIntervalS) is { PitchDeg: <= RetrieveReport.DownDeg } point) return point.TimeS;
        }

        return null;
    }

    private bool TryAdvance(double fromS)
    {
        StopSignal.Heed();
        _fly.Soak(_plan.WettedS + fromS);
        const int ticks = 1 << LastLevel;
        _pullN = 0;
        for (int at = 0; at < ticks;)
        {
            double now = fromS + PointIntervalS * at / ticks;
            while ((at & ((ticks >> _level) - 1)) != 0 || (_level < FinestLevel && Longest(now) < PointIntervalS / (1 << _level))) _level++;
            double step = PointIntervalS / (1 << _level);
            bool force = _level >= FinestLevel;
            if (++_tries > MostTries) return false;
            if (_motion.TryStep(now, step, _tolerance, force))
            {
                if (!double.IsFinite(_motion.Pose.EyeM.LengthSquared) || _motion.Pose.EyeM.Length > 1e4) return false;
                Steps++;
                _pullN += _line.PullN / (1 << _level);
                at += ticks >> _level;
                TryCoarser(at, ticks);
            }
            else if (++_level > LastLevel)
            {
                return false;
            }
        }

        return true;
    }

    // After a step that went well the next may be twice as long, if it starts where such a step may start.
    private void TryCoarser(int at, int ticks)
    {
        if (_level > 0 && (at & ((ticks >> (_level - 1)) - 1)) == 0) _level--;
    }

    private double Longest(double nowS) => _fineness.Step * (_timeline.Strips(nowS, nowS + LongestStripStepS) ? LongestStripStepS : PointS);

    private RetrievePoint Point(double atS)
    {
        FlyPose pose = _motion.Pose;
        Attitude attitude = new(pose.Frame.ToHook(Vector3D.UnitX), pose.Frame.Up);
        Vector3D away = _line.AwayFromEye;
        double eastward = pose.EyeM.X + atS * _plan.CurrentMS;
        RetrievePoint point = new(
            atS, _landingM - eastward, Math.Max(0, -pose.EyeM.Z),
            BalanceEngine.Degrees(attitude.PitchRad), BalanceEngine.Degrees(attitude.LeanRad(_body.Intent)),
            1e3 * _pullN, BalanceEngine.Degrees(Math.Atan2(away.Z, -away.X)));
        if (TouchesBottom is null && _bed is { } bed && _fly.LowestM(pose) <= bed.LevelM + 1e-4) TouchesBottom = point;
        return point;
    }
}
