using TyingClass.Storage;
using TyingClass.Storage.Backups;
using TyingClass.Storage.Files;

namespace TyingClass.Web.Hosting;

/// <summary>Answers the command line, which may not open the database while this server has it.</summary>
internal sealed partial class BackupAnswers(ClassStore store, ProgramFolders folders, TimeProvider time, ILogger<BackupAnswers> log) : BackgroundService
{
    // Longer than any command line waits, so that a note being answered is never swept away.
    private static readonly TimeSpan Patience = TimeSpan.FromMinutes(15);

    protected override async Task ExecuteAsync(CancellationToken stoppingToken)
    {
        using PeriodicTimer timer = new(BackupRequests.LookEvery, time);
        while (await timer.WaitForNextTickAsync(stoppingToken))
        {
            try
            {
                BackupRequests.Answer(folders.Data, store.Backup, time.GetUtcNow(), Patience);
            }
            catch (Exception e) when (e is IOException or UnauthorizedAccessException or StorageException)
            {
                Failed(e);
            }
            catch (ObjectDisposedException)
            {
                // The host was thrown away without having been stopped: there is nothing left to back up.
                return;
            }
        }
    }

    [LoggerMessage(LogLevel.Warning, "A backup asked for from the command line could not be made.")]
    private partial void Failed(Exception why);
}
