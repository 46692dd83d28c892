using System.Security.Cryptography;
using System.Security.Cryptography.X509Certificates;
using TyingClass.Web.Hosting;

namespace TyingClass.Web.Network;

/// <summary>A certificate file given at the start: the room is then served over HTTPS.</summary>
internal static class Certificate
{
    public const string Option = "certificate";
    public const string KeyOption = "certificate-key";

    /// <summary>Not on the command line, where others on the machine could read it.</summary>
    public const string PasswordVariable = OwnEnvironment.Prefix + Password;

    private const string Password = "CERTIFICATE_PASSWORD";

    private const string Section = "Kestrel:Certificates:Default:";

    /// <summary>Hands the file to the web server, once it has proved good.</summary>
    /// <returns>False when none was given.</returns>
    /// <exception cref="StartRefusedException">The file is no certificate with its key.</exception>
    public static bool Use(ConfigurationManager configuration)
    {
        if (configuration[Option] is not { Length: > 0 } file)
            return configuration[Section + "Path"] is not null || configuration[Section + "Subject"] is not null;
        string path = Path.GetFullPath(file), password = configuration[Password] ?? "";
        string? key = configuration[KeyOption] is { Length: > 0 } keyFile ? Path.GetFullPath(keyFile) : null;
        Check(path, key, password);
        configuration.AddInMemoryCollection(
        [
            new(Section + "Path", path),
            new(Section + "KeyPath", key),
            new(Section + "Password", password.Length == 0 ? null : password),
        ]);
        return true;
    }

    private static void Check(string path, string? key, string password)
    {
        try
        {
            using X509Certificate2 certificate = key is null && !IsPem(path)
                ? X509CertificateLoader.LoadPkcs12FromFile(path, password)
                : password.Length == 0 ? X509Certificate2.CreateFromPemFile(path, key) : X509Certificate2.CreateFromEncryptedPemFile(path, password, key);
            if (!certificate.HasPrivateKey)
                throw new StartRefusedException($"The certificate {path} came without its private key. Give the key with --{KeyOption} FILE.");
        }
        catch (Exception e) when (e is CryptographicException or IOException or UnauthorizedAccessException)
        {
            throw new StartRefusedException(
                $"The certificate {path} cannot be used: {e.Message} Give a .pem file with --{KeyOption} FILE, or a .pfx file; a password goes into the "
                    + $"environment variable {PasswordVariable}.", e);
        }
    }

    private static bool IsPem(string path) => File.ReadLines(path).Take(50).Any(line => line.StartsWith("-----BEGIN ", StringComparison.Ordinal));
}
