using TyingClass.Recipes.Text;
using TyingClass.Telling.Figures;
using TyingClass.Telling.Sentences;

namespace TyingClass.Telling.Reasons;

/// <summary>A reason with its figures: "Of the 0.9 mm the ring gave 0.7".</summary>
public static class WhySentence
{
    private const int MostShares = 4;

    // Under a twentieth of the largest a share is not worth a word.
    private const double LeastShare = 0.05;

    public static string Of(Reason reason, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(reason);
        return reason.Form switch
        {
            ReasonForm.Change => Change(reason, units),
            ReasonForm.Without => Without(reason, units),
            ReasonForm.MadeOf => MadeOf(reason, units),
            _ => Hands(reason, units),
        };
    }

    /// <summary>What has a say, the most first, and nothing of how much.</summary>
    public static string Names(Reason reason)
    {
        ArgumentNullException.ThrowIfNull(reason);
        string[] names = [.. Worth(reason).Select(s => $"the {s.What.Word}")];
        return names.Length == 0 ? "Nothing but the hook has a say in this." : $"What has a say in it, the most first: {Grammar.And(names)}.";
    }

    /// <summary>"The pitch goes from 4° to 9°."</summary>
    /// <param name="ends">Before and after, told apart where they differ.</param>
    public static string Goes(string phrase, IReadOnlyList<string> ends)
    {
        ArgumentNullException.ThrowIfNull(ends);
        return ends[0] == ends[1] ? $"The {phrase} stays {ends[1]}." : $"The {phrase} goes from {ends[0]} to {ends[1]}.";
    }

    private static string Change(Reason reason, UnitSystem units)
    {
        string the = $"the {reason.Phrase(units)}", with = Grammar.And(reason.Shares.Take(MostShares).Select(TurnedWords.Of));
        string[] ends = reason.Magnitude is { } magnitude ? [.. magnitude.SayApart(units, reason.FromSi, reason.ToSi)] : [Say(reason.FromSi), Say(reason.ToSi)];
        if (IsOfTheNose(reason)) ends = [Nosed(ends[0], reason.FromSi), Nosed(ends[1], reason.ToSi)];
        if (reason.FromSi is not { } from || reason.ToSi is not { } to)
        {
            return reason.FromSi is null && reason.ToSi is null
                ? $"{Grammar.Capital(the)} cannot be told of either fly."
                : reason.ToSi is null ? $"{Grammar.Capital(with)}, {the} can no longer be told; before it was {ends[0]}."
                : $"{Grammar.Capital(with)}, {the} is {ends[1]}; before it could not be told.";
        }

        if (ends[0] == ends[1] || reason.Shares.IsEmpty) return $"{Grammar.Capital(the)} stays {ends[1]}.";
        if (!reason.IsNoticeable) return $"{Grammar.Capital(the)} goes from {ends[0]} to {ends[1]}: too little to notice.";
        string goes = $"{Grammar.Capital(the)} goes from {ends[0]} to {ends[1]}.";
        // What was done stands in the first sentence.
        if (reason.Shares.Length == 1) return goes;
        string gave = Grammar.And(Worth(reason).Select(s =>
            $"the {s.What.Word} gave {Amount(s.Si)}{(s.Si * (to - from) < 0 ? " the other way" : "")}"));
        // Terms that are left out are small: then nothing need add up.
        bool all = Worth(reason).Count() == reason.Shares.Length;
        bool adds = !all || Numbers.Adds(Worth(reason).Select(s => (s.Si * (to - from) < 0 ? "−" : "") + Amount(s.Si)), Amount(to - from));
        return $"{goes} Of the {Amount(to - from)} between them{(adds ? "" : $", {Numbers.EachRounded}")}, {gave}.";

        string Amount(double si) => reason.Magnitude?.Say(Math.Abs(si), units) ?? Numbers.Write(Math.Abs(si), 2);
    }

    private static string Without(Reason reason, UnitSystem units)
    {
        string figure = Say(reason, reason.ToSi, units), now = $"{Grammar.Capital($"the {reason.Phrase(units)}")} is {figure}.";
        // What would leave the figure as it reads is no reason for it.
        ReasonShare[] told = [.. Worth(reason).Where(s => Say(reason, s.FromSi, units) != figure)];
        if (told.Length == 0) return now;
        // Where others do the same work, taking away what decides shows less than taking away another: then it is shown by itself.
        if (reason.Top is { AloneSi: { } alone, BareSi: { } bare, Turned.IsEmpty: true } top && told.Any(s => Math.Abs(s.Si) > Math.Abs(top.Si)))
            return $"{now} On the bare hook it would be {Say(reason, bare, units)}, with nothing but the {top.What.Word} on it {Say(reason, alone, units)}.";
        return $"{now} It would be {Grammar.And(told.Select(s => $"{Say(reason, s.FromSi, units)} {Otherwise(s)}"))}.";
    }

