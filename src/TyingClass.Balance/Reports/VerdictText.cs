using System.Collections.Immutable;
using System.Globalization;
using TyingClass.Balance.Bodies;

namespace TyingClass.Balance.Reports;

/// <summary>Verdicts as sentences a student reads.</summary>
internal static class VerdictText
{
    public static Verdict Write(
        VerdictKind kind, WetState state, double soakS, FlyBody body, FishingConditions conditions, TowReport tow,
        ImmutableArray<LedgerEntry> ledger, ToleranceReport tolerance, ImmutableArray<StableAttitude> attitudes, double wetMassKg) => new(
            kind, state, conditions.SpeedMS, conditions.Knot,
            $"{Where(soakS, conditions)}: {What(kind, body.Intent, tow, tolerance, attitudes, wetMassKg)}",
            Cause(ledger, tow.KeelHeightMm.For(body.Intent)));

    public static string Name(Intent intent) => intent == Intent.PointDown ? "point down" : "point up";

    public static string Number(double value, int decimals) =>
        (Math.Abs(value) < 0.5 * Math.Pow(10, -decimals) ? 0 : value).ToString("F" + decimals.ToString(CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);

    private static string Where(double soakS, FishingConditions conditions) =>
        $"{Wet(soakS)}, at {Number(conditions.SpeedMS, 2)} m/s on a {(conditions.Knot == Knot.Loop ? "loop" : "cinched")} knot";

    private static string What(
        VerdictKind kind, Intent intent, TowReport tow, ToleranceReport tolerance, ImmutableArray<StableAttitude> attitudes, double wetMassKg)
    {
        string name = Name(intent), other = Name(intent == Intent.PointDown ? Intent.PointUp : Intent.PointDown);
        string keel = tow.KeelHeightMm.For(intent) is { } h
            ? $"keel height {Number(h, 2)} mm"
            : "no keel height can be told";
        string lean = $"{Number(tow.LeanDeg, 0)}°";
        return kind switch
        {
            VerdictKind.RidesAsIntended => $"it rides {name} as intended, nose {Nose(tow.PitchDeg)}, {keel}; {Percent(tolerance.AsIntended)} of flies tied like it would.",
            VerdictKind.Leans => $"it leans {lean} from {name}, {keel}: the weight is hardly below the line of pull.",
            VerdictKind.RidesOnItsSide => $"it rides on its side, {lean} from {name}, {keel}: the weight lies beside the line of pull, not below it.",
            VerdictKind.Flips => $"{name} cannot last, {keel}: expect it to flip and ride {other}, {lean} from where you meant it.",
            VerdictKind.Hangs => $"it hangs rather than rides: the shank stands {Number(Math.Abs(tow.PitchDeg), 0)}° nose {(tow.PitchDeg > 0 ? "up" : "down")}, too steep for which way up to mean much.",
            VerdictKind.Floats => $"it floats: it weighs {Number(-1e3 * wetMassKg, 2)} g less than the water it pushes aside.",
            _ => Undecided(intent, tow, tolerance, attitudes, keel),
        };
    }

    private static string Undecided(Intent intent, TowReport tow, ToleranceReport tolerance, ImmutableArray<StableAttitude> attitudes, string keel) =>
        !tow.Settles
            ? "undecided: it never comes to rest but keeps turning on the line."
            : VerdictRules.HasRival(tow, attitudes)
                ? $"undecided, {keel}: it can settle {string.Join(" or ", attitudes.Take(3).Select(a => $"{Number(a.LeanDeg, 0)}°"))} from {Name(intent)}, and the cast decides which."
                : $"undecided, {keel}: of flies tied like it {Percent(tolerance.AsIntended)} ride {Name(intent)}, {Percent(tolerance.Leaning)} lean and {Percent(tolerance.Flipped)} flip, so a hair's error decides.";

    private static string Nose(double pitchDeg) => Math.Abs(pitchDeg) < 3
        ? "level"
        : $"{(pitchDeg > 0 ? "up" : "down")} {Number(Math.Abs(pitchDeg), 0)}°";

    private static string Wet(double soakS) => soakS switch
    {
        0 => "Fresh from the cast",
        double.PositiveInfinity => "Soaked",
        _ => $"After {Number(soakS, 0)} s in the water",
    };

    private static string Percent(double share) => $"{Number(100 * share, 0)} %";

    private static string Cause(ImmutableArray<LedgerEntry> ledger, double? keelMm)
    {
        if (ledger.IsEmpty || keelMm is null)
        {
            return "At this attitude no part has a clear say in which way up it rides.";
        }

        LedgerEntry best = ledger.MaxBy(e => e.KeelMomentGmm), worst = ledger.MinBy(e => e.KeelMomentGmm);
        string helps = $"{best.Part} {Signed(best.KeelMomentGmm)} g·mm", hinders = $"{worst.Part} {Signed(worst.KeelMomentGmm)} g·mm";
        return (best.KeelMomentGmm > 0, worst.KeelMomentGmm < 0, keelMm > 0) switch
        {
            (true, true, true) => $"{helps} outweighs {hinders}.",
            (true, true, false) => $"{helps} cannot outweigh {hinders}.",
            (true, false, _) => $"Every part helps, {helps} the most.",
            _ => $"Every part works against it, {hinders} the most.",
        };
    }

    private static string Signed(double value) => value > 0 ? "+" + Number(value, 2) : Number(value, 2);
}
