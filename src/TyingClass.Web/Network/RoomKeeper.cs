namespace TyingClass.Web.Network;

/// <summary>Opens the room once the server listens, and follows the adapters: a laptop that wakes on the club's Wi-Fi has another address.</summary>
internal sealed class RoomKeeper(RoomDoor door, IHostApplicationLifetime lifetime, TimeProvider time) : BackgroundService
{
    private static readonly TimeSpan Round = TimeSpan.FromSeconds(10);

    protected override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        TaskCompletionSource started = new(TaskCreationOptions.RunContinuationsAsynchronously);
        await using CancellationTokenRegistration listening = lifetime.ApplicationStarted.Register(started.SetResult);
        await started.Task.WaitAsync(stoppingToken);
        using PeriodicTimer timer = new(Round, time);
        do
        {
            try
            {
                await door.ApplyAsync();
            }
            catch (Exception e) when (e is Storage.Files.StorageException or ObjectDisposedException)
            {
                // Whoever opens a page is told what is wrong with the disk; the next round tries again.
            }
        }
        while (await timer.WaitForNextTickAsync(stoppingToken));
    }
}
