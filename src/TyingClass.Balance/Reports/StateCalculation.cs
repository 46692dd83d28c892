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
    // Steeper than this, lean is about to lose its meaning.
    private const double PlumbDeg = 80;
    private const double HeelingThatCountsNM = 1e-4 / GmmPerNM;

    public static StateReport Report(FlyBody body, FishingConditions conditions, WetState state, ReportOptions options, double[] deviates)
    {
        StopSignal.Heed();
        double soakS = SoakS(state, options);
        double density = conditions.Water.DensityKgM3, speed = conditions.SpeedMS;
        MassMoments moments = MassMoments.Of(body.Parts, soakS);
        TowedFly fly = TowedFly.From(body, conditions, soakS);
        Towed towed = TowCalculation.AtSpeed(fly, body.Intent, speed, null);
        ToleranceReport tolerance = Tolerance(body, conditions, soakS, options, towed, deviates);
        Vector3D? balancePoint = moments.BalancePointM(density);
        ImmutableArray<LedgerEntry> ledger = Ledger(body, conditions, soakS, fly, towed);
        ImmutableArray<StableAttitude> attitudes = Attitudes(fly, body.Intent, speed);
        VerdictKind kind = VerdictRules.Decide(towed.Report, attitudes, tolerance, fly.WetMassKg);
        ImmutableArray<HeelingEntry> heeling = Heeling(body, conditions, soakS, fly, towed);
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
            Heeling = heeling,
            Tolerance = tolerance,
            Verdict = new Verdict(kind, state, conditions.SpeedMS, conditions.Knot),
        };
    }

    /// <summary><see cref="StateReport.Verdict"/> of one state, without the rest.</summary>
    internal static VerdictKind Verdict(FlyBody body, FishingConditions conditions, double soakS, ReportOptions options)
    {
        TowedFly fly = TowedFly.From(body, conditions, soakS);
        Towed towed = TowCalculation.AtSpeed(fly, body.Intent, conditions.SpeedMS, null);
        double[] deviates = ThousandFlies.Deviates(body, options.Flies, options.Seed);
        return VerdictRules.Decide(
            towed.Report, Attitudes(fly, body.Intent, conditions.SpeedMS), Tolerance(body, conditions, soakS, options, towed, deviates), fly.WetMassKg);
    }

    private static ImmutableArray<StableAttitude> Attitudes(TowedFly fly, Intent intent, double speedMS) =>
    [
        .. Releases.StableAttitudes(fly, speedMS).Select(b => new StableAttitude(
            BalanceEngine.Degrees(b.Rest.Attitude.PitchRad), BalanceEngine.Degrees(b.Rest.Attitude.LeanRad(intent)), b.Share)),
    ];

    /// <summary>A state is a number of seconds under water.</summary>
    internal static double SoakS(WetState state, ReportOptions options) => state switch
    {
        WetState.Fresh => 0,
        WetState.Soaked => double.PositiveInfinity,
        _ => options.PartlySoakedS ?? throw new ArgumentException("How long the fly has been in the water is not stated.", nameof(options)),
    };

    private static ImmutableArray<HeelingEntry> Heeling(FlyBody body, FishingConditions conditions, double soakS, TowedFly fly, Towed towed)
    {
        if (!towed.IsBalanced)
        {
            return [];
        }

        Linearized loads = fly.Linearize(towed.Symmetric, conditions.SpeedMS);
        return
        [
            .. Keel.Heeling(body, conditions, soakS, towed.Symmetric, loads)
                .Where(share => Math.Abs(share.HeelingNM) > HeelingThatCountsNM)
                .OrderByDescending(share => Math.Abs(share.HeelingNM))
                .Select(share => new HeelingEntry(share.Part, share.HeelingNM * GmmPerNM)),
        ];
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

        return [.. Keel.Ledger(body, conditions, soakS, towed.Symmetric, loads, stiffness.YawPerRoll)
            .Select(share => new LedgerEntry(share.Part, share.StiffnessNM * GmmPerNM))];
    }

    internal static RollCurve Roll(TowedFly fly, Towed towed, double speed)
    {
        RightingRange lesser = towed.IsBalanced ? Righting.Lesser(fly, towed.Symmetric, speed, RollSteps) : new RightingRange([], 0, HeelSide.Either);
        return new RollCurve(
            [.. lesser.Curve.Select(p => new RollPoint(BalanceEngine.Degrees(p.HeelRad), p.RestoringNM * GmmPerNM))],
            BalanceEngine.Degrees(lesser.RangeRad), lesser.Side);
    }

    internal static SinkReport? Sink(FlyBody body, FishingConditions conditions, double soakS, Towed towed, bool withWays = true)
    {
        StopSignal.Heed();
        SinkingFly fly = new(body, conditions, soakS);
        if (!fly.TryFindStable(towed.Rest.Attitude.Up, out SteadySink steady))
        {
            return null;
        }

        (ImmutableArray<(double TimeS, double DepthM)> depth, double? firstMeterMS) = fly.DepthFromRest(steady, PauseS, PausePoints);
        return new SinkReport(
            steady.RateMS,
            BalanceEngine.Degrees(steady.PitchRad),
            BalanceEngine.Degrees(steady.LeanRad(body.Intent)),
            depth[PausePoints / 2].DepthM,
            [.. depth.Select(p => new DepthPoint(p.TimeS, p.DepthM))])
        {
            FirstMeterMS = firstMeterMS,
            Ways = withWays ? Ways(fly, body.Intent) : [],
        };
    }

    // Two that mirror each other are one way to a tyer.
    private static ImmutableArray<SinkWay> Ways(SinkingFly fly, Intent intent)
    {
        List<SinkWay> told = [];
        foreach ((SteadySink sink, double share) in fly.Ways())
        {
            SinkWay way = new(sink.RateMS, BalanceEngine.Degrees(sink.PitchRad), BalanceEngine.Degrees(sink.LeanRad(intent)), share);
            int i = told.FindIndex(w => Math.Abs(w.RateMS - way.RateMS) < 1e-3 * Math.Abs(way.RateMS) && Math.Abs(w.PitchDeg - way.PitchDeg) < 0.5
                && (Math.Abs(w.LeanDeg - way.LeanDeg) < 0.5 || Math.Abs(way.PitchDeg) > PlumbDeg));
            if (i < 0)
            {
                told.Add(way);
            }
            else
            {
                told[i] = told[i] with { Share = told[i].Share + share };
            }
        }

        return [.. told.OrderByDescending(w => w.Share)];
    }

    internal static double? SinkRateMS(FlyBody body, FishingConditions conditions, double soakS, Towed towed) =>
        new SinkingFly(body, conditions, soakS).TryFindStable(towed.Rest.Attitude.Up, out SteadySink steady) ? steady.RateMS : null;

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
