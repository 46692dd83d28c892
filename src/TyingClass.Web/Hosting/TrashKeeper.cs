using TyingClass.Storage;

namespace TyingClass.Web.Hosting;

/// <summary>At the start and once a day: removes for good what has lain in the trash too long, and what an import left that was cut off.</summary>
internal sealed class TrashKeeper(ClassStore store, TimeProvider time, ILogger<TrashKeeper> log) : Fireproof(TimeSpan.FromDays(1), time, log)
{
    protected override void Round(CancellationToken stop)
    {
        store.Slips.Sweep();
        store.Exchange.UndoUnfinished();
        // A record that cannot be read may be the one that names what else would be swept away.
        if (!store.Trash.MayBelieveClock() || !store.Damage.Lines.IsEmpty) return;
        store.Trash.Empty();
        store.Patterns.EmptyTrash();
        store.BenchLog.EmptyTrash();
        store.BenchLog.SweepPhotos();
    }
}
