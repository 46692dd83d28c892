using System.Text.RegularExpressions;

namespace TyingClass.Lessons.Prose;

/// <summary>Addresses that lessons may point to.</summary>
internal static partial class Addresses
{
    /// <summary>What is wrong with an address, or null.</summary>
    public static string? Complaint(string? url, bool isImage)
    {
        string address = new([.. (url ?? "").Where(c => !char.IsControl(c) && !char.IsWhiteSpace(c))]);
        if (address.Length == 0) return isImage ? "This image has no address." : "This link has no address.";
        if (Scheme().Match(address) is { Success: true } scheme)
        {
            string name = scheme.Groups["scheme"].Value.ToLowerInvariant();
            if (name is "http" or "https" || (name == "mailto" && !isImage)) return null;
            return $"“{name}:” addresses are not allowed in a lesson. Use http, https or an address of this site such as /lessons/mass-center.";
        }

        return address.StartsWith("//", StringComparison.Ordinal) || address.Contains('\\', StringComparison.Ordinal)
            ? "This address cannot be used in a lesson. Use http, https or an address of this site such as /lessons/mass-center."
            : null;
    }

    /// <summary>A lesson's file name as its page: "02-keel.md#loop" is "/lessons/keel#loop".</summary>
    public static string ToPage(string url) =>
        LessonFile().Match(url) is { Success: true } match ? $"/lessons/{match.Groups["slug"].Value}{match.Groups["rest"].Value}" : url;

    // Browsers skip spaces and control characters in front of and inside a scheme, so these are taken out before looking.
    [GeneratedRegex(@"\A(?<scheme>[A-Za-z][A-Za-z0-9+.\-]*):")]
    private static partial Regex Scheme();

    [GeneratedRegex(@"\A(?:\./)?[0-9]{2}-(?<slug>[a-z0-9]+(?:-[a-z0-9]+)*)\.md(?<rest>#.*)?\z")]
    private static partial Regex LessonFile();
}
