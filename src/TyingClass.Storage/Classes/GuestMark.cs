using System.Security.Cryptography;

namespace TyingClass.Storage.Classes;

/// <summary>
/// Four words out of 256 by which a guest's work can be found: 32 random bits behind a limit on tries. Drawn on its own, so that it says
/// nothing of the secret in the guest's cookie.
/// </summary>
internal static class GuestMark
{
    public static string New() => string.Join('-', RandomNumberGenerator.GetItems(ClassWords.All.AsSpan(), 4));

    /// <summary>The same for a mark however it is spaced, hyphened or cased; empty for one without a letter.</summary>
    public static string Key(string mark) => ClassCode.Key(mark);
}
