using TyingClass.Storage.Files;

namespace TyingClass.Storage.Photos;

/// <summary>Photos as files beside the database. A name is 256 random bits and opens nothing by itself: pages ask who is looking first.</summary>
public sealed class PhotoStore
{
    private readonly DataFolder _folder;

    internal PhotoStore(DataFolder folder) => _folder = folder;

    /// <param name="jpeg">From <see cref="PhotoReader"/>: never bytes as they were sent.</param>
    /// <returns>The photo's id.</returns>
    /// <exception cref="StorageException">Nothing was kept.</exception>
    public string Add(byte[] jpeg)
    {
        string id = RandomId.NewSecret(), path = PathOf(id);
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

    /// <returns>Null when it is gone.</returns>
    public byte[]? Find(string photoId) => IsId(photoId) && File.Exists(PathOf(photoId)) ? File.ReadAllBytes(PathOf(photoId)) : null;

    public void Remove(string photoId)
    {
        if (IsId(photoId)) File.Delete(PathOf(photoId));
    }

    /// <summary>Every photo there is, but those just put in, which no entry may name yet.</summary>
    /// <param name="before">Older than this.</param>
    internal IEnumerable<string> OlderThan(DateTimeOffset before) => Directory.EnumerateFiles(_folder.PhotosPath, "*.jpg")
        .Where(path => File.GetLastWriteTimeUtc(path) < before.UtcDateTime).Select(path => Path.GetFileNameWithoutExtension(path)).Where(IsId).ToList();

    private static bool IsId(string text) => text.Length == 64 && text.All(char.IsAsciiHexDigitLower);

    private string PathOf(string photoId) => Path.Combine(_folder.PhotosPath, photoId + ".jpg");
}
