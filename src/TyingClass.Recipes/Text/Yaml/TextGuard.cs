using System.Text;
using TyingClass.Recipes.Yaml;

namespace TyingClass.Recipes.Text.Yaml;

/// <summary>Looks a text over before it is read as YAML: its size, tabs in front of a line, characters nobody can see.</summary>
internal static class TextGuard
{
    public const int MostBytes = 64 * 1024;

    /// <summary>Adds what is wrong; false when the text must not be read any further.</summary>
    public static bool Inspect(string text, ErrorList errors)
    {
        if (Encoding.UTF8.GetByteCount(text) > MostBytes)
        {
            (int line, int column) = WhereTooLong(text);
            errors.Add(line, column, null,
                "The text is longer than 64 KB, which is far more than one fly needs. It was not read past this place: keep one fly to a text.");
            return false;
        }

        int before = errors.Count;
        int lineNumber = 1;
        foreach (string line in TextLines.Of(text)) InspectLine(line, lineNumber++, errors);
        return errors.Count == before;
    }

    private static void InspectLine(string line, int lineNumber, ErrorList errors)
    {
        int odd = line.AsSpan(0, line.Length - line.AsSpan().TrimStart().Length).IndexOfAnyExcept(' ');
        if (odd >= 0 && odd < line.TrimEnd().Length)
        {
            errors.Add(lineNumber, odd + 1, null,
                $"This line is moved in with {(line[odd] == '\t' ? "a tab" : "a space of an unusual kind")}. Use plain spaces instead: two for each step "
                    + "inward.");
            return;
        }

        for (int i = 0; i < line.Length; i++)
        {
            char c = line[i];
            if (char.IsHighSurrogate(c) && i + 1 < line.Length && char.IsLowSurrogate(line[i + 1])) i++;
            else if (Invisible.Is(c) || char.IsSurrogate(c))
            {
                errors.Add(lineNumber, i + 1, null,
                    FormattableString.Invariant($"There is a character here that cannot be seen (U+{(int)c:X4}). Delete it, and retype the line if need be."));
                return;
            }
        }
    }

    private static (int Line, int Column) WhereTooLong(string text)
    {
        int bytes = 0;
        int line = 1;
        int column = 1;
        foreach (Rune rune in text.EnumerateRunes())
        {
            bytes += rune.Utf8SequenceLength;
            if (bytes > MostBytes) break;
            (line, column) = rune.Value == '\n' ? (line + 1, 1) : (line, column + rune.Utf16SequenceLength);
        }

        return (line, column);
    }
}
