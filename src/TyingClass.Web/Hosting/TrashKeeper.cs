using TyingClass.Storage;
using TyingClass.Storage.Files;

namespace TyingClass.Web.Hosting;

/// <summary>At the start and once a day: removes for good what has lain in the trash too long.</summary>
internal sealed class TrashKeeper(ClassStore store, TimeProvider time) : BackgroundService
{
    private static readonly TimeSpan Round = TimeSpan.FromDays(1);

    protected override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        using PeriodicTimer timer = new(Round, time);
        do
        {
            Empty();
        }
        while (await timer.WaitForNextTickAsync(stoppingToken));
    }

    private void Empty()
    {
        try
        {
            store.Trash.Empty();
            store.Patterns.EmptyTrash();
            store.BenchLog.EmptyTrash();
            store.BenchLog.SweepPhotos();
        }
        catch (Exception e) when (e is StorageException or IOException or UnauthorizedAccessException)
        {
            // A full disk is told to whoever saves something; the trash can wait a day.
        }
    }
}
