using TyingClass.Balance.Bodies;
using TyingClass.Balance.Reports;
using TyingClass.Drawing.Marks;
using TyingClass.Recipes.Bodies;
using TyingClass.Recipes.Reports;
using TyingClass.Telling.Figures;
using TyingClass.Telling.Sentences;

namespace TyingClass.Drawing.Words;

/// <summary>The side view told in words, from the same figures that draw it.</summary>
internal static class SideWords
{
    private const double OverDeg = 90, FlippedDeg = 150;

    /// <summary>Leaning further than this, a fly lies between its two ways up.</summary>
    public const double AskewDeg = 30;

    /// <summary>Which way up the fly really rides.</summary>
    public static Intent Settled(Intent intent, TowReport tow) => tow.LeanDeg > OverDeg ? FlyWords.Other(intent) : intent;

    /// <summary>Keel height of the way up it rides; null while it lies between the two, or where none is defined.</summary>
    public static double? SettledKeel(Intent intent, TowReport tow) =>
        !tow.Settles || tow.LeanDeg is > AskewDeg and < 180 - AskewDeg ? null : tow.KeelHeightMm.For(Settled(intent, tow));

    public static string Caption(StateReport state, TowReport tow, Intent intent) => tow is { Settles: true, LeanDeg: > AskewDeg and <= FlippedDeg }
        ? $"{FlyWords.State(state)}, {FlyWords.Pitch(tow.PitchDeg)}, {Leaning(tow)}"
        : $"{FlyWords.State(state)}, {FlyWords.Way(Settled(intent, tow))}, {FlyWords.Pitch(tow.PitchDeg)}, {Leaning(tow)}";

    /// <summary>Held the way up it is meant to ride, where it would not stay.</summary>
    public static string Held(StateReport state, TowReport tow, Intent intent) =>
        $"{FlyWords.State(state)}, held {FlyWords.Way(intent)} as meant, let go it {(tow.KeelHeightMm.For(intent) < 0 ? "rolls over" : "does not stay so")}";

    public static string Leaning(TowReport tow) => !tow.Settles ? "never at rest" : tow.LeanDeg switch
    {
        < 0.5 => "no lean",
        < AskewDeg => $"leaning {FlyWords.Degrees(tow.LeanDeg)}",
        <= FlippedDeg => $"leaning {FlyWords.Degrees(tow.LeanDeg)} from as intended",
        _ => "flipped",
    };

    public static string Describe(SolvedFly fly, StateReport state, TowReport tow, IEnumerable<Mark> marks, UnitSystem units)
    {
        Intent settled = Settled(fly.Report.Intent, tow);
        List<string> says =
        [
            $"Meant to ride {FlyWords.Way(fly.Report.Intent)}, the fly rides {FlyWords.Way(settled)}, {FlyWords.Pitch(tow.PitchDeg)}, {Leaning(tow)}, in "
                + $"water flowing from left to right at {Magnitudes.FishingSpeed.Say(tow.SpeedMS, units)}, {FlyWords.State(state)}.",
            $"The line leaves the eye {FlyWords.Degrees(Math.Abs(tow.LineAngleDeg))} {(tow.LineAngleDeg < 0 ? "below" : "above")} the horizontal.",
        ];
        says.AddRange(marks.Where(m => m.Kind != MarkSet.TowPoint).Select(m => Sentence(m.Name, $"{Place(m, units)} the tow point")));
        if (state.BalancePointMm is null)
            says.Add("There is no balance point to show: the fly is too near neutral buoyancy.");
        if (!tow.Settles)
            says.Add("It never comes to rest at this speed; it is drawn where it was last.");
        says.Add(Keel(fly.Report.Intent, tow, units));
        says.Add($"In tying order: {string.Join(", ", FlyBuilder.Names(fly.Recipe.Parts).DefaultIfEmpty("a bare hook"))}.");
        return string.Join(" ", says);
    }

    private static string Keel(Intent intent, TowReport tow, UnitSystem units)
    {
        Intent settled = Settled(intent, tow);
        if (SettledKeel(intent, tow) is not { } h)
            return !tow.Settles ? "So it has no keel height to show."
                : tow.LeanDeg is > AskewDeg and < 180 - AskewDeg ? "Lying between its two ways up, it has no keel height to show."
                : "It hangs too steeply for a keel height.";
        string now =
            $"Keel height {FlyWords.Way(settled)}: {Magnitudes.KeelHeight.Say(Si.Mm(h), units)}, so tipped a little it {(h > 0 ? "returns" : "turns over")}.";
        return settled == intent || tow.KeelHeightMm.For(intent) is not { } meant ? now
            : $"{now} {Sentence($"keel height {FlyWords.Way(intent)}, as intended", Magnitudes.KeelHeight.Say(Si.Mm(meant), units))}";
    }

    private static string Sentence(string what, string where) => $"{char.ToUpperInvariant(what[0])}{what[1..]}: {where}.";

    private static string Place(Mark mark, UnitSystem units) =>
        $"{Magnitudes.Place.Say(Si.Mm(Math.Abs(mark.At.X)), units)} {(mark.At.X < 0 ? "ahead of" : "behind")} "
        + $"and {Magnitudes.Place.Say(Si.Mm(Math.Abs(mark.At.Y)), units)} {(mark.At.Y < 0 ? "above" : "below")}";
}
