using Humanizer;
using TyingClass.Telling.Reasons;

namespace TyingClass.Telling.Replies;

/// <summary>On what a person will read or has seen: nothing here is right or wrong.</summary>
public static class SeenReply
{
    private const int MostNamed = 3;

    /// <summary>"You saw 23°, and the model says 30°."</summary>
    public static string One(string seen, string predicted, bool agrees) =>
        agrees ? $"You saw {seen}, as the model says." : $"You saw {seen}, and the model says {predicted}.";

    /// <summary>"Two of the three things you saw are as the model says."</summary>
    public static string Several(int agreeing, int all) => agreeing switch
    {
        0 when all == 2 => "Neither of the two things you saw is as the model says.",
        0 => $"None of the {all.ToWords()} things you saw is as the model says.",
        2 when all == 2 => "Both things you saw are as the model says.",
        _ when agreeing == all => $"All {all.ToWords()} things you saw are as the model says.",
        1 => $"One of the {all.ToWords()} things you saw is as the model says.",
        _ => $"{Grammar.Capital(agreeing.ToWords())} of the {all.ToWords()} things you saw are as the model says.",
    };

    /// <summary>"Yours speaks of the water and the wing; the model answer also of the eye."</summary>
    /// <param name="modelAnswer">Null where the author wrote none.</param>
    public static string Explained(string text, string? modelAnswer)
    {
        string[] good = [.. ExplainWords.In(modelAnswer ?? "").Take(MostNamed)];
        if (good.Length == 0) return "Your explanation is kept as you wrote it.";
        HashSet<string> said = [.. ExplainWords.In(text)];
        string[] found = [.. good.Where(said.Contains)], missing = [.. good.Where(word => !said.Contains(word))];
        return (found.Length, missing.Length) switch
        {
            (_, 0) => $"Yours speaks of {The(found)}, and so does the model answer.",
            (0, _) => $"The model answer speaks of {The(missing)}, and yours does not.",
            _ => $"Yours speaks of {The(found)}; the model answer also of {The(missing)}.",
        };
    }

    private static string The(string[] words) => Grammar.And(words.Select(w => $"the {w}"));
}
