using System.Collections.Immutable;
using TyingClass.Recipes.Text;

namespace TyingClass.Telling.Reasons;

/// <summary>The first sentence on a fly that was changed: what the change did, held against what was asked of it.</summary>
public static class RepairOpening
{
    /// <summary>"With the foam smaller, it sinks faster, and now sinks too fast."</summary>
    public static string Of(Reason reason, GoalStand stand)
    {
        ArgumentNullException.ThrowIfNull(reason);
        string with = Grammar.Capital(OpeningSentence.Turned(reason)), moved = OpeningSentence.Moved(reason);
        if (reason is { Quantity: "keel height", FromSi: > 0, ToSi: <= 0 }) moved = "it rolls over";
        bool isShare = reason.Magnitude?.Dimension == Dimension.Share;
        return (stand, reason.IsNoticeable) switch
        {
            (GoalStand.Met, true) => $"{with}, {moved}, as asked.",
            (GoalStand.Met, false) => $"{with}, {moved}, as it should.",
            (GoalStand.Short, true) => $"{with}, {moved}, but not enough.",
            (GoalStand.Beyond, true) when !isShare && reason is { FromSi: { } from, ToSi: { } to } =>
                $"{with}, {moved}, and now {OpeningSentence.Too(reason, to > from)}.",
            (GoalStand.Away or GoalStand.Beyond, true) => $"{with}, {moved}, and that is the wrong way.",
            _ => $"{with}, {moved}{(isShare ? "" : ", which does not help yet")}.",
        };
    }

    /// <summary>All was met but the count of changes: what would have done alone.</summary>
    /// <param name="kept">The one change that does it; null where it takes several.</param>
    /// <param name="keptNames">"the size of the cone".</param>
    public static string OfEnough(ReasonShare? kept, ImmutableArray<string> keptNames, ImmutableArray<string> back)
    {
        string one = kept is { Turned.IsEmpty: false } ? $"{Grammar.Capital(TurnedWords.Of(kept))}, that is enough"
            : $"{Grammar.Capital(Grammar.And(keptNames))} are enough";
        return $"{one}: put {Grammar.And(back)} back.";
    }

    /// <summary>All was met but what the changes weigh.</summary>
    public static string OfCost(Reason added)
    {
        ArgumentNullException.ThrowIfNull(added);
        return $"{Grammar.Capital(OpeningSentence.Turned(added))}, it does what was asked, and the fly gets heavier than it may.";
    }

    /// <summary>All was met, in more changes than one may make, and none of them can be spared.</summary>
    public static string OfTooMany(Reason reason)
    {
        ArgumentNullException.ThrowIfNull(reason);
        return reason.Top is { } top ? $"It does what was asked, in too many changes: look for one to the {top.What.Word} that does it alone."
            : "It does what was asked, in too many changes: put one part back and look again.";
    }
}
