using LiteDB;
using TyingClass.Storage.Files;
using Xunit;

namespace TyingClass.Storage.Tests.Files;

public sealed class DatabaseTests : IDisposable
{
    private readonly DirectoryInfo _directory = Directory.CreateTempSubdirectory("tying-class-database-");
    private readonly Database _database;

    public DatabaseTests() =>
        _database = new Database(DataFolder.At(Path.Combine(_directory.FullName, "data")), db => db.Records("flies").EnsureIndex("name", "$.name"));

    [Fact]
    public void Write_DiskFailsHalfway_KeepsNothingAndTheNextWriteWorks()
    {
        Insert("before");

        Assert.Throws<StorageException>(() => _database.Write<bool>(db =>
        {
            db.Records("flies").Insert(new BsonDocument { ["name"] = "half" });
            throw new IOException("No space left on device");
        }));

        Insert("after");
        Assert.Equal(["after", "before"], Names());
    }

    [Fact]
    public void Write_WorkThrows_RollsBackAndPassesTheErrorOn()
    {
        Assert.Throws<InvalidOperationException>(() => _database.Write<bool>(db =>
        {
            db.Records("flies").Insert(new BsonDocument { ["name"] = "half" });
            throw new InvalidOperationException("no");
        }));
        Assert.Empty(Names());
    }

    [Fact]
    public void Write_Returned_LogOnDiskHoldsIt()
    {
        Insert("needle-in-the-log");
        string files = string.Concat(Directory.GetFiles(Path.Combine(_directory.FullName, "data"), "class*.db").Select(ReadShared));
        Assert.Contains("needle-in-the-log", files, StringComparison.Ordinal);
    }

    [Fact]
    public void Write_MoreThanTheLogMayHold_FoldsTheLogIn()
    {
        string big = new('x', 200_000);
        for (int i = 0; i < 60; i++) Insert(big + i);
        Assert.InRange(new FileInfo(Path.Combine(_directory.FullName, "data", "class-log.db")).Length, 0, 9 << 20);
        Assert.Equal(60, Names().Count);
    }

    [Fact]
    public void Dead_InstanceWithATransactionUnderWay_KnowsWhereItIs()
    {
        using LiteDatabase file = DatabaseFile.OpenFile(Path.Combine(_directory.FullName, "other.db"));
        file.GetCollection("flies").Insert(new BsonDocument { ["name"] = "before" });
        Assert.Equal(0, Dead.Quiet(file));
        file.BeginTrans();
        file.GetCollection("flies").Insert(new BsonDocument { ["name"] = "under way" });
        Assert.Equal(1, Dead.Quiet(file));
        file.Commit();
    }

    [Fact]
    public void Delete_OfNoId_IsNothingAndNoDamage()
    {
        Insert("before");
        Assert.False(_database.Write(db => db.Records("flies").Delete(BsonValue.Null)));
        Assert.True(_database.Write(db => db.Records("flies").Delete(db.Records("flies").Ids()[0])));
        Assert.Empty(_database.Damage.Lines);
    }

    /// <summary>LiteDB closes an instance whose disk failed, whoever is in it: that is a fault of the disk, and the file itself may be whole.</summary>
    [Fact]
    public void Records_InstanceThatIsClosed_IsNoDamageOfTheFile()
    {
        OpenData closed = new(DatabaseFile.OpenFile(Path.Combine(_directory.FullName, "other.db")), _database.Damage);
        closed.Records("flies").Insert(new BsonDocument { ["name"] = "before" });
        closed.Dispose();
        Assert.Throws<ObjectDisposedException>(() => closed.Records("flies").FindAll());
        Assert.Throws<IOException>(() => DatabaseFile.RollBack(closed));
    }

    [Fact]
    public void Read_Disposed_Throws()
    {
        _database.Dispose();
        Assert.Throws<ObjectDisposedException>(() => Names());
    }

    public void Dispose()
    {
        _database.Dispose();
        _directory.Delete(recursive: true);
    }

    private static string ReadShared(string path)
    {
        using FileStream file = new(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite);
        using StreamReader reader = new(file, System.Text.Encoding.Latin1);
        return reader.ReadToEnd();
    }

    // The index entry is the short name: a whole fly would not fit an index key.
    private void Insert(string name) => _database.Write(db =>
        db.Records("flies").Insert(new BsonDocument { ["name"] = name[..Math.Min(20, name.Length)], ["text"] = name }));

    private List<string> Names() =>
        _database.Read(db => db.Records("flies").FindAll().Select(d => d["name"].AsString).Order(StringComparer.Ordinal).ToList());
}
