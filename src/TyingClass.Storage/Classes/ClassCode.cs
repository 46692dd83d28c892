using System.Security.Cryptography;

namespace TyingClass.Storage.Classes;

/// <summary>Three words out of 256, to be called across a room: 24 random bits, enough where tries are counted and the code can be renewed.</summary>
internal static class ClassCode
{
    public static string New() => string.Join('-', RandomNumberGenerator.GetItems(ClassWords.All.AsSpan(), 3));

    /// <summary>The same for a code however it is spaced, hyphened or cased.</summary>
    public static string Key(string code) => string.Concat(code.Where(char.IsAsciiLetter)).ToLowerInvariant();
}
