using TyingClass.Storage;

namespace TyingClass.Web.Hosting;

/// <summary>After the start and then every week: reads every record once, so that damage to what nobody opens is found. Says it on the console.</summary>
internal sealed partial class DamageWatch(ClassStore store, TimeProvider time, ILogger<DamageWatch> log) : Fireproof(TimeSpan.FromDays(7), time, log)
{
    private readonly ILogger _log = log;

    protected override TimeSpan First => TimeSpan.FromSeconds(20);

    public override Task StartAsync(CancellationToken cancellationToken)
    {
        foreach (string line in store.Damage.Lines) Found(_log, line, store.Damage.Path);
        store.Damage.Found += line => Found(_log, line, store.Damage.Path);
        return base.StartAsync(cancellationToken);
    }

    protected override void Round(CancellationToken stop) => store.Verify(stop);

    [LoggerMessage(LogLevel.Error, "Damage: {What} See {Path}; delete that file when it is dealt with.")]
    private static partial void Found(ILogger log, string what, string path);
}
