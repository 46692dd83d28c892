namespace TyingClass.Telling.Reasons;

/// <summary>How a fly is looked at when something is asked of it.</summary>
public enum FlyView
{
    /// <summary>From the side, towed.</summary>
    Towed,

    /// <summary>From the side, on a slack line.</summary>
    Falling,

    /// <summary>Hung dry from its eye.</summary>
    Hanging,

    /// <summary>From ahead.</summary>
    Ahead,

    /// <summary>Held with the shank level, the way up it is meant to ride.</summary>
    Level,
}

/// <summary>What stands beside it to one scale.</summary>
public enum FlyPair
{
    None,

    /// <summary>The fly before and after, or two flies.</summary>
    Change,

    /// <summary>Fresh beside soaked.</summary>
    Soak,

    /// <summary>On a loop and cinched.</summary>
    Knot,

    /// <summary>Both ways that an undecided fly can ride.</summary>
    Ways,
}

/// <summary>The picture that shows what was asked.</summary>
/// <param name="Part">What the question turns on, as the ledger names it, or "eye"; null for nothing to ring.</param>
/// <param name="Words">What is said of it on the picture; null with no part.</param>
public sealed record AskedPicture(FlyView View, FlyPair Pair, string? Part = null, string? Words = null)
{
    private const string Decides = "this decides";

    public static AskedPicture Of(Reason reason, FlyPair pair)
    {
        ArgumentNullException.ThrowIfNull(reason);
        (string? part, string? words) = reason.Top?.What switch
        {
            { Kind: ThingKind.Eye } => ("eye", pair == FlyPair.Change ? "the eye moved" : Decides),
            { Kind: ThingKind.Part or ThingKind.HeldWater or ThingKind.Hands, Part: var name } => (name, pair == FlyPair.Change ? "changed" : Decides),
            { Kind: ThingKind.Air, Part: var name } => (name, "its air"),
            { Kind: ThingKind.Knot } => ("eye", "the knot"),
            _ => ((string?)null, (string?)null),
        };
        // Two that decide together are named in words: a ring round one of them would say otherwise.
        if (words == Decides && !OpeningSentence.NamesOne(reason)) (part, words) = (null, null);
        return new AskedPicture(ViewOf(reason), pair, part, words);
    }

    private static FlyView ViewOf(Reason reason) => reason.Quantity switch
    {
        var quantity when IsOfFalling(quantity) => FlyView.Falling,
        "hang angle" or "mass of" or "mass moment of" or "center, x of" => FlyView.Hanging,
        "level-line keel" => FlyView.Level,
        "lean" when Leans(reason.FromSi) || Leans(reason.ToSi) => FlyView.Ahead,
        var quantity when quantity.StartsWith("mass center", StringComparison.Ordinal) => FlyView.Hanging,
        _ => FlyView.Towed,
    };

    internal static bool IsOfFalling(string quantity) =>
        quantity is "sink rate" or "depth" or "depth after a count" or "pitch while sinking" or "lean while sinking" or "wet weight";

    // A fly turned right over is seen as well from the side.
    private static bool Leans(double? rad) => rad is > 0.3 and < Math.PI - 0.3;
}
