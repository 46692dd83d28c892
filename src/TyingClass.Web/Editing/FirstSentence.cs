using System.Text.RegularExpressions;

namespace TyingClass.Web.Editing;

/// <summary>What is told in several sentences shows its first one; the rest waits in a fold.</summary>
public static partial class FirstSentence
{
    /// <returns>More is empty where there is but one sentence.</returns>
    public static (string Line, string More) Of(string told)
    {
        ArgumentNullException.ThrowIfNull(told);
        return End().Match(told) is { Success: true } end ? (told[..end.Index], told[(end.Index + end.Length)..]) : (told, "");
    }

    /// <summary>
    /// What stands under Why, and what is folded behind it. What the step before has said is not said again, and figures alone are no reason.
    /// </summary>
    /// <param name="does">The line of that step.</param>
    /// <param name="first">The sentence that gives the reason; null in feedback of older programs.</param>
    public static (string Line, string More) OfWhy(string why, string does, string? first)
    {
        ArgumentNullException.ThrowIfNull(why);
        if (first is null) return (why, "");
        (string line, string more) = Of(why.Length == 0 ? first : why);
        if (line != does) return (line, more);
        return Of(more) is ({ Length: > 0 } next, var rest) && !next.Any(char.IsAsciiDigit) ? (next, rest) : (first, more);
    }

    [GeneratedRegex(@"(?<=[.!?]”?)\s+(?=[\p{Lu}“])")]
    private static partial Regex End();
}
