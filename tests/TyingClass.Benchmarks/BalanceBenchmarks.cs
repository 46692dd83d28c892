using BenchmarkDotNet.Attributes;
using MathNet.Numerics.RootFinding;
using TyingClass.Balance.Bodies;
using TyingClass.Balance.Geometry;
using TyingClass.Balance.Reports;
using TyingClass.Balance.Tests.Oracle;
using TyingClass.Balance.Towing;
using TyingClass.Recipes.Bodies;

namespace TyingClass.Benchmarks;

/// <summary>
/// The engine on one fly: the moment function, an attitude from a warm start, and the whole report; beside them a general-purpose root finder on the same
/// moments.
/// </summary>
[MemoryDiagnoser]
public class BalanceBenchmarks
{
    private const double SpeedMS = 0.4;
    private readonly BuiltFly _built = SampleFly.Built;
    private TowedFly _fly = null!;
    private Attitude _rest;
    private Attitude _near;
    private OracleQuaternion _nearTurn;

    [GlobalSetup]
    public void Settle()
    {
        _fly = TowedFly.From(_built.Body, _built.Conditions, double.PositiveInfinity);
        Settling.TryFindRest(_fly, SpeedMS, Attitude.Symmetric(Intent.PointUp, 0.5), out Rest rest);
        _rest = rest.Attitude;
        _near = _rest.Turned(new Vector3D(0.02, 0.03, 0.01));
        // Point up at the settled pitch, then the same small turn: R_y(pitch) R_x(π), hook frame last.
        _nearTurn =
            OracleQuaternion.Turn(new(0, 1, 0), _rest.PitchRad) * new OracleQuaternion(0, 1, 0, 0) * OracleQuaternion.Turn(new(0.02, 0.03, 0.01), 0.0374);
    }

    [Benchmark]
    public Wrench Moment() => _fly.At(_rest, SpeedMS);

    [Benchmark(Baseline = true)]
    public Rest WarmAttitude()
    {
        Settling.TryFindRest(_fly, SpeedMS, _near, out Rest rest);
        return rest;
    }

    /// <summary>Broyden's method on the three moments, from the same start, to the same residual.</summary>
    [Benchmark]
    public double[] WarmAttitudeByGeneralRootFinder()
    {
        double scale = _fly.MomentScaleNM;
        return Broyden.FindRoot(
            turn =>
            {
                Vector3D moment = _fly.At(_near.Turned(new Vector3D(turn[0], turn[1], turn[2])), SpeedMS).MomentNM;
                return [moment.X / scale, moment.Y / scale, moment.Z / scale];
            },
            [0, 0, 0], accuracy: 1e-10, maxIterations: 200);
    }

    /// <summary>The tests' time-stepping simulation, let go from the same attitude until it rests.</summary>
    [Benchmark]
    public bool WarmAttitudeByTimeStepping() =>
        new OracleTow(new OracleFly(_built.Body, _built.Conditions, soaked: true)).Run(_nearTurn, new Random(1)).Settled;

    [Benchmark]
    public BalanceReport FullReport() => BalanceEngine.Report(_built.Body, _built.Conditions);
}
