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

    [GeneratedRegex(@"(?<=[.!?]”?)\s+(?=[\p{Lu}“])")]
    private static partial Regex End();
}
