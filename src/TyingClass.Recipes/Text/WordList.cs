namespace TyingClass.Recipes.Text;

/// <summary>Words for sentences: lists, and what a user typed, cut to a length and freed of what cannot be seen.</summary>
internal static class WordList
{
    private const int LongestQuote = 40;

    /// <summary>"a, b or c".</summary>
    public static string Or(IEnumerable<string> words) => Join(words, " or ");

    /// <summary>"a, b and c".</summary>
    public static string And(IEnumerable<string> words) => Join(words, " and ");

    /// <summary>What the user typed, in quotation marks, safe to print anywhere text is.</summary>
    public static string Quote(string typed)
    {
        string flat = new([.. typed.Take(LongestQuote).Select(c => char.IsWhiteSpace(c) ? ' ' : Invisible.Is(c) || char.IsSurrogate(c) ? '\uFFFD' : c)]);
        return typed.Length > LongestQuote ? $"“{flat}…”" : $"“{flat}”";
    }

    /// <summary>Lower case, one space between words: how choices are compared.</summary>
    public static string Plain(string typed) =>
        string.Join(' ', typed.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)).ToLowerInvariant();

    private static string Join(IEnumerable<string> words, string last)
    {
        string[] all = [.. words];
        return all.Length < 2 ? string.Concat(all) : string.Join(", ", all[..^1]) + last + all[^1];
    }
}
