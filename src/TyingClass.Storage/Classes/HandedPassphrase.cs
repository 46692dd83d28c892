using System.Security.Cryptography;

namespace TyingClass.Storage.Classes;

/// <summary>Four words out of 256, to be told to one person, who then chooses another: 32 random bits behind a limit on tries.</summary>
public static class HandedPassphrase
{
    public static string New() => string.Join('-', RandomNumberGenerator.GetItems(ClassWords.All.AsSpan(), 4));
}
