using System.Text.RegularExpressions;

namespace TyingClass.Recipes.Text.Yaml;

/// <summary>Turns the YAML library's complaints into advice a tyer can follow, by looking at the line complained about.</summary>
public static partial class LayoutAdvice
{
    public const string General =
        "The layout cannot be followed from here on. Write one “key: value” to a line, keys of one group straight below each other, and a “- ” before each "
        + "part.";

    public const string Brackets = "A bracket opened before this place is never closed, or a comma is missing between its items.";

    /// <param name="complaint">The library's, in its own words.</param>
    /// <param name="place">Where it complains, from 1.</param>
    /// <param name="lines">The whole text.</param>
    /// <returns>What to do, and where: the slip may stand some lines above the complaint.</returns>
    public static (int Line, int Column, string Advice) For(string complaint, (int Line, int Column) place, string[] lines)
    {
        string line = lines[place.Line - 1];
        bool Says(string words) => complaint.Contains(words, StringComparison.OrdinalIgnoreCase);
        (int Line, int Column, string Advice) Here(string advice) => (place.Line, place.Column, advice);

        if (Says("quoted")) return Here(Quoted(complaint));
        if (Says("block scalar")) return Here("The text after “|” or “>” cannot be followed. Write the value on one line instead.");
        if (Says("multiline plain scalar") || Says("could not find expected ':'")) return NoColon(place, lines);
        if (Says("plain scalar value")) return Here(OneColonTooMany(line, place.Column));
        if (Says("cannot start any token"))
            return Here($"A value cannot begin with {WordList.Quote(Piece(line, place.Column))}. Put the whole value in quotes.");
        if (Says("Block sequence entries")) return Here("A list item (“- …”) must begin on a line of its own.");
        if (Says("flow sequence") || Says("flow mapping")) return Here(Brackets);
        if (Says("node content"))
            return Here($"A value was expected before {WordList.Quote(Piece(line, place.Column))}. Write it, or take the stray sign out.");
        if (Says("tab")) return Tab(place, lines);
        if (Says("alias") || Says("anchor"))
            return Here("“*” and “&” have a special meaning in YAML and no place here. Put the value in quotes if the sign is meant.");
        if (Says("tag")) return Here("“!” has a special meaning in YAML and no place here. Put the value in quotes if the sign is meant.");
        if (Says("directive")) return Here("A line that begins with “%” has a special meaning in YAML. Delete it.");
        if (Says("expected key") && string.IsNullOrWhiteSpace(line[..(place.Column - 1)]) && LineWithoutKey().Match(line) is { Success: true } words
            && words.Groups["text"].Value[0] is not ('}' or ']' or '-'))
            return NoColon(place, lines);
        if (Says("expected key") || Says("'-' indicator") || Says("document end") || Says("mapping values") || Says("invalid mapping"))
            return Here(WrongStep(line, place.Column));
        return Here(General);
    }

    private static string Quoted(string complaint) =>
        new[] { "end of stream", "document indicator", "indentation" }.Any(words => complaint.Contains(words, StringComparison.OrdinalIgnoreCase))
            ? "A quotation mark is opened here and never closed. Close it, or leave both out. For inches write 5/64 in."
            : "A backslash inside double quotes has a special meaning. Write it twice, or use single quotes around the value.";

    // YAML notices a line without a colon only when it meets the next one.
    private static (int Line, int Column, string Advice) NoColon((int Line, int Column) place, string[] lines)
    {
        for (int i = place.Line - 1; i >= 0; i--)
        {
            Match words = LineWithoutKey().Match(lines[i]);
            if (!words.Success) continue;
            string text = words.Groups["text"].Value;
            string advice = text.Contains(':', StringComparison.Ordinal)
                ? $"{WordList.Quote(text)} needs a space after its colon, as in “size: 6”."
                : $"{WordList.Quote(text)} has no colon. Write “key: value”, as in “size: 6”.";
            return (i + 1, words.Groups["text"].Index + 1, advice);
        }

        return (place.Line, place.Column, General);
    }

    // A tab in a text of several lines is noticed where that text's group begins.
    private static (int Line, int Column, string Advice) Tab((int Line, int Column) place, string[] lines)
    {
        const string Advice = "There is a tab here. Use spaces instead: two for each step inward.";
        for (int i = place.Line - 1; i < lines.Length; i++)
        {
            int tab = lines[i].IndexOf('\t', StringComparison.Ordinal);
            if (tab >= 0 && string.IsNullOrWhiteSpace(lines[i][..tab])) return (i + 1, tab + 1, Advice);
        }

        return (place.Line, place.Column, Advice);
    }

    private static string OneColonTooMany(string line, int column) =>
        Colon().Count(line[..Math.Min(line.Length, column)]) > 0
            ? "There is a second colon on this line. Put each key on a line of its own, or put quotes around a value that has a colon in it."
            : "This line is moved in farther than the line above it, which already has its value. Put both straight below each other.";

    private static string WrongStep(string line, int column)
    {
        string before = line[..Math.Min(line.Length, column - 1)];
        if (before.TrimEnd().EndsWith('"') || before.TrimEnd().EndsWith('\''))
            return "There is more after the closing quotation mark. Put the whole value inside the quotes, or use none: size: 5/64 in.";
        string rest = Piece(line, column);
        if (rest.StartsWith(']') || rest.StartsWith('}')) return $"{WordList.Quote(rest[..1])} closes nothing. Delete it.";
        if (rest.StartsWith('-') && rest.Length > 1 && rest[1] != ' ') return "A dash that begins a part needs a space after it: “- part: bead”.";
        return "This line does not start straight below the other lines of its group. Move it left or right until it does; use spaces, two for each step "
            + "inward.";
    }

    private static string Piece(string line, int column) => column <= line.Length ? line[(column - 1)..] : "the end of the line";

    [GeneratedRegex(@"^\s*(?:- +)*(?<text>(?![#\s])(?!.*:(?:\s|$)).+?)\s*$")]
    private static partial Regex LineWithoutKey();

    [GeneratedRegex(@":\s")]
    private static partial Regex Colon();
}
