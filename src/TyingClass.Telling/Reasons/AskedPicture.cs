namespace TyingClass.Telling.Reasons;

/// <summary>How a fly is looked at when something is asked of it.</summary>
public enum FlyView
{
    /// <summary>From the side, towed.</summary>
    Towed,

    /// <summary>From the side, on a slack line.</summary>
    Falling,

    /// <summary>Stripped and let fall: a film strip of the last round.</summary>
    Retrieved,

    /// <summary>The same, with where its nose points in the pause.</summary>
    NoseInPause,

    /// <summary>Hung dry from its eye.</summary>
    Hanging,

    /// <summary>From ahead.</summary>
    Ahead,

    /// <summary>Held with the shank level, the way up it is meant to ride.</summary>
    Level,

    /// <summary>Towed, and held the way up it is meant to ride, whether or not it would stay so.</summary>
    Meant,

    /// <summary>Towed, with what pulls at it: drag, lift, weight and the slope of the leader.</summary>
    Pulled,

    /// <summary>In the vise.</summary>
    Vise,

    /// <summary>In the vise, with what each part weighs.</summary>
    Weighed,

    /// <summary>In the vise, with the place of its mass center.</summary>
    Placed,
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

    /// <summary>Pulled slowly and fast.</summary>
    Speeds,

    /// <summary>Several flies, in the order asked for.</summary>
    Order,
}

/// <summary>The picture that shows what was asked.</summary>
/// <param name="Part">What the question turns on, as the ledger names it, or "eye"; null for nothing to ring.</param>
/// <param name="Words">What is said of it on the picture; null with no part.</param>
public sealed record AskedPicture(FlyView View, FlyPair Pair, string? Part = null, string? Words = null)
{
    private const string Decides = "this decides";

    // A fly turned right over is seen as well from the side.
    private const double TurnedOverRad = Math.PI - 0.3;

    /// <summary>The slower and the faster of two speeds, m/s; null where the picture is of the recipe's own.</summary>
    public (double SlowMS, double FastMS)? Speeds { get; init; }

    /// <summary>The one speed asked about, m/s; null for the recipe's own.</summary>
    public double? SpeedMS { get; init; }

    /// <summary>Of what one figure is asked about.</summary>
    public static AskedPicture Of(Reason reason, FlyPair pair) => Of(reason, pair, OpeningSentence.NamesOne(reason));

    private static AskedPicture Of(Reason reason, FlyPair pair, bool namesOne)
    {
        ArgumentNullException.ThrowIfNull(reason);
        (string? part, string? words) = reason.Top?.What switch
        {
            { Kind: ThingKind.Eye } => ("eye", pair == FlyPair.Change ? "the eye moved" : Decides),
            { Kind: ThingKind.Part or ThingKind.Hands, Part: var name } => (name, pair == FlyPair.Change ? "changed" : Decides),
            { Kind: ThingKind.Air, Part: var name } => (name, "its air"),
            { Kind: ThingKind.HeldWater, Part: var name } => (name, "its water"),
            { Kind: ThingKind.Knot } => ("eye", "the knot"),
            _ => ((string?)null, (string?)null),
        };
        // Two that decide together are named in words: a ring round one of them would say otherwise. Among several flies each has its own.
        // Where forces are drawn, they and no part are what it turns on.
        FlyView view = ViewOf(reason);
        bool ringsNone = view is FlyView.Pulled or FlyView.Retrieved or FlyView.NoseInPause;
        if (pair == FlyPair.Order || ringsNone || words == Decides && !namesOne) (part, words) = (null, null);
        return new AskedPicture(view, pair, part, words);
    }

    /// <summary>Of which way up a fly rides: as it does ride.</summary>
    /// <param name="namesOne">What leads the shares is named as what decides.</param>
    public static AskedPicture OfWay(Reason reason, FlyPair pair, bool namesOne) =>
        Of(reason, pair, namesOne) is var picture && picture.View == FlyView.Meant ? picture with { View = FlyView.Towed } : picture;

    private static FlyView ViewOf(Reason reason) => reason.Quantity switch
    {
        var quantity when IsOfFalling(quantity) => FlyView.Falling,
        var quantity when IsOfStrips(quantity) => FlyView.Retrieved,
        var quantity when IsOfThePause(quantity) => FlyView.NoseInPause,
        "mass" or "added mass" or "mass of" or "held water" or "mass with held water" or "wet weight" or "displaced volume" => FlyView.Weighed,
        "mass moment of" or "center, x of" => FlyView.Placed,
        var quantity when quantity.StartsWith("mass center", StringComparison.Ordinal) => FlyView.Placed,
        "hang angle" => FlyView.Hanging,
        "level-line keel" => FlyView.Level,
        "line angle" or "lift" or "drag" => FlyView.Pulled,
        "lean" when !(reason.ToSi > TurnedOverRad) => FlyView.Ahead,
        "keel height" when reason.FromSi < 0 || reason.ToSi < 0 => FlyView.Meant,
        _ => reason.LeansOver ? FlyView.Ahead : FlyView.Towed,
    };

    /// <summary>A figure of what the hand does with a fly, strip by strip.</summary>
    public static bool IsOfRetrieve(string quantity) => IsOfStrips(quantity) || IsOfThePause(quantity) || quantity == "depth after a count";

    private static bool IsOfStrips(string quantity) => quantity is "hop" or "deepest" or "shallowest" or "upright share" or "strips until back up";

    private static bool IsOfThePause(string quantity) => quantity is "pitch in the pause" or "time to point down";

    internal static bool IsOfFalling(string quantity) =>
        quantity is "sink rate" or "depth" or "depth after a count" or "pitch while sinking" or "lean while sinking";
}
