using Humanizer;

namespace TyingClass.Telling;

/// <summary>Lists and capitals. A list has no comma before its "and": today's sentences have none.</summary>
public static class Grammar
{
    /// <summary>"a, b and c".</summary>
    public static string And(IEnumerable<string> words)
    {
        string[] all = [.. words];
        return all.Length < 2 ? string.Concat(all) : string.Join(", ", all[..^1]) + " and " + all[^1];
    }

    /// <summary>"a down", "an up".</summary>
    public static string A(string word)
    {
        ArgumentException.ThrowIfNullOrEmpty(word);
        return (char.ToLowerInvariant(word[0]) is 'a' or 'e' or 'i' or 'o' or 'u' ? "an " : "a ") + word;
    }

    /// <summary>A sentence to stand inside another one.</summary>
    public static string WithoutStop(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        return text.TrimEnd().TrimEnd('.');
    }

    /// <summary>With a capital, at the head of a sentence; the rest as it is.</summary>
    public static string Capital(string text) => text.Transform(To.SentenceCase);
}
