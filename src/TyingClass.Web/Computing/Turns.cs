using System.Threading.RateLimiting;

namespace TyingClass.Web.Computing;

/// <summary>
/// Whose fly is computed now: so many at a time as the machine has cores, first come first served, and nobody more than half of them. What one asker
/// sends beyond that waits in that asker's own line, so that sixty links of one browser do not stand before the others' answers.
/// </summary>
public sealed class Turns : IDisposable
{
    /// <summary>How many one asker may have waiting.</summary>
    public const int WaitingEach = 12;

    private const int WaitingTogether = 200;

    private readonly PartitionedRateLimiter<string> _each;
    private readonly ConcurrencyLimiter _together;

    /// <param name="atOnce">Calculations at one time, 2 or more: one asker never has them all.</param>
    public Turns(int atOnce)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(atOnce, 2);
        _each = PartitionedRateLimiter.Create<string, string>(asker => RateLimitPartition.GetConcurrencyLimiter(asker, _ => Line(atOnce / 2, WaitingEach)));
        _together = new ConcurrencyLimiter(Line(atOnce, WaitingTogether));
    }

    /// <summary>How long one calculation may take: many times what any recipe within the limits takes on an old laptop.</summary>
    public TimeSpan MostTime { get; init; } = TimeSpan.FromSeconds(60);

    /// <summary>How long anyone waits for a turn.</summary>
    public TimeSpan MostWaiting { get; init; } = TimeSpan.FromSeconds(60);

    public static Turns ForThisMachine() => new(Math.Max(2, Environment.ProcessorCount));

    /// <summary>Waits for a turn, which ends when it is disposed of. Null when the line is full.</summary>
    /// <exception cref="OperationCanceledException">The asker left.</exception>
    public async Task<IDisposable?> TakeAsync(string asker, CancellationToken left)
    {
        RateLimitLease own = await _each.AcquireAsync(asker, 1, left);
        if (!own.IsAcquired) return null;
        try
        {
            RateLimitLease shared = await _together.AcquireAsync(1, left);
            if (shared.IsAcquired) return new Turn(own, shared);
        }
        catch (OperationCanceledException)
        {
            own.Dispose();
            throw;
        }

        own.Dispose();
        return null;
    }

    public void Dispose()
    {
        _each.Dispose();
        _together.Dispose();
    }

    private static ConcurrencyLimiterOptions Line(int atOnce, int waiting) =>
        new() { PermitLimit = atOnce, QueueLimit = waiting, QueueProcessingOrder = QueueProcessingOrder.OldestFirst };

    private sealed class Turn(RateLimitLease own, RateLimitLease shared) : IDisposable
    {
        public void Dispose()
        {
            shared.Dispose();
            own.Dispose();
        }
    }
}
