using TyingClass.Telling.Sentences;

namespace TyingClass.Telling.Reasons;

/// <summary>
/// The first sentence of an answer's feedback: one, under 25 words, with one figure of two digits at most, and it names what decides as a tyer would.
/// </summary>
public static class OpeningSentence
{
    private const double Degree = Math.PI / 180;
    private const double NearlyAsMuch = 0.7;

    // A fly that falls this steeply falls by one end.
    private const double LeadsDeg = 45;

    /// <summary>"With the eye straight instead of down, the level-line keel gets smaller."</summary>
    /// <param name="everyBit">A difference that nobody would notice is told too, where the argument is about its direction.</param>
    public static string OfChange(Reason reason, bool everyBit = false)
    {
        ArgumentNullException.ThrowIfNull(reason);
        bool little = everyBit && reason is { IsNoticeable: false, FromSi: { } from, ToSi: { } to, Magnitude: { } magnitude }
            && magnitude.Say(from, Recipes.Text.UnitSystem.Metric) != magnitude.Say(to, Recipes.Text.UnitSystem.Metric);
        return little
            ? $"{Grammar.Capital(Turned(reason))}, {Moves(reason, reason.ToSi > reason.FromSi)}, if only a little."
            : reason is { Quantity: "pitch", Top.What.Kind: ThingKind.Speed, FromSi: { } slow, ToSi: { } fast } && Math.Abs(fast) < Math.Abs(slow)
            ? "Pulled faster, the water pulls harder on it than its weight does, and lays it out more nearly along the flow."
            : $"{Grammar.Capital(Turned(reason))}, {Moved(reason)}.";
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
            _ when reason is { Quantity: "pitch in the pause", ToSi: { } held } && top is { What.Kind: ThingKind.Leader, FromSi: { } free } =>
                $"The leader holds its nose {(held > 0 ? "up" : "down")} in the pause: with nothing tied to it, the fly would fall {Falling(free)}.",
            _ when reason is { Quantity: "pitch while sinking", ToSi: { } level } && Math.Abs(level) <= FlyWords.LevelDeg * Degree =>
                $"It sinks about level: {Balanced(reason, top)}.",
            _ when top is { Turned: [{ Key: "at" } moved], FromSi: { } there } && reason is { Quantity: "pitch while sinking", ToSi: { } sinks } =>
                $"It sinks {Falling(sinks)}, for the {top.What.Word} {top.What.Verb("sits", "sit")} {TurnedWords.Standing("at", moved.Before)}: "
                    + $"{TurnedWords.Standing("at", moved.After)}, {It(top)} would make it sink {Falling(there)}.",
            _ when reason is { Quantity: "pitch while sinking", ToSi: { } falls } =>
                $"It sinks {Falling(falls)}: the {top.What.Word} {top.What.Verb("decides", "decide")} most, and {Lacking(top, reason)}.",
            ReasonForm.Hands => $"The hands decide here: {HandsWords.Of(top)} {top.What.Verb("costs", "cost")} the most flies.",
            _ when top.Turned is [var line, ..] =>
                $"The {top.What.Word} {TurnedWords.Standing(line.Key, line.Before)} {top.What.Verb("decides", "decide")}: {Lacking(top, reason)}.",
            _ => $"{The(top.What)} {top.What.Verb("decides", "decide")} most here: {Lacking(top, reason)}.",
        };
    }

    // Of a fly that falls flat: what turns its nose up, and what down.
    private static string Balanced(Reason reason, ReasonShare top)
    {
        ReasonShare? other = reason.Shares.FirstOrDefault(s => s.FromSi is not null && s.Si * top.Si < 0 && Math.Abs(s.Si) >= reason.NoticeableSi);
        if (other is null) return $"the {top.What.Word} {top.What.Verb("turns", "turn")} its nose {(top.Si > 0 ? "up" : "down")} only a little";
        (ReasonShare up, ReasonShare down) = top.Si > 0 ? (top, other) : (other, top);
        return $"the {up.What.Word} would turn its nose up and the {down.What.Word} would turn it down";
    }

    // Where two have nearly as much say, it would be wrong to name one.
    private static ReasonShare? Second(Reason reason) =>
        !(reason is { Quantity: "pitch while sinking", ToSi: { } falls } && Math.Abs(falls) <= FlyWords.LevelDeg * Degree)
            && reason.Shares.Length > 1 && reason.Shares[1] is var second && second.FromSi is not null && second.What.Kind == ThingKind.Part
            && second.SaySi >= NearlyAsMuch * reason.Shares[0].SaySi && second.SaySi >= reason.NoticeableSi
            && !Leads(reason) && reason.Shares[0].Turned.IsEmpty ? second : null;

    // Where metal and dressing have much the same say in how a fly falls, a tyer means the metal.
    private static bool Leads(Reason reason) => reason.Shares[0].What.Kind is ThingKind.Leader or ThingKind.Retrieve
        || reason.Quantity == "pitch while sinking" && WayOpening.IsMetal(reason.Shares[0].What.Part) && !WayOpening.IsMetal(reason.Shares[1].What.Part);

    private static string Both(Reason reason, ReasonShare top, ReasonShare second)
    {
        string both = $"The {top.What.Word} and the {second.What.Word} have the most say here";
        string? alone = (top, second, reason.Quantity) switch
        {
            ({ AloneSi: { } a }, { AloneSi: { } b }, "pitch while sinking") when a > 0 == b > 0 =>
                $"either alone would make it sink nose {(a > 0 ? "up" : "down")}",
            ({ AloneSi: { } a }, { AloneSi: { } b }, "pitch") when a > 0 == b > 0 => $"either alone would make it ride nose {(a > 0 ? "up" : "down")}",
            _ when top.Si > 0 == second.Si > 0 => $"without either, {MoveWords.Of(reason.Quantity).SayWould(top.Si < 0)}",
            _ => null,
        };
        if (alone is not null) return $"{both}: {alone}.";
        return $"{The(top.What)} {top.What.Verb("works", "work")} one way and the {second.What.Word} the other: {WhySentence.Lacking(top.What)}, "
            + $"{MoveWords.Of(reason.Quantity).SayWould(top.FromSi > reason.ToSi)}.";
    }

    /// <summary>A sink rate that was worked out from another.</summary>
    public static string OfRate(Reason reason)
    {
        ArgumentNullException.ThrowIfNull(reason);
        string most = reason.Top is { } top ? $", and there the {top.What.Word} {top.What.Verb("has", "have")} the most say" : "";
        return $"{Grammar.Capital(SumWords.OfRate)}{most}.";
    }

    /// <inheritdoc cref="OfRate"/>
    public static string ToLookAtRate(string judged) => $"{judged}: {SumWords.OfRate}.";

    /// <summary>Before an answer may be told: what to look at, and nothing of how much.</summary>
    public static string ToLookAt(Reason reason, string judged)
    {
        ArgumentNullException.ThrowIfNull(reason);
        if (reason.Top is { Turned: [var line, ..] } set)
            return $"{judged}: look at the {set.What.Word} {TurnedWords.Standing(line.Key, line.Before)}.";
        if (SumWords.Of(reason) is { } sum) return $"{judged}: {sum}.";
        if (SumWords.OfPlaces(reason.Quantity) is { } places) return $"{judged}: look at {places}, for it is the height between them.";
        return reason.Top is { } top
            ? $"{judged}: look at the {top.What.Word}, which {top.What.Verb("has", "have")} the most say in it."
            : $"{judged}: look at the hook, for nothing else is tied here.";
    }

    /// <summary>A figure that lies on the other side of zero: which side counts as which. Null where that is no question.</summary>
    public static string? OfWrongSign(string quantity, string judged) => SumWords.OfSign(quantity) is { } sign ? $"{judged}: {sign}." : null;

    /// <summary>Where something was done to the fly, and the figure before it is known.</summary>
    public static string ToLookAtChange(Reason reason, string judged)
    {
        ArgumentNullException.ThrowIfNull(reason);
        return $"{judged}: begin with the figure before, and ask what the {reason.Top?.What.Word ?? "change"} makes of it.";
    }

    /// <summary>It is measured between two places, and no one part's.</summary>
    public static bool IsOfPlaces(Reason reason)
    {
        ArgumentNullException.ThrowIfNull(reason);
        return SumWords.OfPlaces(reason.Quantity) is not null;
    }

    /// <summary>Where the lesson's sum is known line by line: where it begins.</summary>
    public static string ToLookAtSum(Reason reason, string what, string judged)
    {
        ArgumentNullException.ThrowIfNull(reason);
        string look = SumWords.OfPlaces(reason.Quantity) ?? $"the {reason.Top?.What.Word ?? "hook"}";
        return $"{judged}: look at {look}, and begin with “{what}”.";
    }

    public static string TooFew() => "There are too few parts on this hook yet.";

    public static string Missing(string part) => $"There {(IsPlural(part) ? "are" : "is")} no {part} on this hook yet.";

    /// <summary>An explanation that is held against a good one.</summary>
    /// <param name="modelAnswer">Null where the author wrote none.</param>
    public static string OfExplanation(string? modelAnswer)
    {
        string[] spoken = [.. ExplainWords.In(modelAnswer ?? "").Take(MostWordsOfExplanation)];
        return spoken.Length == 0 ? "See which part, eye, knot or water yours blames, and whether it says why."
            : $"See whether yours speaks of {Grammar.And(spoken.Select(w => $"the {w}"))}, and says why.";
    }

    private const int MostWordsOfExplanation = 4;

    private static string MadeOf(Reason reason, ReasonShare top)
    {
        // More than may be cast before anything has drunk: then it is not the water.
        if (reason.Quantity == "mass with held water" && top.What.Kind != ThingKind.HeldWater && reason.Shares.Any(s => s.What.Kind == ThingKind.HeldWater))
            return $"Even dry it is heavier than that: {The(top.What).ToLowerInvariant()} {top.What.Verb("weighs", "weigh")} the most of what is tied on.";
        string share = reason.Quantity switch
        {
            "held water" or "mass with held water" => $"{The(top.What)} comes on top of the dry fly, and you cast that too",
            "wet weight" => $"{The(top.What)} {top.What.Verb("gives", "give")} the most weight in the water",
            "displaced volume" => $"{The(top.What)} {top.What.Verb("pushes", "push")} the most water aside",
            "keel moment of" when reason.ToSi is { } moment && moment != 0 =>
                $"{The(top.What)} {top.What.Verb("works", "work")} {(moment > 0 ? "for" : "against")} the way it is meant to ride",
            "center, x of" => $"Only where the {top.What.Word} {top.What.Verb("sits", "sit")} counts here",
            "mass moment of" or "keel moment of" =>
                $"Only the {top.What.Word} {top.What.Verb("counts", "count")} here: the weight, and how far off it acts",
            _ => $"{The(top.What)} {top.What.Verb("is", "are")} the heaviest thing on it",
        };
        return top.What.Kind != ThingKind.HeldWater && reason.Quantity is "held water" or "mass with held water"
            ? $"Nothing on it drinks: {top.What.Word} and all, you cast the dry fly and hardly any water."
            : share + ".";
    }

    private static string It(ReasonShare top) => top.What.IsPlural ? "they" : "it";

    private static string Lacking(ReasonShare top, Reason reason)
    {
        if (top.Turned is [var line, ..])
        {
            string would = reason.Quantity == "lean" && top.FromSi < reason.NoticeableSi ? "it would not lean"
                : MoveWords.Of(reason.Quantity).SayWould(top.FromSi > reason.ToSi);
            return $"{TurnedWords.Standing(line.Key, line.After)}, {would}";
        }

        if (top is { AloneSi: { } alone, BareSi: { } bare } && Math.Abs(alone - bare) > 2 * Math.Abs(top.Si)) return Alone(top, reason, alone, bare);
        string without = Lacks(top.What);
        if (top.FromSi is not { } from || reason.ToSi is not { } now) return $"{without} {NoLonger(reason.Quantity)}";
        return reason.Quantity switch
        {
            "pitch while sinking" when IsOneSided(from, now) && Math.Abs(from) < Math.Abs(now) =>
                $"{without} its nose would point less far {(now > 0 ? "up" : "down")}",
            "pitch while sinking" => $"{without} it would sink {Nose(from)}",
            "pitch" => $"{without} it would ride {Nose(from)}",
            "keel height" when from > 0 != now > 0 => $"{without} it would {(from > 0 ? "stay the way it is meant" : "flip")}",
            _ => $"{without} {MoveWords.Of(reason.Quantity).SayWould(from > now)}",
        };
    }

    private static bool IsOneSided(double oneRad, double otherRad) =>
        oneRad > 0 == otherRad > 0 && Math.Min(Math.Abs(oneRad), Math.Abs(otherRad)) > FlyWords.LevelDeg * Degree;

    // Where others would do the same, taking it away shows little: what it does by itself shows more.
    private static string Alone(ReasonShare top, Reason reason, double alone, double bare) => reason.Quantity switch
    {
        "pitch while sinking" => $"even alone on the hook {It(top)} would make it sink {Nose(alone)}",
        "pitch" => $"even alone on the hook {It(top)} would make it ride {Nose(alone)}",
        _ => $"even with nothing else on the hook, {MoveWords.Of(reason.Quantity).SayWould(alone > bare)}",
    };

    private static string NoLonger(string quantity) => AskedPicture.IsOfFalling(quantity) ? "it would find no steady way to sink"
        : "it would no longer ride so that this could be told";

    private static string Falling(double rad) => rad switch
    {
        < -LeadsDeg * Degree => "nose first",
        > LeadsDeg * Degree => "tail first",
        < -FlyWords.LevelDeg * Degree => "nose down",
        > FlyWords.LevelDeg * Degree => "nose up",
        _ => "about level",
    };

    private static string Nose(double rad) => FlyWords.Nose(rad / Degree);

    internal static string Lacks(Thing thing) =>
        (thing.Kind is ThingKind.Eye or ThingKind.Knot or ThingKind.Retrieve ? WhySentence.Lacking(thing) : $"without {thing.Pronoun}") + ",";

    internal static string Turned(Reason reason)
    {
        ReasonShare top = reason.Shares[0];
        return TurnedWords.Of(top);
    }

    internal static string Moved(Reason reason)
    {
        if (reason.FromSi is not { } from || reason.ToSi is not { } to)
            return reason.ToSi is null ? "it no longer rides so that this can be told" : "it rides so that this can be told";
        if (!reason.IsNoticeable) return StaysAsOften(reason.Quantity, to) ?? $"{Stays(reason)} about the same";
        if (reason.Quantity == "lean" && from < 90 * Degree != to < 90 * Degree) return to > from ? "it turns over" : "it comes the right way up";
        if (reason.Quantity == "pitch while sinking" && from > 0 != to > 0 && Math.Min(Math.Abs(from), Math.Abs(to)) > FlyWords.LevelDeg * Degree)
            return to > 0 ? "it sinks nose up instead of nose down" : "it sinks nose down instead of nose up";
        // Below nothing, what was the keel lifts: the fly turns over, and that is what anybody sees.
        if (reason.Quantity == "keel height" && from > 0 != to > 0)
            return to < from ? "its keel height falls below nothing, and it rolls over" : "its keel height rises above nothing, and it stays as it is meant";
        return Moves(reason, to > from);
    }

    /// <summary>"are too heavy".</summary>
    internal static string Too(Reason reason, bool large) => Agreeing(reason, DegreeWords.Of(reason.Quantity).Too(large));

    // A part's own figure is told of the part: "they get heavier".
    private static string Moves(Reason reason, bool larger) =>
        reason.Part is null ? MoveWords.Of(reason.Quantity).Say(larger) : WithSubject(reason, MoveWords.Of(reason.Quantity).Say(larger)["it ".Length..]);

    private static string WithSubject(Reason reason, string does)
    {
        if (PartOf(reason) is not { } part) return "it " + does;
        string said = Agreeing(reason, does);
        return reason.Top?.What.Part == reason.Part ? $"{(part.IsPlural ? "they" : "it")} {said}" : $"the {part.Word} {said}";
    }

    // In the number of the part that is spoken of.
    private static string Agreeing(Reason reason, string does) => PartOf(reason) is not { IsPlural: true } ? does
        : does.Replace("gets ", "get ", StringComparison.Ordinal).Replace("is ", "are ", StringComparison.Ordinal)
            .Replace("has ", "have ", StringComparison.Ordinal);

    private static Thing? PartOf(Reason reason) =>
        reason.Part is null ? null : reason.Part == "hook" ? new Thing(ThingKind.Hook) : new Thing(ThingKind.Part, reason.Part);

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
