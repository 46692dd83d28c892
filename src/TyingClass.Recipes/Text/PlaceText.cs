using System.Globalization;
using System.Text.RegularExpressions;

namespace TyingClass.Recipes.Text;

/// <summary>Places and lengths said in a tyer's words: "bend", "eye", "behind the bead", "1.5 × shank".</summary>
internal static partial class PlaceText
{
    public const string Bend = "bend";

    /// <summary>The front end of the shank: where the hook's own eye is, not dumbbell eyes.</summary>
    public const string Eye = "eye";

    public const string Behind = "behind the ";

    /// <summary>Ways to begin, for offering the nearest.</summary>
    public static readonly string[] Words = ["bend", "eye", "behind", "mid shank", "0.5 × shank"];

    private const double MostShanks = 12;

    /// <summary>The words as they are written back; null when this is no such saying, which leaves it to be read as a number.</summary>
    /// <param name="tied">Names of the parts tied in before.</param>
    /// <param name="error">What is wrong with it when it is one, and what to write instead.</param>
    public static string? Read(string text, IReadOnlyList<string> tied, out string? error)
    {
        error = null;
        string plain = WordList.Plain(text);
        if (BendWords().IsMatch(plain)) return Bend;
        if (EyeWords().IsMatch(plain)) return Eye;
        if (plain == "behind" || plain.StartsWith("behind ", StringComparison.Ordinal))
            return ReadBehind(text, plain["behind".Length..].Trim(), tied, out error);
        // "to: bead", "at the bead": up to where it ends.
        if (Behindless().Match(plain) is { Success: true } part && FindTied(part.Groups["part"].Value, tied) is { } found) return Behind + found;
        return ReadShanks(text, out error);
    }

    /// <summary>"1.5 × shank", "1.5x shank", "1.5 shanks", "2/3 × shank".</summary>
    public static string? ReadShanks(string text, out string? error)
    {
        error = null;
        if (Shanks(text) is not { } shanks) return null;
        if (shanks is >= 0 and <= MostShanks) return string.Create(CultureInfo.InvariantCulture, $"{shanks:0.######} × shank");
        error = $"{WordList.Quote(text)} is out of range. It may be 0 to {MostShanks} × shank, for example 1.5 × shank.";
        return null;
    }

    public static double? Shanks(string text)
    {
        string plain = WordList.Plain(text);
        if (MidShank().IsMatch(plain)) return 0.5;
        return NumberText.TrySplit(plain, "1.5", out double number, out string rest, out _) && ShankWords().IsMatch(rest) ? number : null;
    }

    private static string? ReadBehind(string text, string name, IReadOnlyList<string> tied, out string? error)
    {
        if (name.StartsWith("the ", StringComparison.Ordinal)) name = name[4..];
        string? found = FindTied(name, tied);
        error = found is not null ? null
            : tied.Count == 0
            ? $"{WordList.Quote(text)} points to a part, but none is tied in before this one. Parts stand in tying order; write a length, such as 6 mm, or "
            + "bend."
            : $"{WordList.Quote(text)} points to no part tied in before this one.{Nearest.Hint(name, tied)} Write behind the {WordList.Or(tied)}, a "
            + "length, such as 6 mm, or bend.";
        return found is null ? null : Behind + found;
    }

    private static string? FindTied(string name, IReadOnlyList<string> tied) =>
        tied.LastOrDefault(t => t == name) ?? tied.LastOrDefault(t => t.EndsWith(" " + name, StringComparison.Ordinal));

    [GeneratedRegex(@"\A(?:at |to )?(?:the )?(?:hook )?bend(?: of the hook)?\z")]
    private static partial Regex BendWords();

    [GeneratedRegex(@"\A(?:at |to |just )?(?:behind )?(?:the )?(?:hook )?(?:hook's )?(?:eye|ring)(?: of the hook)?\z")]
    private static partial Regex EyeWords();

    [GeneratedRegex(@"\A(?:at |to |up to )?(?:the )?(?<part>[a-z][a-z ]*(?: [0-9]+)?)\z")]
    private static partial Regex Behindless();

    [GeneratedRegex(@"\A(?:×|x|\*|times|of)?\s*(?:the )?(?:shanks?|shank lengths?)\z")]
    private static partial Regex ShankWords();

    [GeneratedRegex(@"\A(?:at )?(?:the )?(?:(?:mid|middle|center|half|halfway)(?:[- ]?(?:of|down|along))?[- ]?(?:the )?shank|mid-?shank)\z")]
    private static partial Regex MidShank();
}
