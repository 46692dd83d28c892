namespace TyingClass.Telling.Reasons;

/// <summary>The first sentence on flies that are set against one another: which has more, and what makes it so.</summary>
public static class TwoOpening
{
    /// <param name="first">The fly the reason goes from.</param>
    public static string Of(string first, string second, Reason reason)
    {
        ArgumentNullException.ThrowIfNull(reason);
        if (reason.Top is not { } top) return OpeningSentence.OfOne(reason);
        if (!reason.IsNoticeable)
        {
            return reason.Shares.FirstOrDefault(x => x.Si * top.Si < 0) is { } against
                ? $"What the {top.What.Word} {top.What.Verb("gives", "give")}, "
                    + $"the {against.What.Word} {against.What.Verb("takes", "take")}: they come out much the same."
                : $"They come out much the same: {Difference(top)} {top.What.Verb("makes", "make")} little difference.";
        }

        bool secondHasMore = reason.ToSi > reason.FromSi;
        string winner = Names(first, second) is null ? $"The {(secondHasMore ? "second" : "first")} of the two" : secondHasMore ? second : first;
        return $"{winner} {DegreeWords.Of(reason.Quantity).Say(larger: true)}: {MakesIt(reason, top)}.";
    }

    /// <summary>A right order of several.</summary>
    public static string OfOrder(string first, string last, Reason reason)
    {
        ArgumentNullException.ThrowIfNull(reason);
        if (reason.Top is not { } top) return OpeningSentence.OfOne(reason);
        return Names(first, last) is null ? $"From the first to the last, {MakesIt(reason, top)}."
            : $"{first} comes first and {last} last: {MakesIt(reason, top)}.";
    }

    /// <summary>Two that stand the wrong way round, and what to look at.</summary>
    public static string OfPair(string one, string other, Reason reason)
    {
        ArgumentNullException.ThrowIfNull(reason);
        string look = reason.Top is not { } top ? ": compare their hooks"
            : IsOnOne(top) ? $": see what the {top.What.Word} {top.What.Verb("does", "do")}, which only one of them has"
            : $": compare {Difference(top)} in both";
        return $"{Names(one, other) ?? "Two neighbors"} stand the wrong way round{look}.";
    }

    // Tied on one of the two and not on the other.
    private static bool IsOnOne(ReasonShare top) =>
        top.What.Kind == ThingKind.Part && top.Turned.Any(t => t.Key.Length == 0 && t.Before is null != t.After is null);

    private static string MakesIt(Reason reason, ReasonShare top) =>
        $"{Difference(top)} {(top.What.Kind == ThingKind.Part ? top.What.Verb("makes", "make") : "makes")} "
        + $"the {(reason.Shares.Length > 1 ? "most " : "")}difference";

    // Two names with figures in them are two figures too many.
    private static string? Names(string one, string other) => (one + other).Any(char.IsAsciiDigit) ? null : $"{one} and {other}";

    private static string Difference(ReasonShare top) => top switch
    {
        { What.Kind: ThingKind.Rest } => "the whole of the hook and its parts",
        { What.Kind: ThingKind.Hook, Turned: { Length: 1 or 2 } turned } when turned.All(t => t.Key is "wire" or "shank" or "gape" or "bend" or "size") =>
            $"the hook's {Grammar.And(turned.Select(t => t.Key))}",
        _ => $"the {top.What.Word}",
    };
}
