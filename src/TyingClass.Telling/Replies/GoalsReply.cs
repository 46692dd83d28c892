using Humanizer;

namespace TyingClass.Telling.Replies;

/// <summary>On a fly that was built or mended: how many of its goals are met, and what is missed by how much.</summary>
public static class GoalsReply
{
    /// <summary>"The goal is met: the keel height is 0.6 mm."</summary>
    /// <param name="reached">A clause; told where there is but one goal.</param>
    public static string Met(int all, string reached) => all switch
    {
        1 => Reply.Fit($"The goal is met: {reached}.", "The goal is met."),
        2 => "Both goals are met.",
        _ => $"All {all.ToWords()} goals are met.",
    };

    /// <summary>"Three of four goals are met. Its mass center lies too far back, by 0.1 mm."</summary>
    /// <param name="misses">Clauses, the worst first.</param>
    public static string Missed(int met, int all, IReadOnlyList<string> misses)
    {
        ArgumentNullException.ThrowIfNull(misses);
        string head = (met, all) switch
        {
            (0, 1) => "The goal is not met",
            (0, 2) => "Neither goal is met",
            (0, _) => $"None of the {all.ToWords()} goals is met",
            (1, _) => $"One of {all.ToWords()} goals is met",
            _ => $"{Grammar.Capital(met.ToWords())} of {all.ToWords()} goals are met",
        };
        if (misses.Count == 0) return $"{head}.";
        string one = Said(head, misses[0], met > 0), plain = Said(head, WithoutAmount(misses[0]), met > 0);
        return misses.Count == 1 ? Reply.Fit(one, plain, $"{head}.")
            : Reply.Fit(
                Said(head, $"{misses[0]}; {misses[1]}", met > 0), Said(head, $"{misses[0]}; {WithoutAmount(misses[1])}", met > 0), one, plain, $"{head}.");
    }

    /// <summary>Only a limit is overstepped: "What was asked is done, but it makes one change too many."</summary>
    public static string TooDear(string over) => Reply.Fit($"What was asked is done, but {over}.", "What was asked is done, but at too great a price.");

    // What is met and what is missed are two sentences; what is missed is the meaning of "not met".
    private static string Said(string head, string miss, bool anyMet) => anyMet ? $"{head}. {Grammar.Capital(miss)}." : $"{head}: {miss}.";

    private static string WithoutAmount(string miss) =>
        miss.LastIndexOf(MissWords.By, StringComparison.Ordinal) is var at and > 0 ? miss[..at] : miss;
}
