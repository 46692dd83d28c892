using System.Security.Cryptography;
using TyingClass.Storage.Damages;
using TyingClass.Storage.Files;

namespace TyingClass.Storage.Photos;

/// <summary>
/// Photos as files beside the database. A name is 256 random bits and opens nothing by itself: pages ask who is looking first. After them it holds a checksum
/// of the photo, and stands in the record of its entry: so name, photo and entry vouch for one another.
/// </summary>
public sealed class PhotoStore
{
    internal const string Collection = "photos";

    private const int SecretDigits = 64;
    private const int SumDigits = 16;

    private readonly DataFolder _folder;
    private readonly DamageBook _damage;

    internal PhotoStore(DataFolder folder, DamageBook damage) => (_folder, _damage) = (folder, damage);

    /// <param name="jpeg">From <see cref="PhotoReader"/>: never bytes as they were sent.</param>
    /// <returns>The photo's id.</returns>
    /// <exception cref="StorageException">Nothing was kept.</exception>
    public string Add(byte[] jpeg)
    {
        ArgumentNullException.ThrowIfNull(jpeg);
        string id = $"{RandomId.NewSecret()}-{SumOf(jpeg)}", path = PathOf(id);
        try
        {
            FileStreamOptions options = new() { Mode = FileMode.CreateNew, Access = FileAccess.Write };
            if (!OperatingSystem.IsWindows()) options.UnixCreateMode = UnixFileMode.UserRead | UnixFileMode.UserWrite;
            using FileStream file = new(path, options);
            file.Write(jpeg);
            file.Flush(flushToDisk: true);
            return id;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            throw new StorageException($"The photo could not be kept in {_folder.PhotosPath}: {e.Message} Is the disk full?", e);
        }
    }

    /// <returns>Null when it is gone, or is not what was written: then it is named in the book of damage.</returns>
    public byte[]? Find(string photoId)
    {
        if (!IsId(photoId) || !File.Exists(PathOf(photoId))) return null;
        try
        {
            byte[] jpeg = File.ReadAllBytes(PathOf(photoId));
            if (IsWhole(photoId, jpeg)) return jpeg;
            _damage.Note(new Damage(Collection, photoId, DamageKind.ChecksumDisagrees));
        }
        catch (FileNotFoundException)
        {
            // Removed a moment ago.
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            Miss(photoId);
        }

        return null;
    }

    public void Remove(string photoId)
    {
        if (IsId(photoId)) File.Delete(PathOf(photoId));
    }

    /// <summary>For backups.</summary>
    internal static bool IsWhole(string path) => IsWhole(Path.GetFileNameWithoutExtension(path), File.ReadAllBytes(path));

    /// <summary>False for a photo kept before names held a checksum.</summary>
    internal static bool HasSum(string photoId) => photoId.Length > SecretDigits;

    /// <summary>An entry names it and it cannot be had.</summary>
    internal void Miss(string photoId) => _damage.Note(new Damage(Collection, photoId, DamageKind.Unreadable));

    internal bool IsThere(string photoId) => IsId(photoId) && File.Exists(PathOf(photoId));

    /// <summary>Every photo there is, but those just put in, which no entry may name yet.</summary>
    /// <param name="before">Older than this.</param>
    internal IEnumerable<string> OlderThan(DateTimeOffset before) => Directory.EnumerateFiles(_folder.PhotosPath, "*.jpg")
        .Where(path => File.GetLastWriteTimeUtc(path) < before.UtcDateTime).Select(path => Path.GetFileNameWithoutExtension(path)).Where(IsId).ToList();

    private static bool IsWhole(string photoId, byte[] jpeg) =>
        !HasSum(photoId) || photoId.AsSpan(SecretDigits + 1).SequenceEqual(SumOf(jpeg));

    private static string SumOf(byte[] jpeg) => Convert.ToHexStringLower(SHA256.HashData(jpeg))[..SumDigits];

    private static bool IsId(string text) => text.Length switch
    {
        SecretDigits => text.All(char.IsAsciiHexDigitLower),
        SecretDigits + 1 + SumDigits => text[SecretDigits] == '-' && text.Remove(SecretDigits, 1).All(char.IsAsciiHexDigitLower),
        _ => false,
    };

    private string PathOf(string photoId) => Path.Combine(_folder.PhotosPath, photoId + ".jpg");
}
