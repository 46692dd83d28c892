using System.Runtime.InteropServices;
using Microsoft.Win32.SafeHandles;

namespace TyingClass.Storage.Files;

/// <summary>Forces files and the names of files to disk, so that a power failure does not undo what was said to be done.</summary>
internal static partial class Durable
{
    private const int OpenReadOnly = 0;

    public static void Flush(string path)
    {
        using FileStream file = new(path, FileMode.Open, FileAccess.ReadWrite, FileShare.Read);
        file.Flush(flushToDisk: true);
    }

    /// <summary>A name is kept in its folder, which the runtime has no call to flush. Windows keeps names by itself.</summary>
    public static void FlushFolder(string path)
    {
        if (OperatingSystem.IsWindows()) return;
        using SafeFileHandle folder = new(Open(path, OpenReadOnly), ownsHandle: true);
        if (!folder.IsInvalid) _ = Sync(folder);
    }

    [LibraryImport("libc", EntryPoint = "open", StringMarshalling = StringMarshalling.Utf8, SetLastError = true)]
    private static partial int Open(string path, int flags);

    [LibraryImport("libc", EntryPoint = "fsync", SetLastError = true)]
    private static partial int Sync(SafeFileHandle file);
}
