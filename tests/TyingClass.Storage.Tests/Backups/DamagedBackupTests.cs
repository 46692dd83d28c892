using System.IO.Compression;
using TyingClass.Storage.Backups;
using Xunit;

namespace TyingClass.Storage.Tests.Backups;

/// <summary>Files that are no whole backup.</summary>
public sealed class DamagedBackupTests : IDisposable
{
    private readonly TempStore _temp = new();

    public void Dispose() => _temp.Dispose();

    /// <summary>Each is told by what is wrong with it, for the person who tried it.</summary>
    [Theory]
    [InlineData("cut short", "It is not a backup made by TyingClass, or only a part of one: ")]
    [InlineData("one byte changed", "It ")]
    [InlineData("no zip at all", "It is not a backup made by TyingClass, or only a part of one: ")]
    [InlineData("another zip", "It is not a backup made by TyingClass.")]
    [InlineData("without data", "It is not a backup made by TyingClass.")]
    [InlineData("list empty", "Its list of contents is empty.")]
    [InlineData("list altered", "It does not hold what its list of contents says.")]
    [InlineData("of a later kind", "It was made by a newer TyingClass than this one.")]
    [InlineData("data exchanged", "It was damaged after it was made: the checksum does not agree.")]
    [InlineData("photo gone", "The photo a.jpg of its list is missing.")]
    [InlineData("photo exchanged", "The photo a.jpg was damaged.")]
    [InlineData("photo elsewhere", "The photo ../a.jpg of its list is missing.")]
    public void Restore_DamagedFile_IsRefusedInWordsAndChangesNothing(string damage, string said)
    {
        _temp.Store.Attempts.Add("p1", "keel-03", "still here", Grades.Passed);
        File.WriteAllText(Path.Combine(_temp.Folder.PhotosPath, "a.jpg"), "a photo");
        string path = _temp.PathBeside("backup.zip");
        _temp.Store.Backup(path);
        Damage(path, damage);
        _temp.Store.Dispose();
        string[] before = Directory.GetFileSystemEntries(_temp.Folder.Path);

        BackupDamagedException refused =
            Assert.Throws<BackupDamagedException>(() => Restoring.Restore(_temp.Folder, path, _temp.Clock.GetUtcNow()));

        Assert.StartsWith(said, refused.Message, StringComparison.Ordinal);
        Assert.Equal(before.Order(), Directory.GetFileSystemEntries(_temp.Folder.Path).Order());
        _temp.Reopen();
        Assert.Equal("still here", Assert.Single(_temp.Store.Attempts.Of("p1", "keel-03")).AnswerText);
    }

    private static void Damage(string path, string damage)
    {
        byte[] bytes = File.ReadAllBytes(path);
        switch (damage)
        {
            case "cut short":
                File.WriteAllBytes(path, bytes[..(bytes.Length / 2)]);
                break;
            case "one byte changed":
                // In the head of what was packed. Farther on stand pages of zeros, where another bit can unpack to the very same file, and is no damage.
                bytes[90] ^= 0x10;
                File.WriteAllBytes(path, bytes);
                break;
            case "no zip at all":
                File.WriteAllText(path, "a shopping list");
                break;
            case "another zip":
                File.Delete(path);
                using (ZipArchive zip = ZipFile.Open(path, ZipArchiveMode.Create)) zip.CreateEntry("holiday.jpg");
                break;
            case "list altered":
                Rewrite(path, "contents.json", text => text.Replace("\"attempts\":1", "\"attempts\":2", StringComparison.Ordinal));
                break;
            case "list empty":
                Rewrite(path, "contents.json", _ => "null");
                break;
            case "of a later kind":
                Rewrite(path, "contents.json", text => text.Replace("\"Format\":1", "\"Format\":2", StringComparison.Ordinal));
                break;
            case "photo elsewhere":
                Rewrite(path, "contents.json", text => text.Replace("\"a.jpg\"", "\"../a.jpg\"", StringComparison.Ordinal));
                // Packed, too, where the list says.
                using (ZipArchive zip = ZipFile.Open(path, ZipArchiveMode.Update))
                using (StreamWriter photo = new(zip.CreateEntry("photos/../a.jpg").Open())) photo.Write("a photo");
                break;
            case "photo exchanged":
                Rewrite(path, "photos/a.jpg", _ => "another photo");
                break;
            case "photo gone":
                Rewrite(path, "photos/a.jpg", _ => null);
                break;
            case "data exchanged":
                Rewrite(path, "class.db", _ => "other data");
                break;
            case "without data":
                Rewrite(path, "class.db", _ => null);
                break;
            default:
                throw new ArgumentOutOfRangeException(nameof(damage), damage, null);
        }
    }

    /// <param name="change">Null takes it out.</param>
    internal static void Rewrite(string path, string entry, Func<string, string?> change)
    {
        using ZipArchive zip = ZipFile.Open(path, ZipArchiveMode.Update);
        string text;
        using (StreamReader reader = new(zip.GetEntry(entry)!.Open())) text = reader.ReadToEnd();
        zip.GetEntry(entry)!.Delete();
        if (change(text) is not { } changed) return;
        using StreamWriter writer = new(zip.CreateEntry(entry).Open());
        writer.Write(changed);
    }
}
