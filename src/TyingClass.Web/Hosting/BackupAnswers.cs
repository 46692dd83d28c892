using TyingClass.Storage;
using TyingClass.Storage.Backups;

namespace TyingClass.Web.Hosting;

/// <summary>Answers the command line, which may not open the database while this server has it.</summary>
internal sealed class BackupAnswers(ClassStore store, ProgramFolders folders, TimeProvider time, ILogger<BackupAnswers> log)
    : Fireproof(BackupRequests.LookEvery, time, log)
{
    // Longer than any command line waits, so that a note being answered is never swept away.
    private static readonly TimeSpan Patience = TimeSpan.FromMinutes(15);

    private readonly TimeProvider _time = time;

    protected override TimeSpan First => BackupRequests.LookEvery;

    protected override void Round(CancellationToken stop)
    {
        BackupRequests.Open(folders.Data);
        BackupRequests.Answer(folders.Data, store.Backup, _time.GetUtcNow(), Patience);
    }
}
