using Humanizer;

namespace TyingClass.Telling;

/// <summary>Lists, capitals and counts. A list has no comma before its "and": today's sentences have none.</summary>
public static class Grammar
{
    /// <summary>"a, b and c".</summary>
    public static string And(IEnumerable<string> words) => Join(words, " and ");

    /// <summary>"a, b or c".</summary>
    public static string Or(IEnumerable<string> words) => Join(words, " or ");

    /// <summary>With a capital, at the head of a sentence; the rest as it is.</summary>
    public static string Capital(string text) => text.Transform(To.SentenceCase);

    /// <summary>"1 fly", "2 flies".</summary>
    public static string Count(int number, string one) => one.ToQuantity(number);

    private static string Join(IEnumerable<string> words, string last)
    {
        string[] all = [.. words];
        return all.Length < 2 ? string.Concat(all) : string.Join(", ", all[..^1]) + last + all[^1];
    }
}
