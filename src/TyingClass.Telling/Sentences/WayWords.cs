using TyingClass.Balance.Bodies;
using TyingClass.Balance.Reports;

namespace TyingClass.Telling.Sentences;

/// <summary>Which way up, as someone at a tub would say it: a verdict speaks of the intent, a tub does not.</summary>
public static class WayWords
{
    public const string OnItsSide = "on its side";
    public const string NoClearWay = "no clear way";

    /// <returns>"point down", "point up", "on its side" or "no clear way".</returns>
    public static string Of(Intent intent, VerdictKind verdict) => verdict switch
    {
        VerdictKind.RidesAsIntended or VerdictKind.Tilts => FlyWords.Way(intent),
        VerdictKind.Flips => FlyWords.Way(FlyWords.Other(intent)),
        VerdictKind.Leans or VerdictKind.RidesOnItsSide => OnItsSide,
        _ => NoClearWay,
    };
}
