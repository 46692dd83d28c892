using TyingClass.Storage.BenchLog;
using TyingClass.Storage.Damages;
using TyingClass.Storage.Files;
using Xunit;

namespace TyingClass.Storage.Tests.Photos;

/// <summary>A photo that the disk gives back otherwise than it was written costs that photo: it is named, and nothing else.</summary>
public sealed class PhotoStoreTests : IDisposable
{
    private static readonly byte[] Jpeg = [.. Enumerable.Range(0, 5000).Select(i => (byte)(i * 7))];

    private readonly TempStore _temp = new();
    private readonly string _entry;

    public PhotoStoreTests()
    {
        TiedFly fly = new("Slate Minnow", "recipe: Slate Minnow\n", FlySource.Text, null, 0);
        _entry = _temp.Store.BenchLog.Add("wren", null, fly, new Seen { MassKg = 0.001 }, new Foreseen(0, "point up", 0.001, null, "3"), "").Id;
        Assert.True(_temp.Store.BenchLog.SetPhoto(_entry, "wren", Jpeg));
    }

    private string PhotoId => _temp.Store.BenchLog.Find(_entry)!.PhotoId!;

    private string PhotoPath => Path.Combine(_temp.Folder.PhotosPath, PhotoId + ".jpg");

    public void Dispose() => _temp.Dispose();

    [Fact]
    public void Find_BitFlipped_IsNotShownAndNamed()
    {
        Flip();
        Assert.Null(_temp.Store.Photos.Find(PhotoId));
        Assert.Contains(PhotoId, Assert.Single(_temp.Store.Damage.Lines), StringComparison.Ordinal);
        Assert.NotNull(_temp.Store.BenchLog.Find(_entry));
    }

    [Fact]
    public void Verify_BitFlippedOrFileGone_IsNamed()
    {
        _temp.Store.Verify(TestContext.Current.CancellationToken);
        Assert.Empty(_temp.Store.Damage.Lines);
        Flip();
        _temp.Store.Verify(TestContext.Current.CancellationToken);
        Assert.Contains("not what was written", Assert.Single(_temp.Store.Damage.Lines), StringComparison.Ordinal);
        File.Delete(PhotoPath);
        _temp.Store.Verify(TestContext.Current.CancellationToken);
        Assert.Contains("missing", _temp.Store.Damage.Lines[^1], StringComparison.Ordinal);
    }

    [Fact]
    public void Backup_WithADamagedPhoto_SaysSo()
    {
        Flip();
        Assert.Equal(1, _temp.Store.Backup(_temp.PathBeside("backup.zip")).Damaged);
    }

    [Fact]
    public void Verify_PhotoOfBeforeChecksums_GetsOneAndStaysTheSame()
    {
        string bare = PhotoId[..64];
        File.Move(PhotoPath, Path.Combine(_temp.Folder.PhotosPath, bare + ".jpg"));
        _temp.Store.Dispose();
        using (LiteDB.LiteDatabase raw = DatabaseFile.OpenFile(_temp.Folder.DatabasePath))
        {
            LiteDB.BsonDocument entry = raw.GetCollection("bench_log").FindAll().Single();
            entry["photoId"] = bare;
            raw.GetCollection("bench_log").Update(Checksum.Put("bench_log", entry));
        }

        _temp.Reopen();
        Assert.Equal(bare, PhotoId);
        Assert.Equal(Jpeg, _temp.Store.Photos.Find(bare));
        int version = _temp.Store.BenchLog.Find(_entry)!.Version;

        _temp.Store.Verify(TestContext.Current.CancellationToken);

        Assert.NotEqual(bare, PhotoId);
        Assert.Equal(Jpeg, _temp.Store.Photos.Find(PhotoId));
        Assert.Equal(version, _temp.Store.BenchLog.Find(_entry)!.Version);
        Flip();
        Assert.Null(_temp.Store.Photos.Find(PhotoId));
        Assert.Contains(_temp.Store.Damage.Lines, l => l.EndsWith(new Damage("photos", PhotoId, DamageKind.ChecksumDisagrees).Said, StringComparison.Ordinal));
    }

    private void Flip()
    {
        byte[] bytes = File.ReadAllBytes(PhotoPath);
        bytes[2500] ^= 0x10;
        File.WriteAllBytes(PhotoPath, bytes);
    }
}
