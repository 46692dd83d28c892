using TyingClass.Telling.Sentences;

namespace TyingClass.Telling.Reasons;

/// <summary>
/// The first sentence of an answer's feedback: one, under 25 words, with one figure of two digits at most, and it names what decides as a tyer would.
/// </summary>
public static class OpeningSentence
{
    private const double Degree = Math.PI / 180;
    private const double NearlyAsMuch = 0.7;

    /// <summary>"With the eye straight instead of down, the level-line keel gets smaller."</summary>
    /// <param name="everyBit">A difference that nobody would notice is told too, where the argument is about its direction.</param>
    public static string OfChange(Reason reason, bool everyBit = false)
    {
        ArgumentNullException.ThrowIfNull(reason);
        bool little = everyBit && reason is { IsNoticeable: false, FromSi: { } from, ToSi: { } to, Magnitude: { } magnitude }
            && magnitude.Say(from, Recipes.Text.UnitSystem.Metric) != magnitude.Say(to, Recipes.Text.UnitSystem.Metric);
        return little
            ? $"{Grammar.Capital(Turned(reason))}, {MoveWords.Of(reason.Quantity).Say(reason.ToSi > reason.FromSi)}, if only a little."
            : $"{Grammar.Capital(Turned(reason))}, {Moved(reason)}.";
    }

    /// <summary>What a change did, held against what was asked of it.</summary>
    /// <param name="met">The goal is met now.</param>
    /// <param name="upward">The figure had to get larger.</param>
    public static string OfRepair(Reason reason, bool met, bool upward)
    {
        ArgumentNullException.ThrowIfNull(reason);
        string with = Grammar.Capital(Turned(reason)), moved = Moved(reason);
        bool right = reason is { FromSi: { } from, ToSi: { } to } && to > from == upward;
        string judged = (met, reason.IsNoticeable) switch
        {
            (true, true) => ", as asked",
            (true, false) => ", as it should",
            (false, true) => right ? ", but not enough" : ", and that is the wrong way",
            _ => reason.Magnitude?.Dimension == Recipes.Text.Dimension.Share ? "" : ", which does not help yet",
        };
        return $"{with}, {moved}{judged}.";
    }

    /// <summary>Whether one thing is named as what decides, and not two.</summary>
    internal static bool NamesOne(Reason reason) => reason.Form != ReasonForm.Without || Second(reason) is null;

    /// <summary>"The bead decides most: without it, the mass center would lie further back."</summary>
    public static string OfOne(Reason reason)
    {
        ArgumentNullException.ThrowIfNull(reason);
        if (SumWords.Of(reason) is { } sum) return $"{Grammar.Capital(sum)}.";
        if (reason.Top is not { } top) return "The hook alone decides here: nothing is tied on it that would change this.";
        if (reason.Form == ReasonForm.Without && Second(reason) is { } second) return Both(reason, top, second);
        return reason.Form switch
        {
            ReasonForm.MadeOf => MadeOf(reason, top),
            ReasonForm.Hands => $"The hands decide here: {HandsWords.Of(top)} {top.What.Verb("costs", "cost")} the most flies.",
            _ => $"{The(top.What)} {top.What.Verb("decides", "decide")} most here: {Lacking(top, reason)}.",
        };
    }

    // Where two have nearly as much say, it would be wrong to name one.
    private static ReasonShare? Second(Reason reason) =>
        reason.Shares.Length > 1 && reason.Shares[1] is var second && second.FromSi is not null && second.What.Kind == ThingKind.Part
            && second.SaySi >= NearlyAsMuch * reason.Shares[0].SaySi && second.SaySi >= reason.NoticeableSi ? second : null;

    private static string Both(Reason reason, ReasonShare top, ReasonShare second)
    {
        string both = $"The {top.What.Word} and the {second.What.Word} have the most say here";
        string? alone = (top, second, reason.Quantity) switch
        {
            ({ AloneSi: { } a }, { AloneSi: { } b }, "pitch while sinking") when a > 0 == b > 0 =>
                $"either alone would make it sink nose {(a > 0 ? "up" : "down")}",
            ({ AloneSi: { } a }, { AloneSi: { } b }, "pitch") when a > 0 == b > 0 => $"either alone would make it ride nose {(a > 0 ? "up" : "down")}",
            _ when top.Si > 0 == second.Si > 0 => $"without either, {MoveWords.Of(reason.Quantity).SayWould(top.Si < 0)}",
            _ => "they work against each other",
        };
        return $"{both}: {alone}.";
    }

    /// <summary>Before an answer may be told: what to look at, and nothing of how much.</summary>
    public static string ToLookAt(Reason reason, string judged)
    {
        ArgumentNullException.ThrowIfNull(reason);
        if (SumWords.Of(reason) is { } sum) return $"{judged}: {sum}.";
        return reason.Top is { } top
            ? $"{judged}: look at the {top.What.Word}, which {top.What.Verb("has", "have")} the most say in it."
            : $"{judged}: look at the hook, for nothing else is tied here.";
    }

