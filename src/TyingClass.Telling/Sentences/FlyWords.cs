using TyingClass.Balance.Bodies;
using TyingClass.Balance.Reports;
using TyingClass.Recipes.Text;
using TyingClass.Telling.Figures;

namespace TyingClass.Telling.Sentences;

/// <summary>The small words of every sentence about a fly: which way up, how wet, where the nose is.</summary>
public static class FlyWords
{
    /// <summary>Within this of level the nose is said to be about level.</summary>
    public const double LevelDeg = 5;

    /// <summary>What the ledger's line "bend" sums: the hook's wire behind the shank, to the point.</summary>
    public const string Bend = "bend and spear";

    public static string Way(Intent intent) => intent == Intent.PointDown ? "point down" : "point up";

    public static Intent Other(Intent intent) => intent == Intent.PointDown ? Intent.PointUp : Intent.PointDown;

    /// <summary>One or two words: "rides as intended".</summary>
    public static string Verdict(VerdictKind verdict) => verdict switch
    {
        VerdictKind.RidesAsIntended => "rides as intended",
        VerdictKind.Leans => "leans",
        VerdictKind.RidesOnItsSide => "rides on its side",
        VerdictKind.Flips => "flips",
        VerdictKind.Undecided => "undecided",
        VerdictKind.Hangs => "hangs",
        VerdictKind.Floats => "floats",
        VerdictKind.Tilts => "rides tilted",
        _ => throw new ArgumentOutOfRangeException(nameof(verdict), verdict, "No such verdict."),
    };

    public static string Knot(Knot knot) => knot == Balance.Bodies.Knot.Loop ? "loop" : "cinched";

    /// <param name="soakS">0 fresh from the cast, null soaked through.</param>
    public static string Soaked(double? soakS) => soakS switch
    {
        0 => "fresh from the cast",
        null => "soaked",
        { } s => $"after {Magnitudes.SoakTime.Say(s, UnitSystem.Metric)} in the water",
    };

    public static string State(StateReport state) => Soaked(state.SoakS);

    /// <summary>For a legend, where there is room for a word or two.</summary>
    public static string StateInBrief(StateReport state) => state.SoakS switch
    {
        0 => "fresh",
        null => "soaked",
        { } s => $"after {Magnitudes.SoakTime.Say(s, UnitSystem.Metric)}",
    };

    /// <summary>At the head of a sentence.</summary>
    public static string StateAtHead(StateReport state) => Grammar.Capital(State(state));

    public static string Degrees(double degrees) => Magnitudes.Pitch.Say(Si.Deg(degrees), UnitSystem.Metric);

    /// <summary>"level", "nose up 12°", for a caption.</summary>
    public static string Pitch(double degrees) => Degrees(degrees) == "0°" ? "level" : $"nose {(degrees > 0 ? "up" : "down")} {Degrees(Math.Abs(degrees))}";

    /// <summary>"nose down 12°" for "−12°".</summary>
    /// <param name="angle">As told with its sign.</param>
    public static string Nose(string angle, double rad) => angle == "0°" ? "level" : $"nose {(rad > 0 ? "up" : "down")} {angle.TrimStart('−')}";

    /// <summary>"nose down by 12°", in a sentence.</summary>
    public static string Nose(double pitchDeg) => Math.Abs(pitchDeg) <= LevelDeg
        ? "with its nose about level"
        : $"nose {(pitchDeg > 0 ? "up" : "down")} by {Degrees(Math.Abs(pitchDeg))}";
}
