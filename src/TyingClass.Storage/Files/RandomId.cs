using System.Security.Cryptography;
using System.Text;

namespace TyingClass.Storage.Files;

/// <summary>Ids and secrets nobody can guess.</summary>
internal static class RandomId
{
    /// <summary>80 bits as 20 hexadecimal digits: safe in an address.</summary>
    public static string New() => RandomNumberGenerator.GetHexString(20, lowercase: true);

    /// <summary>256 bits as 64 hexadecimal digits.</summary>
    public static string NewSecret() => RandomNumberGenerator.GetHexString(64, lowercase: true);

    /// <summary>What is kept of a secret. Secrets are random and long, so a plain hash is enough; passphrases never come here.</summary>
    public static string Hash(string secret) => Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(secret)));
}
