using LiteDB;
using Microsoft.Extensions.Time.Testing;
using TyingClass.Storage.Files;
using Xunit;

namespace TyingClass.Storage.Tests.Files;

/// <summary>A real disk that fills up: reading goes on, writing says so, and nothing acknowledged is lost.</summary>
public sealed class FullDiskTests : IDisposable
{
    private readonly FakeTimeProvider _clock = new();
    private readonly SmallDisk _disk = new(8);

    private Database _database;

    public FullDiskTests() => _database = Open();

    [Fact]
    public void Read_DiskFilledUpAndAWriteFailed_GoesOn()
    {
        List<string> kept = FillByWriting();
        Assert.Equal(kept, Names());
        Assert.Throws<StorageException>(() => Insert("one more"));
        Assert.Equal(kept, Names());
    }

    [Fact]
    public void Write_RoomAgain_IsTakenAtOnceAndNothingAcknowledgedIsLost()
    {
        List<string> kept = FillByWriting();
        Assert.Equal(kept, Names());
        _disk.Empty();
        Insert("zz after");
        Assert.Equal([.. kept, "zz after"], Names());
        _database.Dispose();
        _database = Open();
        Assert.Equal([.. kept, "zz after"], Names());
    }

    [Fact]
    public void Read_RoomAgainAndRested_OpensTheWholeFileAgain()
    {
        List<string> kept = FillByWriting();
        Names();
        Assert.False(_database.TakesWrites);
        _disk.Empty();
        _clock.Advance(TimeSpan.FromSeconds(3));
        Assert.True(_database.TakesWrites);
        Assert.Equal(kept, Names());
        Assert.Equal(kept, Names());
        Insert("zz after");
    }

    [Fact]
    public void Open_DiskStillFull_IsRefusedInWordsAndLosesNothing()
    {
        List<string> kept = FillByWriting();
        _database.Dispose();
        StorageException? refused = null;
        try
        {
            _database = Open();
        }
        catch (StorageException e)
        {
            refused = e;
        }

        Assert.True(refused is null || refused.Message.Contains("room", StringComparison.Ordinal), refused?.Message);
        _disk.Empty();
        if (refused is not null) _database = Open();
        Assert.Equal(kept, Names());
    }

    [Fact]
    public void Write_FolderMovedAway_IsRefusedAndNotThereWhenItIsBack()
    {
        Insert("before");
        string home = Path.Combine(_disk.Path, "data"), away = Path.Combine(_disk.Path, "away");
        Directory.Move(home, away);
        Assert.Throws<StorageException>(() => Insert("while away"));
        Directory.Move(away, home);
        Assert.Equal(["before"], Names());
    }

    public void Dispose()
    {
        _database.Dispose();
        _disk.Dispose();
    }

    private Database Open() =>
        new(DataFolder.At(Path.Combine(_disk.Path, "data")), db => db.Records("flies").EnsureIndex("name", "$.name"), time: _clock);

    /// <summary>Leaves some room, fills it with answers until one is refused, and says which were acknowledged.</summary>
    private List<string> FillByWriting()
    {
        List<string> kept = [];
        for (int i = 0; i < 20; i++) Add();
        // All that is left but the little that the next answers fill.
        _disk.Fill();
        for (int i = 0; i < 2000; i++)
        {
            try
            {
                Add();
            }
            catch (StorageException)
            {
                return kept;
            }
        }

        throw new InvalidOperationException("The disk took everything.");

        void Add()
        {
            string name = $"fly {kept.Count:0000}";
            Insert(name);
            kept.Add(name);
        }
    }

    private void Insert(string name) =>
        _database.Write(db => db.Records("flies").Insert(new BsonDocument { ["name"] = name, ["text"] = new string('x', 3000) }));

    private List<string> Names() =>
        _database.Read(db => db.Records("flies").FindAll().Select(d => d["name"].AsString).Order(StringComparer.Ordinal).ToList());
}
