using System.Buffers.Binary;
using TyingClass.Storage.Files;

namespace TyingClass.Storage.Damages;

/// <summary>A data file that was cut short opens as if well, and only shows it where the missing pages are asked for: so its length is asked first.</summary>
internal static class FileLength
{
    // Of LiteDB 5: pages of 8 KB; in the head of the first its name and the number of the last page.
    private const int PageBytes = 8192;
    private const int NameAt = 32;
    private const int LastPageAt = 64;

    /// <exception cref="StorageException">Pages are missing, and no log holds them.</exception>
    public static void Check(DataFolder folder)
    {
        if (!File.Exists(folder.DatabasePath) || Pages(folder.DatabasePath) is not var (there, said) || there >= said) return;
        // While a log is being folded in, the head may speak of pages that only the log holds.
        if (File.Exists(folder.LogPath) && new FileInfo(folder.LogPath).Length > 0) return;
        string lost = $"The data file {folder.DatabasePath} is cut short: {said - there} of its {said} pages of {PageBytes / 1024} KB are missing, and with "
            + "them what they held.";
        throw new StorageException($"{lost} Nothing was changed. {Loss.WayBack(folder)}") { Lost = lost };
    }

    public static bool IsShort(DataFolder folder) => File.Exists(folder.DatabasePath) && Pages(folder.DatabasePath) is var (there, said) && there < said;

    /// <summary>No file, or one with nothing in it: opened, it would become a new one.</summary>
    public static bool IsNothing(DataFolder folder) => !File.Exists(folder.DatabasePath) || new FileInfo(folder.DatabasePath).Length == 0;

    /// <summary>Puts empty pages in the place of missing ones.</summary>
    public static void Pad(DataFolder folder)
    {
        if (Pages(folder.DatabasePath) is not var (there, said) || there >= said) return;
        using FileStream file = new(folder.DatabasePath, FileMode.Open, FileAccess.Write);
        // Half a page is worth nothing, and misleads.
        file.SetLength(there * PageBytes);
        file.SetLength(said * PageBytes);
    }

    // Null where no length is told: the file is empty, or none of LiteDB's, which opening it says in better words.
    private static (long There, long Said)? Pages(string path)
    {
        using FileStream file = new(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite);
        byte[] head = new byte[LastPageAt + sizeof(uint)];
        if (file.ReadAtLeast(head, head.Length, throwOnEndOfStream: false) < head.Length) return file.Length == 0 ? null : (0, 1);
        if (!head.AsSpan(NameAt).StartsWith("** This is a LiteDB file **"u8)) return null;
        return (file.Length / PageBytes, BinaryPrimitives.ReadUInt32LittleEndian(head.AsSpan(LastPageAt)) + 1L);
    }
}
