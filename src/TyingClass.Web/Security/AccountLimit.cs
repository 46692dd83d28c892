using System.Threading.RateLimiting;

namespace TyingClass.Web.Security;

/// <summary>Slows down guessing at guests' marks by one account.</summary>
public sealed class AccountLimit : IDisposable
{
    public const int Minutes = 5;

    /// <summary>More, because moving one guest's work takes two: a class is brought in on one evening.</summary>
    public const int MarkTries = 40;

    private readonly PartitionedRateLimiter<string> _marks = Limiter(MarkTries);

    /// <summary>One more guest's mark typed by this person.</summary>
    public bool MayTryMark(string personId) => Take(_marks, personId);

    public void Dispose() => _marks.Dispose();

    private static bool Take(PartitionedRateLimiter<string> limiter, string key)
    {
        using RateLimitLease lease = limiter.AttemptAcquire(key);
        return lease.IsAcquired;
    }

    private static PartitionedRateLimiter<string> Limiter(int tries) => PartitionedRateLimiter.Create<string, string>(key =>
        RateLimitPartition.GetFixedWindowLimiter(key, _ => new FixedWindowRateLimiterOptions { PermitLimit = tries, Window = TimeSpan.FromMinutes(Minutes) }));
}
