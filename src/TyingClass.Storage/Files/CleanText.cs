namespace TyingClass.Storage.Files;

/// <summary>What people type, made fit to keep.</summary>
internal static class CleanText
{
    /// <summary>One line: trimmed, without control characters, cut where it is too long; null when nothing is left.</summary>
    public static string? Line(string? text, int mostLength)
    {
        if (text is null) return null;
        string cleaned = Cut(string.Concat(text.Where(c => !char.IsControl(c))).Trim(), mostLength).TrimEnd();
        return cleaned.Length == 0 ? null : cleaned;
    }

    /// <summary>Several lines: as <see cref="Line"/>, but line ends and tabs stay; blank text gives "".</summary>
    public static string Lines(string text, int mostLength)
    {
        return Cut(string.Concat(text.ReplaceLineEndings("\n").Where(c => c is '\n' or '\t' || !char.IsControl(c))).Trim(), mostLength).TrimEnd();
    }

    /// <summary>No longer than it may be, and no sign cut in half: half an emoji is no text, and no file takes it.</summary>
    public static string Cut(string text, int mostLength) =>
        text.Length <= mostLength ? text : text[..(mostLength > 0 && char.IsHighSurrogate(text[mostLength - 1]) ? mostLength - 1 : mostLength)];
}
