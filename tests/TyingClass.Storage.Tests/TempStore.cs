using LiteDB;
using Microsoft.Extensions.Time.Testing;
using TyingClass.Storage.Attempts;
using TyingClass.Storage.Files;

namespace TyingClass.Storage.Tests;

/// <summary>A real store in a folder of its own, gone afterward.</summary>
internal sealed class TempStore : IDisposable
{
    private readonly DirectoryInfo _directory = Directory.CreateTempSubdirectory("tying-class-store-");

    public TempStore()
    {
        Folder = DataFolder.At(Path.Combine(_directory.FullName, "data"));
        Store = new ClassStore(Folder, Clock);
    }

    public FakeTimeProvider Clock { get; } = new(new DateTimeOffset(2026, 1, 14, 19, 30, 0, TimeSpan.Zero));

    public DataFolder Folder { get; }

    public ClassStore Store { get; private set; }

    public string PathBeside(string name) => Path.Combine(_directory.FullName, name);

    public void Reopen()
    {
        Store.Dispose();
        Store = new ClassStore(Folder, Clock);
    }

    /// <summary>"answer 7 of Wren", by p1 at keel-03, which fails.</summary>
    public Attempt AddAnswer(int number) => Store.Attempts.Add("p1", "keel-03", $"answer {number} of Wren", Grades.Failed);

    /// <summary>Another disk than the one that was written to: changed with the server stopped and the log folded in, then opened again.</summary>
    public void ChangeFile(Action<byte[]> change)
    {
        Store.Dispose();
        byte[] bytes = File.ReadAllBytes(Folder.DatabasePath);
        change(bytes);
        File.WriteAllBytes(Folder.DatabasePath, bytes);
        Store = new ClassStore(Folder, Clock);
    }

    /// <summary>As another program kept them: each record of a collection changed with the server stopped, and sealed again; then opened again.</summary>
    public void ChangeRecords(string collection, Action<BsonDocument> change)
    {
        Store.Dispose();
        using (LiteDatabase raw = DatabaseFile.OpenFile(Folder.DatabasePath))
        {
            foreach (BsonDocument record in raw.GetCollection(collection).FindAll().ToList())
            {
                change(record);
                raw.GetCollection(collection).Update(Checksum.Put(collection, record));
            }

            raw.Checkpoint();
        }

        Store = new ClassStore(Folder, Clock);
    }

    /// <summary>What a kill leaves behind, as it is now: nothing is closed or folded in.</summary>
    public DataFolder CopyAsKilled()
    {
        DataFolder copy = DataFolder.At(PathBeside("killed"));
        foreach (string path in new[] { Folder.DatabasePath, Folder.LogPath, Folder.CountPath })
        {
            using FileStream from = new(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite);
            using FileStream to = File.Create(Path.Combine(copy.Path, Path.GetFileName(path)));
            from.CopyTo(to);
        }

        return copy;
    }

    public void Dispose()
    {
        Store.Dispose();
        _directory.Delete(recursive: true);
    }
}
