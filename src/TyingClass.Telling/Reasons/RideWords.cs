using TyingClass.Balance.Bodies;
using TyingClass.Balance.Reports;
using TyingClass.Recipes.Text;
using TyingClass.Telling.Figures;
using TyingClass.Telling.Sentences;

namespace TyingClass.Telling.Reasons;

/// <summary>How one fly is towed, in a clause that begins with its verb.</summary>
public static class RideWords
{
    public const string Undecided = "can ride either way up as the cast leaves it";

    /// <summary>The same where more is still to be said.</summary>
    public const string EitherWay = "can ride either way up";

    /// <summary>Of a fly that has one way to ride, and small errors turn it from that: "is hardly held point up".</summary>
    public static string BarelyHeld(Intent intent) => $"is hardly held {FlyWords.Way(intent)}";

    public const string WouldBarely = "would hardly be held that way";

    /// <summary>"rides point down", "leans over by 42°".</summary>
    public static string Rides(Intent intent, TowReport tow, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(tow);
        return tow switch
        {
            { Verdict: VerdictKind.Floats } => "floats",
            { Settles: false } => "keeps turning on the line",
            { Verdict: VerdictKind.Hangs } => "hangs more than it rides",
            { LeanDeg: < 20 } => $"rides {FlyWords.Way(intent)}",
            { LeanDeg: > 150 } => $"rides {FlyWords.Way(FlyWords.Other(intent))}",
            _ => $"leans over by {Lean(tow.LeanDeg, units)}",
        };
    }

    /// <summary>"would ride point up".</summary>
    public static string WouldRide(Intent intent, TowReport tow)
    {
        ArgumentNullException.ThrowIfNull(tow);
        return tow switch
        {
            { Verdict: VerdictKind.Floats } => "would float",
            { Settles: false } => "would keep turning",
            { Verdict: VerdictKind.Hangs } => "would hang more than ride",
            { LeanDeg: < 20 } => $"would ride {FlyWords.Way(intent)}",
            { LeanDeg: > 150 } => $"would ride {FlyWords.Way(FlyWords.Other(intent))}",
            { LeanDeg: < 60 } => "would lean over a little",
            _ => "would ride on its side",
        };
    }

    /// <summary>Of a fly that has its right side up and leans: "would lean by 7° only".</summary>
    public static string WouldLean(TowReport tow, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(tow);
        return tow.LeanDeg < 0.5 ? "would not lean" : $"would lean by {Lean(tow.LeanDeg, units)} only";
    }

    // A lean of three digits is told by the other way up.
    private static string Lean(double leanDeg, UnitSystem units) => leanDeg < 99.5
        ? Magnitudes.Lean.Say(Si.Deg(leanDeg), units)
        : "more than a quarter turn";
}