    /// <summary>
    /// Of a fly that none of its parts turns by itself: "without the bead and with the eye straight, it would stay below zero too". Null for any other.
    /// </summary>
    public static string? NoneTurns(Reason reason, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(reason);
        ReasonShare[] told = [.. Worth(reason)];
        if (reason is not { Form: ReasonForm.Without, Quantity: "keel height", ToSi: < 0 } || told.Length == 0) return null;
        if (told.Any(s => s.FromSi is not < 0)) return null;
        return $"{Grammar.Capital($"the {reason.Phrase(units)}")} is {Say(reason, reason.ToSi, units)}. No one thing on it decides that: "
            + $"{Grammar.And(told.Select(Otherwise))}, it would stay below zero too.";
    }

    private static string MadeOf(Reason reason, UnitSystem units)
    {
        ReasonShare[] told = [.. Worth(reason)];
        string whole = Say(reason, reason.ToSi, units);
        return told.Length <= 1 ? $"{Grammar.Capital($"the {reason.Phrase(units)}")} is {whole}."
            : $"Of the {whole}{(Adds(reason, told, whole, units) ? "" : $", {Numbers.EachRounded}")}, "
            + $"{Grammar.And(told.Select(s => $"the {s.What.Word} {s.What.Verb("is", "are")} {Say(reason, s.Si, units)}"))}.";
    }

    private static bool Adds(Reason reason, ReasonShare[] told, string whole, UnitSystem units) =>
        told.Length < reason.Shares.Length || Numbers.Adds(told.Select(s => Say(reason, s.Si, units)), whole);

    private static string Hands(Reason reason, UnitSystem units)
    {
        string now = $"{Grammar.Capital($"the {reason.Phrase(units)}")} is {Say(reason, reason.ToSi, units)}.";
        if (reason.Top is not { FromSi: { } best } top) return now;
        return $"{now} With the {top.What.Word} tied without any error it would be about {Magnitudes.RidesAsIntended.Say(Math.Round(best, 2), units)}. "
            + $"The error that costs most: {HandsWords.Of(top)}.";
    }

    // "with the wing under the shank".
    private static string Otherwise(ReasonShare share) => share.Turned is [var line, ..]
        ? $"with the {share.What.Word} {TurnedWords.Standing(line.Key, line.After)}"
        : Lacking(share.What);

    /// <summary>"without the wing", "with the eye straight".</summary>
    public static string Lacking(Thing thing)
    {
        ArgumentNullException.ThrowIfNull(thing);
        return thing.Kind switch
        {
            ThingKind.Eye => "with the eye straight",
            ThingKind.Knot => "with the knot tied as a loop",
            ThingKind.Leader => "with nothing tied to it",
            ThingKind.Retrieve when thing.Part == Thing.Count => "on half the count",
            ThingKind.Retrieve when thing.Part.Length > 0 => $"with {thing.Part} half as long",
            _ => $"without the {thing.Word}",
        };
    }

    private static IEnumerable<ReasonShare> Worth(Reason reason)
    {
        double most = reason.Shares.IsEmpty ? 0 : reason.Shares.Max(s => Math.Abs(s.Si));
        return reason.Shares.Where(s => most > 0 && Math.Abs(s.Si) >= LeastShare * most).Take(MostShares);
    }

    private static string Say(Reason reason, double? si, UnitSystem units) =>
        (reason.Magnitude?.Say(si, units) ?? Say(si)) is var said && IsOfTheNose(reason) ? Nosed(said, si) : said;

    // As every other sentence says it: "nose up 41°".
    private static bool IsOfTheNose(Reason reason) => reason.Quantity is "pitch" or "pitch while sinking" or "pitch in the pause";

    private static string Nosed(string said, double? si) => si is { } rad ? FlyWords.Nose(said, rad) : said;

    private static string Say(double? si) => si is { } value ? Numbers.Write(value, 2) : Magnitude.None;
}
