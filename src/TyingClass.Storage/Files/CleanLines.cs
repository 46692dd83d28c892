namespace TyingClass.Storage.Files;

/// <summary>As <see cref="CleanText"/>, for what may run over several lines.</summary>
internal static class CleanLines
{
    /// <summary>Trimmed, line ends as one sign, without other control characters, cut where it is too long; null when nothing is left.</summary>
    public static string? Of(string? text, int mostLength)
    {
        if (text is null) return null;
        string cleaned = string.Concat(text.ReplaceLineEndings("\n").Where(c => c == '\n' || !char.IsControl(c))).Trim();
        if (cleaned.Length > mostLength) cleaned = cleaned[..mostLength].TrimEnd();
        return cleaned.Length == 0 ? null : cleaned;
    }
}
