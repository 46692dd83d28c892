using System.Diagnostics;
using TyingClass.Storage.Files;
using Xunit;

namespace TyingClass.Storage.Tests.Files;

public sealed class ClassStoreTests
{
    [Fact]
    public void Open_FolderHeldByAnotherProcess_NamesTheFolderAndWhatToDo()
    {
        using TempStore temp = new();
        temp.Store.Dispose();
        if (OperatingSystem.IsWindows()) return;
        // flock(1) takes the same kernel lock from a process of its own.
        using Process other = Process.Start(new ProcessStartInfo("flock", ["--exclusive", temp.Folder.LockPath, "sh", "-c", "echo held; read x"])
        {
            RedirectStandardInput = true,
            RedirectStandardOutput = true,
        })!;
        Assert.Equal("held", other.StandardOutput.ReadLine());

        StorageException refused = Assert.Throws<StorageException>(() => new ClassStore(temp.Folder, temp.Clock));

        Assert.Contains(temp.Folder.Path, refused.Message, StringComparison.Ordinal);
        Assert.Contains("--data", refused.Message, StringComparison.Ordinal);
        other.StandardInput.WriteLine();
        other.WaitForExit();
        temp.Reopen();
    }

    [Fact]
    public void Open_TwiceInOneProcess_Throws()
    {
        using TempStore temp = new();
        Assert.Throws<StorageException>(() => new ClassStore(temp.Folder, temp.Clock));
    }

    // As where the folder belongs to somebody else: it is not said to be in use.
    [Fact]
    public void Open_FolderThatCannotBeHeld_SaysThatItCannotBeWrittenTo()
    {
        using TempStore temp = new();
        DataFolder folder = DataFolder.At(temp.PathBeside("others"));
        Directory.CreateDirectory(folder.LockPath);

        StorageException refused = Assert.Throws<StorageException>(() => new ClassStore(folder, temp.Clock));

        Assert.StartsWith($"The data folder {folder.Path} cannot be written to: ", refused.Message, StringComparison.Ordinal);
        Assert.EndsWith("Give another one with --data DIR.", refused.Message, StringComparison.Ordinal);
        Assert.False(refused.FolderInUse);
    }

    [Fact]
    public void Open_FolderThatIsAFile_SaysSo()
    {
        using TempStore temp = new();
        string path = temp.PathBeside("a-file");
        File.WriteAllText(path, "");
        StorageException refused = Assert.Throws<StorageException>(() => DataFolder.At(path));
        Assert.Contains(path, refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Open_DatabaseThatIsNoDatabase_SaysWhichFile()
    {
        using TempStore temp = new();
        temp.Store.Dispose();
        File.WriteAllText(temp.Folder.DatabasePath, new string('x', 20_000));
        StorageException refused = Assert.Throws<StorageException>(() => new ClassStore(temp.Folder, temp.Clock));
        Assert.StartsWith($"The database {temp.Folder.DatabasePath} cannot be opened: ", refused.Message, StringComparison.Ordinal);
        Assert.EndsWith(
            $"To go back to a backup, stop the server and run: tying restore FILE --data \"{temp.Folder.Path}\" (there is none in its own folder). "
            + "Or begin anew in another folder, with --data DIR.",
            refused.Message, StringComparison.Ordinal);
        File.Delete(temp.Folder.DatabasePath);
        temp.Reopen();
    }

    [Fact]
    public void Add_WithoutClosing_IsReadByWhoeverOpensACopyOfTheFiles()
    {
        using TempStore temp = new();
        temp.Store.Attempts.Add("p1", "keel-03", "kept before the power went", Grades.Failed);

        using ClassStore reopened = new(temp.CopyAsKilled(), temp.Clock);

        Assert.Equal("kept before the power went", Assert.Single(reopened.Attempts.Of("p1", "keel-03")).AnswerText);
    }

    [Fact]
    public void Folder_OnUnix_IsItsOwnersAlone()
    {
        if (OperatingSystem.IsWindows()) return;
        using TempStore temp = new();
        const UnixFileMode others = UnixFileMode.GroupRead | UnixFileMode.GroupWrite | UnixFileMode.GroupExecute
            | UnixFileMode.OtherRead | UnixFileMode.OtherWrite | UnixFileMode.OtherExecute;
        string[] paths = [temp.Folder.Path, temp.Folder.KeysPath, temp.Folder.DatabasePath, temp.Folder.LogPath];
        foreach (string path in paths) Assert.Equal(UnixFileMode.None, File.GetUnixFileMode(path) & others);
        // And its owner's without being root.
        Assert.Equal(UnixFileMode.UserRead | UnixFileMode.UserWrite, File.GetUnixFileMode(temp.Folder.DatabasePath));
    }
}
