using System.ComponentModel;
using System.Diagnostics;
using Xunit;

namespace TyingClass.Storage.Tests.Files;

/// <summary>A disk of a few megabytes that can be filled to its last byte: memory, mounted as a file system of its own.</summary>
internal sealed class SmallDisk : IDisposable
{
    private readonly DirectoryInfo _at = Directory.CreateTempSubdirectory("tying-class-disk-");

    public SmallDisk(int megabytes)
    {
        bool mounted = Run("mount", "-t", "tmpfs", "-o", $"size={megabytes}m", "none", Path);
        if (!mounted) _at.Delete();
        Assert.SkipUnless(mounted, "A full disk needs a disk of its own, and nothing can be mounted here: run this as root, in a container, say.");
    }

    public string Path => _at.FullName;

    private string FillerPath => System.IO.Path.Combine(Path, "filler");

    /// <summary>Writes until nothing more goes on.</summary>
    public void Fill()
    {
        using FileStream filler = new(FillerPath, FileMode.Append, FileAccess.Write, FileShare.None, bufferSize: 0);
        byte[] page = new byte[4096];
        try
        {
            while (true) filler.Write(page);
        }
        catch (IOException)
        {
        }
    }

    public void Empty() => File.Delete(FillerPath);

    public void Dispose()
    {
        Run("umount", "-l", Path);
        _at.Delete();
    }

    private static bool Run(string program, params string[] arguments)
    {
        try
        {
            using Process process = Process.Start(new ProcessStartInfo(program, arguments) { RedirectStandardError = true })!;
            process.WaitForExit();
            return process.ExitCode == 0;
        }
        catch (Win32Exception)
        {
            return false;
        }
    }
}
