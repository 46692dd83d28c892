using System.Collections.Immutable;
using TyingClass.Balance.Tying;

namespace TyingClass.Balance.Reports;

/// <summary>Which verdict the figures make.</summary>
internal static class VerdictRules
{
    /// <summary>A second way to ride counts against a verdict when at least this share of releases ends in it.</summary>
    private const double RivalShare = 0.1;

    private const double AgreementShare = 0.75;

    /// <summary>A smaller sample is a search's first look and is taken at its word: its interval would reach from one end to the other.</summary>
    private const int FliesThatTell = 400;

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

        if (!tow.Settles || HasRival(tow, attitudes))
        {
            return VerdictKind.Undecided;
        }

        // The sampled flies must agree with the verdict itself, not merely with one another.
        double agreeing = tow.Verdict switch
        {
            VerdictKind.RidesAsIntended => tolerance.AsIntended,
            VerdictKind.Flips => tolerance.Flipped,
            _ => tolerance.Leaning,
        };
        return Agree(agreeing, tolerance.Flies) ? tow.Verdict
            : tow.LeanDeg <= 60 && Agree(tolerance.TheRightWayUp, tolerance.Flies) ? VerdictKind.Tilts
            : VerdictKind.Undecided;
    }

    // The whole interval must lie above, not the share alone: another thousand flies would then say the same.
    private static bool Agree(double share, int flies) =>
        (flies < FliesThatTell ? share : ShareInterval.Wilson((int)Math.Round(share * flies), flies).Low) >= AgreementShare;

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
