using TyingClass.Web.Classes;

namespace TyingClass.Web.Figures;

/// <summary>Times as words, on the clock of the class that is open: every time on a page is of one clock. Who has no class has the server's.</summary>
public sealed class TimeText(TimeProvider time, ClassAccess access)
{
    public TimeZoneInfo Zone => access.Current?.Zone ?? time.LocalTimeZone;

    public string When(DateTimeOffset at) => TimeWords.Moment(at, Zone);

    /// <summary>"3 days": how long something has waited.</summary>
    public string Since(DateTimeOffset at) => TimeWords.Span(time.GetUtcNow() - at);

    /// <summary>Whole days until something in the trash is gone; never below 0.</summary>
    public int DaysLeft(DateTimeOffset trashedAt, int days) => Math.Max(0, (int)Math.Ceiling((trashedAt.AddDays(days) - time.GetUtcNow()).TotalDays));
}
