namespace TyingClass.Web.Identity;

/// <summary>
/// A passphrase made of words is the same however it is spaced, hyphened or cased: a phone puts a capital first and a space after, and
/// nobody reads a hyphen out. Any other passphrase counts sign by sign.
/// </summary>
public static class WordPassphrase
{
    /// <summary>As it is hashed: the letters of the words run together, or just what was typed.</summary>
    public static string Kept(string typed)
    {
        ArgumentNullException.ThrowIfNull(typed);
        string[] words = Words(typed);
        string letters = string.Concat(words);
        return words.Length > 1 && letters.Length >= AccountSignIn.FewestSigns ? letters : typed;
    }

    /// <summary>What may have been hashed for it: itself, the words run together, and the words with hyphens, as slips were hashed once.</summary>
    public static IEnumerable<string> Tries(string typed)
    {
        ArgumentNullException.ThrowIfNull(typed);
        string[] words = Words(typed);
        return words.Length == 0 ? [typed] : new[] { typed, string.Concat(words), string.Join('-', words) }.Distinct(StringComparer.Ordinal);
    }

    // None when something stands in it that is neither letter, space nor dash.
    private static string[] Words(string typed) =>
        typed.All(c => char.IsLetter(c) || IsGap(c))
            ? new string([.. typed.ToLowerInvariant().Select(c => IsGap(c) ? ' ' : c)]).Split(' ', StringSplitOptions.RemoveEmptyEntries) : [];

    private static bool IsGap(char c) => char.IsWhiteSpace(c) || char.GetUnicodeCategory(c) == System.Globalization.UnicodeCategory.DashPunctuation;
}
