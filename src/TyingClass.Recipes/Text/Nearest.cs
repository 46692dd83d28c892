using Quickenshtein;

namespace TyingClass.Recipes.Text;

/// <summary>The known word closest to what was typed, when it is close enough to be what was meant.</summary>
public static class Nearest
{
    private const int LongestWord = 40;
    private const int ShortestShare = 3;

    public static string? Find(string typed, IEnumerable<string> known)
    {
        string word = Comparable(typed);
        if (word.Length is 0 or > LongestWord) return null;
        (string? best, int distance) = known
            .Select(k => ((string?)k, Distance(word, Comparable(k))))
            .DefaultIfEmpty((null, int.MaxValue))
            .OrderBy(x => x.Item2)
            // Of two that stand whole in what was typed, the one that says more of it: "tinsel", not "tin", for "silver tinsel".
            .ThenByDescending(x => word.Contains(Comparable(x.Item1 ?? ""), StringComparison.Ordinal) ? x.Item1?.Length : 0)
            .First();
        return distance <= Math.Max(1, (word.Length + 1) / 3) && distance < word.Length ? best : null;
    }

    /// <summary>" Did you mean “size”?", or nothing.</summary>
    public static string Hint(string typed, IEnumerable<string> known) =>
        Find(typed, known) is { } near ? $" Did you mean “{near}”?" : "";

    private static string Comparable(string word) => WordList.Plain(word).Replace('_', ' ').Replace('-', ' ');

    // "tin" stands in "silver tin", "bead" in "beadhead"; but "tin" is not what "silver tinsel" is about.
    private static bool HoldsWhole(string word, string known) =>
        word.StartsWith(known, StringComparison.Ordinal) || $" {word} ".Contains($" {known} ", StringComparison.Ordinal);

    private static int Distance(string word, string known)
    {
        int distance = Levenshtein.GetDistance(word, known);
        bool oneHoldsTheOther = Math.Min(word.Length, known.Length) >= ShortestShare
            && (known.Contains(word, StringComparison.Ordinal) || HoldsWhole(word, known));

        // Two letters swapped is one slip of the fingers, not two; "eyes" for "dumbbell eyes" is a short way to say it.
        bool swapped = distance == 2 && word.Length == known.Length && word.Order().SequenceEqual(known.Order());
        return distance > 1 && (swapped || oneHoldsTheOther) ? 1 : distance;
    }
}
