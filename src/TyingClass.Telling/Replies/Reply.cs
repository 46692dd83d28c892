using System.Text.RegularExpressions;

namespace TyingClass.Telling.Replies;

/// <summary>
/// The sentence that stands first on every answer: how the thing that was asked stands, in the question's own words. Why it stands so comes after it.
/// </summary>
public static partial class Reply
{
    public const int MostWords = 19;
    public const int MostFigures = 2;

    /// <summary>The fullest of several sayings that is short enough; the last where none is.</summary>
    internal static string Fit(params ReadOnlySpan<string> fullestFirst)
    {
        foreach (string said in fullestFirst)
        {
            if (IsShort(said)) return said;
        }

        return fullestFirst[^1];
    }

    /// <summary>A reader takes it in at once.</summary>
    public static bool IsShort(string said)
    {
        ArgumentNullException.ThrowIfNull(said);
        return said.Split(' ').Length <= MostWords && Figure().Count(said) <= MostFigures;
    }

    // The number of a step is its name.
    [GeneratedRegex(@"(?<![\p{L}\d.])(?<!step )[0-9]+(?:[./][0-9]+)?", RegexOptions.IgnoreCase)]
    private static partial Regex Figure();
}
