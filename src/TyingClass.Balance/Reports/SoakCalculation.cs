using System.Collections.Immutable;
using TyingClass.Balance.Bodies;
using TyingClass.Balance.Towing;

namespace TyingClass.Balance.Reports;

/// <summary>The fly at its own speed as its air leaves it.</summary>
internal static class SoakCalculation
{
    public static ImmutableArray<SoakPoint> Curve(FlyBody body, FishingConditions conditions, ReportOptions options)
    {
        bool soaks = body.Parts.Any(p => p.Air.Any(a => double.IsFinite(a.SoakTimeS) && a.FreshVolumeM3 > 0));
        ImmutableArray<SoakPoint>.Builder points = ImmutableArray.CreateBuilder<SoakPoint>(options.SoakTimesS.Length);
        foreach (double soakS in options.SoakTimesS)
        {
            StopSignal.Heed();
            // Nothing to soak out: one calculation is good for all times.
            points.Add(soaks || points.Count == 0 ? At(body, conditions, soakS) : points[0] with { SoakS = soakS });
        }

        return points.ToImmutable();
    }

    private static SoakPoint At(FlyBody body, FishingConditions conditions, double soakS)
    {
        MassMoments moments = MassMoments.Of(body.Parts, soakS);
        Towed towed = TowCalculation.AtSpeed(TowedFly.From(body, conditions, soakS), body.Intent, conditions.SpeedMS, null);
        return new SoakPoint(
            soakS,
            1e3 * (moments.MassKg + body.Parts.Sum(p => p.HeldWaterKg * TakenUp(p, soakS))),
            1e3 * moments.WetMassKg(conditions.Water.DensityKgM3),
            towed.Report.KeelHeightMm.For(body.Intent),
            towed.Report.PitchDeg,
            towed.Report.LeanDeg,
            StateCalculation.SinkRateMS(body, conditions, soakS, towed),
            towed.Report.Verdict);
    }

    // Water comes in as the caught air goes out (an estimate, as both amounts are). A part with no air to lose is wet through at once.
    private static double TakenUp(BodyPart part, double soakS)
    {
        double fresh = 0, left = 0;
        foreach (AirElement air in part.Air)
        {
            if (!double.IsFinite(air.SoakTimeS)) continue;
            fresh += air.FreshVolumeM3;
            left += air.VolumeM3(soakS);
        }

        return fresh > 0 ? 1 - left / fresh : 1;
    }
}
