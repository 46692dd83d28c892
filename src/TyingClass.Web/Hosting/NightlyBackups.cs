using TyingClass.Storage;
using TyingClass.Storage.Backups;

namespace TyingClass.Web.Hosting;

/// <summary>
/// A backup every night, read back and counted, into the data folder. A server that only runs on class evenings makes one soon after its start, if the last is
/// older than most of a day.
/// </summary>
internal sealed class NightlyBackups(ClassStore store, ProgramFolders folders, TimeProvider time, ILogger<NightlyBackups> log)
    : Fireproof(TimeSpan.FromMinutes(30), time, log)
{
    private const int Night = 3;

    private static readonly TimeSpan Fresh = TimeSpan.FromHours(20);

    private readonly TimeProvider _time = time;

    // The first pages of an evening come before it.
    protected override TimeSpan First => TimeSpan.FromMinutes(5);

    protected override void Round(CancellationToken stop)
    {
        DateTimeOffset now = _time.GetUtcNow();
        if (KeptBackups.LatestAt(folders.Data) is { } last && now - last is var age && age >= TimeSpan.Zero && !IsDue(age)) return;
        if (!store.IsEmpty) KeptBackups.Make(folders.Data, store.Backup, now);
    }

    // By night as soon as it may be; by day only where a night was missed.
    private bool IsDue(TimeSpan age) => age > TimeSpan.FromDays(1) || (age > Fresh && _time.GetLocalNow().Hour is >= Night and < Night + 2);
}
