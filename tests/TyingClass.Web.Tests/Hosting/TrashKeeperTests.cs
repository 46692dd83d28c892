using Microsoft.Extensions.Logging.Abstractions;
using Microsoft.Extensions.Time.Testing;
using TyingClass.Storage;
using TyingClass.Storage.BenchLog;
using TyingClass.Storage.Files;
using TyingClass.Storage.Patterns;
using TyingClass.Storage.People;
using TyingClass.Web.Hosting;
using Xunit;

namespace TyingClass.Web.Tests.Hosting;

/// <summary>The daily round of a server that is never stopped.</summary>
public sealed class TrashKeeperTests : IDisposable
{
    private static readonly TimeSpan Patience = TimeSpan.FromMinutes(1);

    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("tying-class-keeper-");
    private readonly FakeTimeProvider _clock = new(new DateTimeOffset(2026, 1, 14, 19, 30, 0, TimeSpan.Zero));

    [Fact]
    public async Task Round_AfterThirtyDays_DeletesForGoodAndNotBefore()
    {
        using ClassStore store = new(DataFolder.At(_folder.FullName), _clock);
        Person wren = store.Accounts.Join(store.Classes.Create("teacher").Code, "Wren", "hash").Person!;
        Person heron = store.Accounts.Join(store.Classes.All()[0].Code, "Heron", "hash").Person!;
        Pattern pattern = store.Patterns.Create(wren.Id, "Mill Candle", "recipe: Mill Candle\n");
        LogEntry entry = store.BenchLog.Add(wren.Id, null, new TiedFly("Mill Candle", "", FlySource.Text, null, 0), new Seen { MassKg = 0.001 },
            new Foreseen(0, "point up", 0.001, null, "engine"), "");
        GuestMove move = store.GuestMoves.MoveInto(store.People.AddGuest().Guest.Id, wren.Id)!;
        store.Patterns.Trash(pattern.Id, wren.Id);
        store.BenchLog.Trash(entry.Id, wren.Id);
        store.Trash.Remove(heron.Id);
        using TrashKeeper keeper = new(store, _clock, NullLogger<TrashKeeper>.Instance);
        await keeper.StartAsync(TestContext.Current.CancellationToken);

        for (int day = 1; day <= 29; day++) _clock.Advance(TimeSpan.FromDays(1));
        await Task.Delay(200, TestContext.Current.CancellationToken);
        Assert.NotNull(store.Patterns.Find(pattern.Id));
        Assert.NotNull(store.BenchLog.Find(entry.Id));
        Assert.NotNull(store.People.Find(heron.Id));
        Assert.NotNull(store.GuestMoves.Find(move.Id));

        for (int day = 30; day <= 31; day++) _clock.Advance(TimeSpan.FromDays(1));
        await UntilAsync(() => store.Patterns.Find(pattern.Id) is null && store.BenchLog.Find(entry.Id) is null && store.People.Find(heron.Id) is null);
        Assert.Null(store.GuestMoves.Find(move.Id));
        Assert.NotNull(store.People.Find(wren.Id));
        await keeper.StopAsync(TestContext.Current.CancellationToken);
    }

    public void Dispose() => _folder.Delete(recursive: true);

    // The round runs on another thread: it is waited for, by a real clock.
    private static async Task UntilAsync(Func<bool> happened)
    {
        using CancellationTokenSource patience = new(Patience);
        while (!happened()) await Task.Delay(20, patience.Token);
    }
}
