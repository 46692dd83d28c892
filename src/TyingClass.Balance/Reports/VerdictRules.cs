using System.Collections.Immutable;

namespace TyingClass.Balance.Reports;

/// <summary>Which verdict the figures make.</summary>
internal static class VerdictRules
{
    /// <summary>A second way to ride counts against a verdict when at least this share of releases ends in it.</summary>
    private const double RivalShare = 0.1;

    private const double AgreementShare = 0.75;

    /// <summary>From where one fly has settled.</summary>
    public static VerdictKind ByAttitude(double wetMassKg, double pitchRad, double leanRad) => wetMassKg < 0
        ? VerdictKind.Floats
        : Math.Abs(pitchRad) > Math.PI / 3
            ? VerdictKind.Hangs
            : ByLean(BalanceEngine.Degrees(leanRad));

    /// <summary>From everything known at the fishing speed.</summary>
    public static VerdictKind Decide(TowReport tow, ImmutableArray<StableAttitude> attitudes, ToleranceReport tolerance, double wetMassKg)
    {
        if (tow.Verdict is VerdictKind.Floats or VerdictKind.Hangs || wetMassKg < 0)
        {
            return tow.Verdict;
        }

        // The sampled flies must agree with the verdict itself, not merely with one another.
        double agreeing = tow.Verdict switch
        {
            VerdictKind.RidesAsIntended => tolerance.AsIntended,
            VerdictKind.Flips => tolerance.Flipped,
            _ => tolerance.Leaning,
        };
        bool agreed = agreeing >= AgreementShare;
        return tow.Settles && agreed && !HasRival(tow, attitudes) ? tow.Verdict : VerdictKind.Undecided;
    }

    /// <summary>Another stable way to ride that many releases end in.</summary>
    public static bool HasRival(TowReport tow, ImmutableArray<StableAttitude> attitudes) =>
        attitudes.Where(a => ByLean(a.LeanDeg) != ByLean(tow.LeanDeg) && Math.Abs(a.LeanDeg - tow.LeanDeg) > 30).Sum(a => a.Share) >= RivalShare;

    private static VerdictKind ByLean(double leanDeg) => leanDeg switch
    {
        < 30 => VerdictKind.RidesAsIntended,
        <= 60 => VerdictKind.Leans,
        <= 120 => VerdictKind.RidesOnItsSide,
        _ => VerdictKind.Flips,
    };
}