    /// <summary>Which way up: what turns it, leans it or holds it.</summary>
    /// <param name="now">As it rides: "rides point down".</param>
    /// <param name="without">As it would without <paramref name="what"/>, "would ride point up"; null where that cannot be told.</param>
    public static string OfWay(Thing what, string now, string? without)
    {
        ArgumentNullException.ThrowIfNull(what);
        string lacks = Lacks(what);
        return without is null ? $"{The(what)} {what.Verb("has", "have")} the most say here: it {now}."
            : without == $"would {now.Replace("rides", "ride", StringComparison.Ordinal)}"
                ? $"{The(what)} {what.Verb("has", "have")} the most say, yet {lacks} it {without} too."
                : $"{The(what)} {what.Verb("decides", "decide")}: it {now}, and {lacks} it {without}.";
    }

    /// <summary>Where no part that is tied on turns it by itself.</summary>
    /// <param name="most">What the ledger counts highest for the way it rides.</param>
    public static string OfMany(Thing most, string now)
    {
        ArgumentNullException.ThrowIfNull(most);
        return $"{The(most)} {most.Verb("counts", "count")} most here: it {now}, whichever one part is left off.";
    }

    /// <summary>Where the rule of thumb and the line of pull do not agree.</summary>
    public static string OfRuleOfThumb(bool below) =>
        $"Held level its weight lies {(below ? "below" : "above")} the eye; towed, the fly lies at another angle, "
        + $"and it acts {(below ? "above" : "below")} the line of pull.";

    public static string OfBareHook() => "Nothing is tied on this hook yet, so the bare hook falls and rides as the cast leaves it.";

    public static string TooFew() => "There are too few parts on this hook yet.";

    public static string Missing(string part) => $"There {(IsPlural(part) ? "are" : "is")} no {part} on this hook yet.";

    /// <summary>Flies that are set against one another: which has more, and what makes it so.</summary>
    /// <param name="first">The fly the reason goes from.</param>
    public static string OfTwo(string first, string second, Reason reason)
    {
        ArgumentNullException.ThrowIfNull(reason);
        if (reason.Top is not { } top) return OfOne(reason);
        if (!reason.IsNoticeable)
        {
            return reason.Shares.FirstOrDefault(x => x.Si * top.Si < 0) is { } against
                ? $"What the {top.What.Word} {top.What.Verb("gives", "give")}, "
                    + $"the {against.What.Word} {against.What.Verb("takes", "take")}: they come out much the same."
                : $"They come out much the same: {Difference(top)} {top.What.Verb("makes", "make")} little difference.";
        }

        bool secondHasMore = reason.ToSi > reason.FromSi;
        string most = $"{Difference(top)} {top.What.Verb("makes", "make")} the {(reason.Shares.Length > 1 ? "most " : "")}difference";
        string winner = Names(first, second) is null ? $"The {(secondHasMore ? "second" : "first")} of the two" : secondHasMore ? second : first;
        return $"{winner} {MoreWords(reason)}: {most}.";
    }

    private static string MoreWords(Reason reason) => reason.Quantity switch
    {
        "mass" => "is the heavier",
        "mass with held water" => "is the heavier to cast",
        "held water" => "carries more water",
        "wet weight" => "weighs more in the water",
        "displaced volume" => "pushes more water aside",
        "sink rate" => "sinks faster",
        "depth" => "gets deeper",
        "drag" => "is pulled on harder by the water",
        "pitch" => "rides more nose up",
        "pitch while sinking" => "sinks more nose up",
        "hang angle" => "hangs further from plumb",
        "rides as intended" => "rides right more often",
        "lean" => "leans further over",
        _ => $"has the larger {ShortName(reason)}",
    };

    /// <summary>Two that stand the wrong way round, and what to look at.</summary>
    public static string OfPair(string one, string other, Reason reason)
    {
        ArgumentNullException.ThrowIfNull(reason);
        string look = reason.Top is { } top ? $": compare {Difference(top)} in both" : ": compare their hooks";
        return $"{Names(one, other) ?? "Two neighbors"} stand the wrong way round{look}.";
    }

    // Two names with figures in them are two figures too many.
    private static string? Names(string one, string other) => (one + other).Any(char.IsAsciiDigit) ? null : $"{one} and {other}";

    public const string HowArgumentsGo =
        "In an argument each step stands on those before it. What goes wrong is the one step that does not follow, or is not so; those after it may only "
        + "repeat its mistake.";

    /// <summary>An argument that no fly can be held against.</summary>
    public static string OfArgument() => "Hold each step against a fly in the hand: its parts, its eye, its knot, and the water.";

    /// <summary>An explanation that is held against a good one.</summary>
    /// <param name="modelAnswer">Null where the author wrote none.</param>
    public static string OfExplanation(string? modelAnswer)
    {
        string[] spoken = [.. ExplainWords.In(modelAnswer ?? "").Take(MostWordsOfExplanation)];
        return spoken.Length == 0 ? "See which part, eye, knot or water yours blames, and whether it says why."
            : $"See whether yours speaks of {Grammar.And(spoken.Select(w => $"the {w}"))}, and says why.";
    }

