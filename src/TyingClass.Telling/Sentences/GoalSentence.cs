using TyingClass.Balance.Reports;
using TyingClass.Recipes.Text;
using TyingClass.Telling.Figures;

namespace TyingClass.Telling.Sentences;

/// <summary>What a fly is asked to do, and what it reaches.</summary>
public static class GoalSentence
{
    /// <summary>"keel height: at least 0.4 mm".</summary>
    /// <param name="phrase">How a sentence names the quantity.</param>
    /// <param name="what">Null for a plain count.</param>
    /// <param name="lowSi">Minus infinity for none.</param>
    /// <param name="highSi">Plus infinity for none.</param>
    public static string Asked(string phrase, Magnitude? what, double lowSi, double highSi, UnitSystem units)
    {
        if (what?.Dimension == Dimension.Share && phrase.StartsWith(ShareOf, StringComparison.Ordinal))
            return $"of 100 flies tied like it, {Flies(lowSi, highSi)}{phrase[ShareOf.Length..]}";
        return (double.IsFinite(lowSi), double.IsFinite(highSi)) switch
        {
            (true, false) => $"{phrase}: at least {Bound(lowSi)}",
            (false, true) => $"{phrase}: at most {Bound(highSi)}",
            _ => $"{phrase}: between {Bound(lowSi)} and {Bound(highSi)}",
        };

        string Bound(double si) => what?.SayStated(si, units) ?? Stated.SayCount(si);
    }

    private const string ShareOf = "share of flies tied like it that";

    private static string Flies(double low, double high) => (double.IsFinite(low) && low > 0, double.IsFinite(high) && high < 1) switch
    {
        (true, false) => $"at least {Hundred(low)}",
        (false, _) => $"at most {Hundred(high)}",
        _ => $"between {Hundred(low)} and {Hundred(high)}",
    };

    private static string Hundred(double share) => Numbers.Write(100 * share, 1);

    /// <summary>The figure reached, with as many digits as it takes to tell it from the bound it misses.</summary>
    /// <param name="what">Null for a plain count.</param>
    public static string Reached(Magnitude? what, double si, double lowSi, double highSi, UnitSystem units)
    {
        if (what is null) return Stated.SayCount(si);
        if (si >= lowSi && si <= highSi) return what.Say(si, units);
        return what.SayAgainst(si, si < lowSi ? lowSi : highSi, units);
    }

    /// <summary>Of a share of flies that all stay as they lie, where the cast decides how that is.</summary>
    public const string LeftToTheCast = "only those that happen to land so; the cast decides how each one lands";

    /// <summary>Where the fly has no such figure.</summary>
    /// <param name="missingPart">The part whose mass is asked for, where there is none on the fly.</param>
    public static string NotReached(VerdictKind verdict, string? missingPart) => verdict switch
    {
        VerdictKind.Hangs => "cannot be told, because it hangs rather than rides",
        VerdictKind.Floats => "cannot be told, because it floats",
        _ => missingPart is null ? "cannot be told for this fly" : $"none: there {(IsPlural(missingPart) ? "are" : "is")} no {missingPart} on this fly",
    };

    private static bool IsPlural(string part) => Recipes.Parts.KindsOfPart.FindByName(part) is { IsPlural: true };
}
