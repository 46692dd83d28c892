using TyingClass.Storage.Files;

namespace TyingClass.Web.Hosting;

/// <summary>
/// Work in the background, round after round. Whatever goes wrong in one round is written down, and the next comes all the same: nothing that happens here
/// can end the server.
/// </summary>
internal abstract partial class Fireproof(TimeSpan every, TimeProvider time, ILogger log) : BackgroundService
{
    /// <summary>How long after the start the first round comes.</summary>
    protected virtual TimeSpan First => TimeSpan.Zero;

    protected abstract void Round(CancellationToken stop);

    protected sealed override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        // Not before the server has begun to start: a round may read much.
        await Task.Yield();
        if (First > TimeSpan.Zero) await Task.Delay(First, time, stoppingToken);
        using PeriodicTimer timer = new(every, time);
        do
        {
            try
            {
                Round(stoppingToken);
            }
            catch (OperationCanceledException) when (stoppingToken.IsCancellationRequested)
            {
                return;
            }
            catch (ObjectDisposedException)
            {
                // The host was thrown away without having been stopped: there is nothing left to work on.
                return;
            }
            catch (Exception e)
            {
                Failed(GetType().Name, e.Message, e is StorageException ? null : e);
            }
        }
        while (await timer.WaitForNextTickAsync(stoppingToken));
    }

    [LoggerMessage(LogLevel.Error, "{Work} went wrong this time and will be tried again: {Why}")]
    private partial void Failed(string work, string why, Exception? details);
}
