using TyingClass.Web.Classes;

namespace TyingClass.Web.Figures;

/// <summary>Times as words, by this server's clock and zone.</summary>
public sealed class TimeText(TimeProvider time)
{
    public string When(DateTimeOffset at) => TimeWords.Moment(at, time.LocalTimeZone);

    /// <summary>"3 days": how long something has waited.</summary>
    public string Since(DateTimeOffset at) => TimeWords.Span(time.GetUtcNow() - at);

    /// <summary>Whole days until something in the trash is gone; never below 0.</summary>
    public int DaysLeft(DateTimeOffset trashedAt, int days) => Math.Max(0, (int)Math.Ceiling((trashedAt.AddDays(days) - time.GetUtcNow()).TotalDays));
}
