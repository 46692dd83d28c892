using System.Security.Cryptography;
using TyingClass.Storage.Files;

namespace TyingClass.Storage.Instructors;

/// <summary>60 random bits to be read off a console and typed once: no letter that looks like a digit.</summary>
internal static class OneTimeCode
{
    private const string Signs = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";

    /// <summary>Three groups of four.</summary>
    public static string New()
    {
        string signs = RandomNumberGenerator.GetString(Signs, 12);
        return $"{signs[..4]}-{signs[4..8]}-{signs[8..]}";
    }

    /// <summary>The same for a code however it is spaced, cased, or misread (O for 0, I or L for 1).</summary>
    public static string Hash(string code) => RandomId.Hash(string.Concat(
        code.ToUpperInvariant().Where(char.IsAsciiLetterOrDigit).Select(c => c switch { 'O' => '0', 'I' or 'L' => '1', _ => c })));
}
