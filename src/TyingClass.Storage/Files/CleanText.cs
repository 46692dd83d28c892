namespace TyingClass.Storage.Files;

/// <summary>What people type, made fit to keep.</summary>
internal static class CleanText
{
    /// <summary>One line: trimmed, without control characters, cut where it is too long; null when nothing is left.</summary>
    public static string? Line(string? text, int mostLength)
    {
        if (text is null) return null;
        string cleaned = string.Concat(text.Where(c => !char.IsControl(c))).Trim();
        if (cleaned.Length > mostLength) cleaned = cleaned[..mostLength].TrimEnd();
        return cleaned.Length == 0 ? null : cleaned;
    }

    /// <summary>Several lines: as <see cref="Line"/>, but line ends and tabs stay; blank text gives "".</summary>
    public static string Lines(string text, int mostLength)
    {
        string cleaned = string.Concat(text.ReplaceLineEndings("\n").Where(c => c is '\n' or '\t' || !char.IsControl(c))).Trim();
        return cleaned.Length > mostLength ? cleaned[..mostLength].TrimEnd() : cleaned;
    }
}
