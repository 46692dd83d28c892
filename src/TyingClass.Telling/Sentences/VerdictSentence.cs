using TyingClass.Balance.Bodies;
using TyingClass.Balance.Reports;
using TyingClass.Recipes.Text;
using TyingClass.Telling.Figures;

namespace TyingClass.Telling.Sentences;

/// <summary>What a fly would do in one state of its dressing, at its own speed and on its own knot.</summary>
public static class VerdictSentence
{
    // Where tied flies agree and it is undecided all the same, one fly has more than one way to ride.
    private const double OfOneMind = 0.75;

    private const double PracticallyAll = 0.995;

    /// <summary>Soaked.</summary>
    public static string Of(BalanceReport report, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(report);
        return Of(report.Intent, report.Soaked, units);
    }

    /// <param name="withKeel">False where nobody asked of its keel: of a fly that rides well it is then left out.</param>
    public static string Of(Intent intent, StateReport state, UnitSystem units, bool withKeel = true)
    {
        ArgumentNullException.ThrowIfNull(state);
        TowReport tow = state.AtFishingSpeed;
        string meant = FlyWords.Way(intent), keel = Keel(tow, intent, units), lean = Magnitudes.Lean.Say(Si.Deg(tow.LeanDeg), units);
        string where =
            $"{FlyWords.StateAtHead(state)} and pulled at {Magnitudes.FishingSpeed.Say(tow.SpeedMS, units)} on a {FlyWords.Knot(state.Verdict.Knot)} knot";
        return state.Verdict.Kind switch
        {
            VerdictKind.RidesAsIntended =>
                $"{where}, it rides {meant} as you meant it, {FlyWords.Nose(tow.PitchDeg)}. {(withKeel ? keel + " " : "")}{Alike(state.Tolerance)}",
            VerdictKind.Leans => $"{where}, it leans over by {lean}. {keel}{LeansIt(state)}",
            VerdictKind.Tilts => $"{where}, it rides {meant}, but tilted. {keel} {Tilted(intent, state.Tolerance)}",
            VerdictKind.RidesOnItsSide => $"{where}, it rides on its side, {lean} from {meant}. {keel}",
            VerdictKind.Flips => $"{where}, it does not stay {meant}. {keel} Expect it to flip and ride {FlyWords.Way(FlyWords.Other(intent))}.",
            VerdictKind.Hangs => $"{where}, it hangs rather than rides: the shank points {Steep(tow.PitchDeg)}, too steep for which way up to mean much.",
            VerdictKind.Floats =>
                $"It floats: it weighs {Magnitudes.WetWeight.Say(Si.G(Math.Abs(state.WetWeightG)), units)} less than the water it pushes aside.",
            _ => $"{where}, {Undecided(intent, state, keel)}",
        };
    }

    private static string Undecided(Intent intent, StateReport state, string keel)
    {
        ToleranceReport flies = state.Tolerance;
        string meant = FlyWords.Way(intent);
        if (!state.AtFishingSpeed.Settles) return "it never comes to rest but keeps turning on the line.";
        double agreeing = Math.Max(flies.AsIntended, Math.Max(flies.Leaning, flies.Flipped));
        return agreeing >= OfOneMind && Ways(state) is { } ways
            ? $"there is no telling which way up it rides: it can settle {ways} from {meant}, and the cast decides which. {keel}"
            : $"there is no telling which way up it rides. {keel} Of 100 flies tied like it, about {Hundred(flies.AsIntended)} would ride {meant}, "
                + $"{Hundred(flies.Leaning)} would lean and {Hundred(flies.Flipped)} would flip.";
    }

    private static string Alike(ToleranceReport flies) => flies.AsIntended >= PracticallyAll
        ? "Practically every fly tied like it would ride the same way."
        : $"Of 100 flies tied like it, about {Hundred(flies.AsIntended)} would ride the same way.";

    private static string LeansIt(StateReport state) => state.Heeling.IsEmpty ? "" : $" What leans it over most is the {state.Heeling[0].Part}.";

    private static string Tilted(Intent intent, ToleranceReport flies) =>
        $"Of 100 flies tied like it, about {Hundred(flies.TheRightWayUp)} would ride {FlyWords.Way(intent)}, but only {Hundred(flies.AsIntended)} of them "
        + "nearly level.";

    private static string Steep(double pitchDeg) => $"{FlyWords.Degrees(Math.Abs(pitchDeg))} {(pitchDeg > 0 ? "nose up" : "nose down")}";

    private static string? Ways(StateReport state) =>
        state.Attitudes.OrderByDescending(a => a.Share).Select(a => FlyWords.Degrees(a.LeanDeg)).Distinct().Take(3).ToArray() is { Length: > 1 } ways
            ? string.Join(" or ", ways)
            : null;

    private static string Keel(TowReport tow, Intent intent, UnitSystem units)
    {
        if (tow.KeelHeightMm.For(intent) is not { } keelMm) return "";
        string attitude = $"In the {FlyWords.Way(intent).Replace(' ', '-')} attitude its weight acts";
        string away = Magnitudes.KeelHeight.Say(Si.Mm(Math.Abs(keelMm)), units);
        return away.StartsWith("0 ", StringComparison.Ordinal)
            ? $"{attitude} right on the hinge line, so nothing holds it there."
            : $"{attitude} {away} {(keelMm > 0 ? "below" : "above")} the hinge line (keel height {Magnitudes.KeelHeight.Say(Si.Mm(keelMm), units)}).";
    }

    private static string Hundred(double share) => Numbers.Write(100 * share, 0);
}