    private const int MostWordsOfExplanation = 4;

    private static string Difference(ReasonShare top) => top switch
    {
        { What.Kind: ThingKind.Rest } => "the whole of the hook and its parts",
        { What.Kind: ThingKind.Hook, Turned: { Length: 1 or 2 } turned } when turned.All(t => t.Key is "wire" or "shank" or "gape" or "bend" or "size") =>
            $"the hook's {Grammar.And(turned.Select(t => t.Key))}",
        _ => $"the {top.What.Word}",
    };

    private static string MadeOf(Reason reason, ReasonShare top)
    {
        string share = reason.Quantity switch
        {
            "held water" or "mass with held water" => $"{The(top.What)} comes on top of the dry fly, and you cast that too",
            "wet weight" => $"{The(top.What)} {top.What.Verb("gives", "give")} the most weight in the water",
            "displaced volume" => $"{The(top.What)} {top.What.Verb("pushes", "push")} the most water aside",
            "mass moment of" or "center, x of" or "keel moment of" => $"{The(top.What)} alone {top.What.Verb("is", "are")} asked about here",
            _ => $"{The(top.What)} {top.What.Verb("is", "are")} the heaviest thing on it",
        };
        return top.What.Kind != ThingKind.HeldWater && reason.Quantity is "held water" or "mass with held water" && top.What.Kind != ThingKind.HeldWater
            ? $"Nothing on it drinks: {top.What.Word} and all, you cast the dry fly and hardly any water."
            : share + ".";
    }

    private static string It(ReasonShare top) => top.What.IsPlural ? "they" : "it";

    private static string Lacking(ReasonShare top, Reason reason)
    {
        if (top is { AloneSi: { } alone, BareSi: { } bare } && Math.Abs(alone - bare) > 2 * Math.Abs(top.Si)) return Alone(top, reason, alone, bare);
        string without = Lacks(top.What);
        if (top.FromSi is not { } from || reason.ToSi is not { } now) return $"{without} {NoLonger(reason.Quantity)}";
        return reason.Quantity switch
        {
            "pitch while sinking" => $"{without} it would sink {Nose(from)}",
            "pitch" => $"{without} it would ride {Nose(from)}",
            "keel height" when from > 0 != now > 0 => $"{without} it would {(from > 0 ? "stay the way it is meant" : "flip")}",
            _ => $"{without} {MoveWords.Of(reason.Quantity).SayWould(from > now)}",
        };
    }

    // Where others would do the same, taking it away shows little: what it does by itself shows more.
    private static string Alone(ReasonShare top, Reason reason, double alone, double bare) => reason.Quantity switch
    {
        "pitch while sinking" => $"even alone on the hook {It(top)} would make it sink {Nose(alone)}",
        "pitch" => $"even alone on the hook {It(top)} would make it ride {Nose(alone)}",
        _ => $"even with nothing else on the hook, {MoveWords.Of(reason.Quantity).SayWould(alone > bare)}",
    };

    private static string NoLonger(string quantity) => AskedPicture.IsOfFalling(quantity) ? "it would find no steady way to sink"
        : "it would no longer ride so that this could be told";

    private static string Nose(double rad) => FlyWords.Nose(rad / Degree);

    private static string Lacks(Thing thing) => (thing.Kind is ThingKind.Eye or ThingKind.Knot ? WhySentence.Lacking(thing) : $"without {thing.Pronoun}") + ",";

    private static string Turned(Reason reason)
    {
        ReasonShare top = reason.Shares[0];
        return TurnedWords.Of(top);
    }

    private static string Moved(Reason reason)
    {
        if (reason.FromSi is not { } from || reason.ToSi is not { } to)
            return reason.ToSi is null ? "it no longer rides so that this can be told" : "it rides so that this can be told";
        if (!reason.IsNoticeable) return StaysAsOften(reason.Quantity, to) ?? $"{Stays(reason)} about the same";
        if (reason.Quantity == "lean" && from < 90 * Degree != to < 90 * Degree) return to > from ? "it turns over" : "it comes the right way up";
        return MoveWords.Of(reason.Quantity).Say(to > from);
    }

    private static string? StaysAsOften(string quantity, double share)
    {
        string? does = quantity switch { "rides as intended" => "ride as intended", "leans" => "lean", "flips" => "flip", _ => null };
        return does is null ? null : $"just as {(share < 0.5 ? "few" : "many")} flies {does} as before";
    }

    // "the keel height stays".
    private static string Stays(Reason reason) => $"the {ShortName(reason)} stays";

    private static string ShortName(Reason reason) => reason.Quantity switch
    {
        "mass with held water" => "mass to cast",
        "deepest" => "greatest depth",
        "shallowest" => "least depth",
        [.., 'o', 'f'] => $"{reason.Quantity} the {reason.Part}",
        var quantity => quantity.Split(',')[0],
    };

    private static string The(Thing thing) => $"The {thing.Word}";

    private static bool IsPlural(string part) => Recipes.Parts.KindsOfPart.FindByName(part) is { IsPlural: true };
}
