using System.Threading.RateLimiting;

namespace TyingClass.Web.Security;

/// <summary>Slows down guessing at one account from many addresses, and by one account at guests' marks.</summary>
public sealed class AccountLimit : IDisposable
{
    public const int Tries = 10;
    public const int Minutes = 5;

    /// <summary>More, because moving one guest's work takes two: a class is brought in on one evening.</summary>
    public const int MarkTries = 40;

    private readonly PartitionedRateLimiter<string> _names = Limiter(Tries);
    private readonly PartitionedRateLimiter<string> _marks = Limiter(MarkTries);

    public bool MayTry(string name) => Take(_names, name.Trim().ToUpperInvariant());

    /// <summary>One more guest's mark typed by this person.</summary>
    public bool MayTryMark(string personId) => Take(_marks, personId);

    public void Dispose()
    {
        _names.Dispose();
        _marks.Dispose();
    }

    private static bool Take(PartitionedRateLimiter<string> limiter, string key)
    {
        using RateLimitLease lease = limiter.AttemptAcquire(key);
        return lease.IsAcquired;
    }

    private static PartitionedRateLimiter<string> Limiter(int tries) => PartitionedRateLimiter.Create<string, string>(key =>
        RateLimitPartition.GetFixedWindowLimiter(key, _ => new FixedWindowRateLimiterOptions { PermitLimit = tries, Window = TimeSpan.FromMinutes(Minutes) }));
}
