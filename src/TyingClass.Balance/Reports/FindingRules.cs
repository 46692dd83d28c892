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

    public static ImmutableArray<Finding> For(FlyBody body, FishingConditions conditions, StateReport fresh, StateReport soaked)
    {
        ImmutableArray<Finding>.Builder findings = ImmutableArray.CreateBuilder<Finding>();
        TowReport tow = soaked.AtFishingSpeed;
        string intent = VerdictText.Name(body.Intent);
        if (Code(soaked.Verdict.Kind) is { } code)
        {
            findings.Add(new Finding(code, soaked.Verdict.Text));
        }

        if (fresh.Verdict.Kind == VerdictKind.RidesAsIntended && soaked.Verdict.Kind != VerdictKind.RidesAsIntended)
        {
            findings.Add(new Finding("only while dry", $"Fresh from the cast it rides {intent}, but once its air is gone it does not: what held it up was trapped air."));
        }
        else if (soaked.Verdict.Kind == VerdictKind.RidesAsIntended && fresh.Verdict.Kind != VerdictKind.RidesAsIntended)
        {
            findings.Add(new Finding("only when soaked", $"It rides {intent} only once it has soaked; fresh from the cast, the air in it says otherwise."));
        }

        if (!tow.Settles)
        {
            findings.Add(new Finding("spins", "It never comes to rest at this speed: something on one side keeps turning it. Look for a part tied off center."));
        }
        else if (VerdictRules.HasRival(tow, soaked.Attitudes))
        {
            findings.Add(new Finding("two ways up", "It has more than one way to ride and keeps the one it lands in."));
        }

        if (soaked.PitchOnALoopDeg is { } loop && Math.Abs(tow.PitchDeg - loop) > KnotMattersDeg)
        {
            findings.Add(new Finding("knot holds the nose up", $"Cinched, the leader holds the shank {VerdictText.Number(Math.Abs(tow.PitchDeg - loop), 0)}° {(tow.PitchDeg > loop ? "above" : "below")} where a loop knot would let it ride."));
        }

        AddNoSink(findings, body, conditions, soaked);
        AddWeightAgainstBend(findings, body, soaked);
        AddRuleOfThumb(findings, body, soaked);
        VerdictKind[] bySpeed = [.. soaked.Tow.Select(t => t.Verdict).Where(v => v is not VerdictKind.Hangs).Distinct()];
        if (bySpeed.Length > 1)
        {
            findings.Add(new Finding("speed decides", "Which way up it rides changes with speed: see the curve of keel height against speed."));
        }

        if (Math.Abs(tow.LiftMN) > 0.25 * Math.Abs(soaked.WetWeightG) * Standard.GravityMS2)
        {
            findings.Add(tow.LiftMN < 0
                ? new Finding("planes down", $"The water pushes it down with {VerdictText.Number(-tow.LiftMN, 1)} mN: it digs for depth without more weight.")
                : new Finding("planes up", $"The water lifts it with {VerdictText.Number(tow.LiftMN, 1)} mN: it climbs when pulled and needs more weight for the same depth."));
        }

        return findings.ToImmutable();
    }

    private static string? Code(VerdictKind kind) => kind switch
    {
        VerdictKind.RidesAsIntended => null,
        VerdictKind.Leans => "leans",
        VerdictKind.RidesOnItsSide => "rides on its side",
        VerdictKind.Flips => "flips",
        VerdictKind.Undecided => "undecided",
        VerdictKind.Hangs => "hangs",
        VerdictKind.Floats => "floats",
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
        string way = rises ? "rise" : "sink";
        if (fly.Hovers)
        {
            findings.Add(new Finding("hovers", "On a slack line it hangs where it is: it weighs almost exactly as much as the water it pushes aside."));
        }
        else if (fly.TryFindSteady(Vector3D.UnitZ, out SteadySink steady) && steady.IsIndifferent)
        {
            findings.Add(new Finding("sinks any way up", $"On a slack line nothing turns it one way or the other, so it can {way} in any attitude, at {VerdictText.Number(Math.Abs(steady.RateMS), 2)} m/s."));
        }
        else
        {
            findings.Add(new Finding("tumbles", $"On a slack line it finds no attitude to {way} in: it keeps turning over. A fly whose weight sits to one end, or that is tied the same on both sides, falls straighter."));
        }
    }

    private static void AddWeightAgainstBend(ImmutableArray<Finding>.Builder findings, FlyBody body, StateReport soaked)
    {
        double bend = soaked.Ledger.Where(e => e.Part == "bend").Sum(e => e.KeelMomentGmm);
        LedgerEntry[] weights = [.. soaked.Ledger.Where(e => body.Parts.Any(p => p.IsWeight && p.Name == e.Part))];
        double weight = weights.Sum(e => e.KeelMomentGmm);
        if (weights.Length > 0 && bend < 0 && soaked.AtFishingSpeed.KeelHeightMm.For(body.Intent) < 0 && weight < -bend)
        {
            string names = string.Join(" and ", weights.Select(e => e.Part));
            findings.Add(new Finding("bend outweighs bead", $"The bend pulls the point down with {VerdictText.Number(bend, 2)} g·mm and the {names} can set only {VerdictText.Number(weight, 2)} g·mm against it."));
        }
    }

    private static void AddRuleOfThumb(ImmutableArray<Finding>.Builder findings, FlyBody body, StateReport soaked)
    {
        if (soaked.LevelLineKeelMm is { } line && soaked.AtFishingSpeed.KeelHeightMm.For(body.Intent) is { } keel)
        {
            double thumb = line.For(body.Intent);
            if (Math.Sign(thumb) != Math.Sign(keel) && Math.Abs(thumb) > SignCertainMm && Math.Abs(keel) > SignCertainMm)
            {
                findings.Add(new Finding("rule of thumb disagrees", $"By the rule of thumb the weight lies {VerdictText.Number(Math.Abs(thumb), 2)} mm {(thumb > 0 ? "below" : "above")} a level line through the eye, yet the keel height is {VerdictText.Number(keel, 2)} mm: the water tilts the fly, and with it the line of pull."));
            }
        }
    }
}
