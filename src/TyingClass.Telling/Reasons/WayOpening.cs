using TyingClass.Recipes.Parts;

namespace TyingClass.Telling.Reasons;

/// <summary>The first sentence on which way up a fly rides: what turns it, leans it or holds it.</summary>
public static class WayOpening
{
    /// <param name="now">As it rides: "rides point down".</param>
    /// <param name="without">As it would without <paramref name="what"/>, "would ride point up"; null where that cannot be told.</param>
    public static string Of(Thing what, string now, string? without)
    {
        ArgumentNullException.ThrowIfNull(what);
        string lacks = OpeningSentence.Lacks(what), the = Grammar.Capital(Named(what));
        return without is null ? $"{the} {what.Verb("has", "have")} the most say here: it {now}."
            : without == $"would {now.Replace("rides", "ride", StringComparison.Ordinal)}"
                ? $"{the} {what.Verb("has", "have")} the most say, yet {lacks} it {without} too."
                : $"{the} {what.Verb("decides", "decide")}: it {now}, and {lacks} it {without}.";
    }

    /// <summary>The ring of a bent eye, and the metal over which it stands: "The jig eye sets the ring above the metal, so it rides point up".</summary>
    /// <param name="eye">"jig", "down".</param>
    /// <param name="over">The ring stands above the metal, as it rides.</param>
    public static string OfRing(string eye, bool over, string now, string without) =>
        $"The {eye} eye sets the ring {(over ? "above" : "below")} the metal, so it {now}; straight, it {without}.";

    /// <summary>
    /// One thing set otherwise would put it right: "The wing on top of the shank decides: it rides point down, and under the shank it would ride point up."
    /// </summary>
    public static string OfMended(ReasonShare share, string now, string mended)
    {
        ArgumentNullException.ThrowIfNull(share);
        TurnedLine line = share.Turned[0];
        return $"The {share.What.Word} {TurnedWords.Standing(line.Key, line.Before)} {share.What.Verb("decides", "decide")}: it {now}, "
            + $"and {TurnedWords.Standing(line.Key, line.After)} it {mended}.";
    }

    /// <summary>Where no part that is tied on turns it by itself.</summary>
    /// <param name="most">What the ledger counts highest for the way it rides.</param>
    /// <param name="weight">The metal that was to hold it otherwise; null where none was.</param>
    public static string OfMany(Thing most, Thing? weight, string now)
    {
        ArgumentNullException.ThrowIfNull(most);
        string decides = $"The {most.Word} {most.Verb("decides", "decide")}";
        return weight is not null && weight != most
            ? $"{decides}: the {weight.Word} {weight.Verb("has", "have")} too little say against {most.Pronoun}, so it {now}."
            : $"{decides} most: {most.Verb("its", "their")} weight hangs below the hinge line, so it {now}.";
    }

    /// <summary>Where the rule of thumb and the hinge line do not agree.</summary>
    public static string OfRuleOfThumb(bool below) =>
        $"Held level its weight lies {(below ? "below" : "above")} the eye; towed, the fly lies at another angle, "
        + $"and it acts {(below ? "above" : "below")} the hinge line.";

    public static string OfBareHook() => "Nothing is tied on this hook yet, so the bare hook falls and rides as the cast leaves it.";

    /// <summary>Two flies of different make: what gives the one its taller keel.</summary>
    /// <param name="side">Where the winner's metal sits: "under the shank".</param>
    /// <param name="around">The other's metal, where it goes evenly around the shank; else null.</param>
    public static string OfHeld(string winner, Thing metal, string side, Thing? around)
    {
        ArgumentNullException.ThrowIfNull(metal);
        string other = around is null ? "" : $", while the other's {around.Word} {around.Verb("goes", "go")} evenly around it";
        return $"{(winner.Any(char.IsAsciiDigit) ? "One" : winner)} has the taller keel: its {metal.Word} {metal.Verb("sits", "sit")} {side}{other}.";
    }

    private static string Named(Thing what) => $"the {what.Word}";

    /// <summary>Whether a part is metal that a tyer counts on to hold a fly.</summary>
    public static bool IsMetal(string part) => KindsOfPart.FindByName(part) is { IsWeight: true };
}
