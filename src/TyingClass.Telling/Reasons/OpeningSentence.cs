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
    public static string OfChange(Reason reason)
    {
        ArgumentNullException.ThrowIfNull(reason);
        return $"{Grammar.Capital(Turned(reason))}, {Moved(reason)}.";
    }

    /// <summary>What a change did, held against what was asked of it.</summary>
    /// <param name="met">The goal is met now.</param>
    /// <param name="upward">The figure had to get larger.</param>
    public static string OfRepair(Reason reason, bool met, bool upward)
    {
        ArgumentNullException.ThrowIfNull(reason);
        string with = Grammar.Capital(Turned(reason)), moved = Moved(reason);
        bool right = reason is { FromSi: { } from, ToSi: { } to } && to > from == upward;
        string judged = met ? reason.IsNoticeable ? ", as asked" : ", as it should" : !reason.IsNoticeable ? ", and must change" : right
            ? ", but not enough" : ", and that is the wrong way";
        return $"{with}, {moved}{judged}.";
    }

    /// <summary>Whether one thing is named as what decides, and not two.</summary>
    internal static bool NamesOne(Reason reason) => reason.Form != ReasonForm.Without || Second(reason) is null;

    /// <summary>"The bead decides most: without it, the mass center would lie further back."</summary>
    public static string OfOne(Reason reason)
    {
        ArgumentNullException.ThrowIfNull(reason);
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

    public static string OfBareHook() => "Nothing is tied on this hook yet, so the bare hook falls and rides as the cast leaves it.";

    public static string TooFew() => "There are too few parts on this hook yet.";

    public static string Missing(string part) => $"There {(IsPlural(part) ? "are" : "is")} no {part} on this hook yet.";

    /// <summary>Flies that are set against one another.</summary>
    public static string OfTwo(string more, string less, Reason reason)
    {
        ArgumentNullException.ThrowIfNull(reason);
        if (reason.Top is not { } top) return OfOne(reason);
        if (!reason.IsNoticeable && reason.Shares.FirstOrDefault(x => x.Si * top.Si < 0) is { } against)
            return $"What the {top.What.Word} {top.What.Verb("gives", "give")}, "
                + $"the {against.What.Word} {against.What.Verb("takes", "take")}: they come out much the same.";
        return $"Between {Names(less, more) ?? "the two flies"}, {Difference(top)} {top.What.Verb("makes", "make")} the most difference.";
    }

    /// <summary>Two that stand the wrong way round, and what to look at.</summary>
    public static string OfPair(string one, string other, Reason reason)
    {
        ArgumentNullException.ThrowIfNull(reason);
        string look = reason.Top is { } top ? $": compare {Difference(top)} of both" : ": compare their hooks";
        return $"{Names(one, other) ?? "Two neighbors"} stand the wrong way round{look}.";
    }

    // Two names with figures in them are two figures too many.
    private static string? Names(string one, string other) => (one + other).Any(char.IsAsciiDigit) ? null : $"{one} and {other}";

    public const string HowArgumentsGo =
        "In an argument each step stands on those before it. What goes wrong is the one step that does not follow, or is not so; those after it may only "
        + "repeat its mistake.";

    /// <summary>An argument that no fly can be held against.</summary>
    public static string OfArgument() => "Hold each step against a fly in the hand: its parts, its eye, its knot, and the water.";

    /// <summary>An explanation that a person reads.</summary>
    public static string OfExplanation() => "Your mentor looks for what you say of the parts, the eye, the knot and the water.";

    private static string Difference(ReasonShare top) => top.What.Kind == ThingKind.Rest ? "the whole of the hook and its parts" : $"the {top.What.Word}";

    private static string MadeOf(Reason reason, ReasonShare top)
    {
        string share = reason.Quantity switch
        {
            "held water" or "mass with held water" => $"{The(top.What)} comes on top of the dry fly, and you cast that too",
            "wet weight" => $"{The(top.What)} {top.What.Verb("gives", "give")} the most weight in the water",
            "displaced volume" => $"{The(top.What)} {top.What.Verb("pushes", "push")} the most water aside",
            "mass of" or "mass moment of" or "center, x of" or "keel moment of" => $"{The(top.What)} alone {top.What.Verb("is", "are")} asked about here",
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
        if (!reason.IsNoticeable) return $"{Stays(reason)} about the same";
        if (reason.Quantity == "lean" && from < 90 * Degree != to < 90 * Degree) return to > from ? "it turns over" : "it comes the right way up";
        return MoveWords.Of(reason.Quantity).Say(to > from);
    }

    // "the keel height stays".
    private static string Stays(Reason reason) => $"the {ShortName(reason)} stays";

    private static string ShortName(Reason reason) => reason.Quantity switch
    {
        "rides as intended" => "share of flies riding right",
        "leans" => "share of flies leaning",
        "flips" => "share of flies flipping",
        "mass with held water" => "mass to cast",
        [.., 'o', 'f'] => $"{reason.Quantity} the {reason.Part}",
        var quantity => quantity.Split(',')[0],
    };

    private static string The(Thing thing) => $"The {thing.Word}";

    private static bool IsPlural(string part) => Recipes.Parts.KindsOfPart.FindByName(part) is { IsPlural: true };
}
