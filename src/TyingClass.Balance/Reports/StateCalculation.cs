using System.Collections.Immutable;
using TyingClass.Balance.Bodies;
using TyingClass.Balance.Geometry;
using TyingClass.Balance.Sinking;
using TyingClass.Balance.Towing;
using TyingClass.Balance.Tying;

namespace TyingClass.Balance.Reports;

/// <summary>Everything about one state of the dressing.</summary>
internal static class StateCalculation
{
    private const int RollSteps = 36;
    private const double PauseS = 10;
    private const int PausePoints = 40;
    private const double GmmPerNM = 1e6 / Standard.GravityMS2;

    public static StateReport Report(FlyBody body, FishingConditions conditions, WetState state, ReportOptions options, double[] deviates)
    {
        double soakS = state == WetState.Soaked ? double.PositiveInfinity : options.FreshSoakS;
        double density = conditions.Water.DensityKgM3, speed = conditions.SpeedMS;
        MassMoments moments = MassMoments.Of(body.Parts, soakS);
        TowedFly fly = TowedFly.From(body, conditions, soakS);
        Towed towed = TowCalculation.AtSpeed(fly, body.Intent, speed, null);
        ImmutableArray<Basin> basins = Releases.StableAttitudes(fly, speed);
        ToleranceReport tolerance = Tolerance(body, conditions, soakS, options, towed, deviates);
        Vector3D? balancePoint = moments.BalancePointM(density);
        ImmutableArray<LedgerEntry> ledger = Ledger(body, conditions, soakS, fly, towed);
        ImmutableArray<StableAttitude> attitudes =
        [
            .. basins.Select(b => new StableAttitude(
                BalanceEngine.Degrees(b.Rest.Attitude.PitchRad), BalanceEngine.Degrees(b.Rest.Attitude.LeanRad(body.Intent)), b.Share)),
        ];
        VerdictKind kind = VerdictRules.Decide(towed.Report, attitudes, tolerance, fly.WetMassKg);
        return new StateReport
        {
            State = state,
            SoakS = double.IsFinite(soakS) ? soakS : null,
            WetWeightG = 1e3 * fly.WetMassKg,
            DisplacedMm3 = 1e9 * moments.VolumeM3,
            CenterOfBuoyancyMm = 1e3 * moments.CenterOfBuoyancyM,
            BalancePointMm = balancePoint is { } point ? 1e3 * point : null,
            LevelLineKeelMm = balancePoint is { } at ? BalanceEngine.LevelLine(body.TowPointM, at) : null,
            Tow = TowCalculation.OverSpeeds(fly, body.Intent, options.SpeedsMS),
            AtFishingSpeed = towed.Report,
            PitchOnALoopDeg = conditions.Knot == Knot.Loop ? null : OnALoop(body, conditions, soakS),
            Attitudes = attitudes,
            Roll = Roll(fly, towed, speed),
            Sink = Sink(body, conditions, soakS, towed),
            Ledger = ledger,
            Tolerance = tolerance,
            Verdict = new Verdict(kind, state, conditions.SpeedMS, conditions.Knot),
        };
    }

    private static double OnALoop(FlyBody body, FishingConditions conditions, double soakS) =>
        TowCalculation.AtSpeed(TowedFly.From(body, conditions with { Knot = Knot.Loop }, soakS), body.Intent, conditions.SpeedMS, null).Report.PitchDeg;

    internal static ImmutableArray<LedgerEntry> Ledger(FlyBody body, FishingConditions conditions, double soakS, TowedFly fly, Towed towed)
    {
        Linearized loads = fly.Linearize(towed.Symmetric, conditions.SpeedMS);
        if (!towed.IsBalanced || Keel.TryStiffness(towed.Symmetric, loads) is not { } stiffness)
        {
            return [];
        }

        return [.. Keel.Ledger(body, conditions, soakS, towed.Symmetric, conditions.SpeedMS, loads, stiffness.YawPerRoll)
            .Select(share => new LedgerEntry(share.Part, share.StiffnessNM * GmmPerNM))];
    }

    internal static RollCurve Roll(TowedFly fly, Towed towed, double speed)
    {
        ImmutableArray<RightingPoint> curve = !towed.IsBalanced ? [] : Righting.Curve(fly, towed.Symmetric, speed, RollSteps);
        return new RollCurve(
            [.. curve.Select(p => new RollPoint(BalanceEngine.Degrees(p.HeelRad), p.RestoringNM * GmmPerNM))],
            BalanceEngine.Degrees(Righting.RangeRad(curve)));
    }

    internal static SinkReport? Sink(FlyBody body, FishingConditions conditions, double soakS, Towed towed)
    {
        SinkingFly fly = new(body, conditions, soakS);
        if (!TrySteady(fly, towed, out SteadySink steady))
        {
            return null;
        }

        ImmutableArray<(double TimeS, double DepthM)> depth = fly.DepthFromRest(steady, PauseS, PausePoints);
        return new SinkReport(
            steady.RateMS,
            BalanceEngine.Degrees(steady.PitchRad),
            BalanceEngine.Degrees(steady.LeanRad(body.Intent)),
            depth[PausePoints / 2].DepthM,
            [.. depth.Select(p => new DepthPoint(p.TimeS, p.DepthM))]);
    }

    internal static double? SinkRateMS(FlyBody body, FishingConditions conditions, double soakS, Towed towed) =>
        TrySteady(new SinkingFly(body, conditions, soakS), towed, out SteadySink steady) ? steady.RateMS : null;

    private static bool TrySteady(SinkingFly fly, Towed towed, out SteadySink steady)
    {
        // Let go from the attitude it was fished in, a hair off it so that an unstable one is left.
        Vector3D start = (towed.Rest.Attitude.Up + new Vector3D(0.003, 0.01, 0)).Normalized();
        // Drag turns with the flow, so whatever circles about one attitude for ever may rest in the opposite one.
        return (fly.TryFindSteady(start, out steady) && steady.IsStable) || (fly.TryFindSteady(-start, out steady) && steady.IsStable);
    }

    internal static ToleranceReport Tolerance(
        FlyBody body, FishingConditions conditions, double soakS, ReportOptions options, Towed towed, double[] deviates)
    {
        ThousandFlies sampler = new(body, conditions, soakS, TyingSpread.Of(options.Accuracy));
        double[] leans = sampler.LeansRad(towed.Rest.Attitude, conditions.SpeedMS, deviates);
        int[] histogram = new int[18];
        int asIntended = 0, flipped = 0;
        foreach (double lean in leans)
        {
            // A fly that never settles is no fly to fish: it counts as leaning, and in no bin.
            double degrees = BalanceEngine.Degrees(lean);
            asIntended += degrees <= 30 ? 1 : 0;
            flipped += degrees > 120 ? 1 : 0;
            if (!double.IsNaN(degrees))
            {
                histogram[Math.Min(17, (int)(degrees / 10))]++;
            }
        }

        ShareInterval share = ShareInterval.Wilson(asIntended, leans.Length);
        return new ToleranceReport(
            options.Accuracy, leans.Length, share.Share, share.Low, share.High,
            (leans.Length - asIntended - flipped) / (double)leans.Length, flipped / (double)leans.Length, [.. histogram]);
    }
}
