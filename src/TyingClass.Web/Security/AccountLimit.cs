using System.Threading.RateLimiting;

namespace TyingClass.Web.Security;

/// <summary>Slows down guessing at one account from many addresses.</summary>
public sealed class AccountLimit : IDisposable
{
    public const int Tries = 10;
    public const int Minutes = 5;

    private readonly PartitionedRateLimiter<string> limiter = PartitionedRateLimiter.Create<string, string>(name =>
        RateLimitPartition.GetFixedWindowLimiter(name, _ => new FixedWindowRateLimiterOptions { PermitLimit = Tries, Window = TimeSpan.FromMinutes(Minutes) }));

    public bool MayTry(string name)
    {
        using RateLimitLease lease = limiter.AttemptAcquire(name.Trim().ToUpperInvariant());
        return lease.IsAcquired;
    }

    public void Dispose() => limiter.Dispose();
}
