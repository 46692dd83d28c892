using System.Collections.Immutable;
using TyingClass.Balance.Bodies;
using TyingClass.Balance.Geometry;
using TyingClass.Balance.Sinking;

namespace TyingClass.Balance.Reports;

/// <summary>What is worth telling about a fly. The codes are stable: lessons and stored attempts name them.</summary>
internal static class FindingRules
{
    private const double KnotMattersDeg = 5;
    private const double SignCertainMm = 0.05;

    /// <summary>Fewer releases than this are no way worth telling.</summary>
    private const double WayThatCounts = 0.1;

    public static ImmutableArray<Finding> For(FlyBody body, FishingConditions conditions, StateReport fresh, StateReport soaked)
    {
        ImmutableArray<Finding>.Builder findings = ImmutableArray.CreateBuilder<Finding>();
        TowReport tow = soaked.AtFishingSpeed;
        if (Kind(soaked.Verdict.Kind) is { } kind)
        {
            findings.Add(new VerdictFinding(kind));
        }

        if (fresh.Verdict.Kind == VerdictKind.RidesAsIntended && soaked.Verdict.Kind != VerdictKind.RidesAsIntended)
        {
            findings.Add(new PlainFinding(FindingKind.OnlyWhileDry));
        }
        else if (soaked.Verdict.Kind == VerdictKind.RidesAsIntended && fresh.Verdict.Kind != VerdictKind.RidesAsIntended)
        {
            findings.Add(new PlainFinding(FindingKind.OnlyWhenSoaked));
        }

        if (!tow.Settles)
        {
            findings.Add(new PlainFinding(FindingKind.Spins));
        }
        else if (VerdictRules.HasRival(tow, soaked.Attitudes))
        {
            findings.Add(new PlainFinding(FindingKind.TwoWaysUp));
        }

        if (soaked.PitchOnALoopDeg is { } loop && Math.Abs(tow.PitchDeg - loop) > KnotMattersDeg)
        {
            findings.Add(new KnotFinding(tow.PitchDeg - loop));
        }

        if (soaked.Sink is { } sink && sink.Ways.Count(w => w.Share >= WayThatCounts) > 1)
        {
            findings.Add(new SinkWaysFinding([.. sink.Ways.Where(w => w.Share >= WayThatCounts)]));
        }

        AddNoSink(findings, body, conditions, soaked);
        AddWeightAgainstBend(findings, body, soaked);
        AddRuleOfThumb(findings, body, soaked);
        VerdictKind[] bySpeed = [.. soaked.Tow.Select(t => t.Verdict).Where(v => v is not VerdictKind.Hangs).Distinct()];
        if (bySpeed.Length > 1)
        {
            findings.Add(new PlainFinding(FindingKind.SpeedDecides));
        }

        if (Math.Abs(tow.LiftMN) > 0.25 * Math.Abs(soaked.WetWeightG) * Standard.GravityMS2)
        {
            findings.Add(new LiftFinding(tow.LiftMN));
        }

        return findings.ToImmutable();
    }

    private static FindingKind? Kind(VerdictKind verdict) => verdict switch
    {
        VerdictKind.Leans => FindingKind.Leans,
        VerdictKind.RidesOnItsSide => FindingKind.RidesOnItsSide,
        VerdictKind.Flips => FindingKind.Flips,
        VerdictKind.Undecided => FindingKind.Undecided,
        VerdictKind.Hangs => FindingKind.Hangs,
        VerdictKind.Floats => FindingKind.Floats,
        VerdictKind.Tilts => FindingKind.Tilts,
        _ => null,
    };

    // Why there is no rate to give.
    private static void AddNoSink(ImmutableArray<Finding>.Builder findings, FlyBody body, FishingConditions conditions, StateReport soaked)
    {
        if (soaked.Sink is not null)
        {
            return;
        }

        SinkingFly fly = new(body, conditions, double.PositiveInfinity);
        bool rises = soaked.WetWeightG < 0;
        if (fly.Hovers)
        {
            findings.Add(new PlainFinding(FindingKind.Hovers));
        }
        else if (fly.TryFindSteady(Vector3D.UnitZ, out SteadySink steady) && steady.IsIndifferent)
        {
            findings.Add(new NoSinkFinding(FindingKind.SinksAnyWayUp, rises, Math.Abs(steady.RateMS)));
        }
        else
        {
            findings.Add(new NoSinkFinding(FindingKind.Tumbles, rises, null));
        }
    }

    private static void AddWeightAgainstBend(ImmutableArray<Finding>.Builder findings, FlyBody body, StateReport soaked)
    {
        double bend = soaked.Ledger.Where(e => e.Part == "bend").Sum(e => e.KeelMomentGmm);
        LedgerEntry[] weights = [.. soaked.Ledger.Where(e => body.Parts.Any(p => p.IsWeight && p.Name == e.Part))];
        double weight = weights.Sum(e => e.KeelMomentGmm);
        if (weights.Length > 0 && bend < 0 && soaked.AtFishingSpeed.KeelHeightMm.For(body.Intent) < 0 && weight < -bend)
        {
            findings.Add(new BendFinding(bend, weight, [.. weights.Select(e => e.Part)]));
        }
    }

    private static void AddRuleOfThumb(ImmutableArray<Finding>.Builder findings, FlyBody body, StateReport soaked)
    {
        if (soaked.LevelLineKeelMm is { } line && soaked.AtFishingSpeed.KeelHeightMm.For(body.Intent) is { } keel)
        {
            double thumb = line.For(body.Intent);
            if (Math.Sign(thumb) != Math.Sign(keel) && Math.Abs(thumb) > SignCertainMm && Math.Abs(keel) > SignCertainMm)
            {
                findings.Add(new RuleOfThumbFinding(thumb, keel));
            }
        }
    }
}
