using System.Globalization;

namespace TyingClass.Web.Figures;

/// <summary>Times as words, in the server's own zone.</summary>
public sealed class TimeText(TimeProvider time)
{
    public string When(DateTimeOffset at) => TimeZoneInfo.ConvertTime(at, time.LocalTimeZone).ToString("MMM d, HH:mm", CultureInfo.InvariantCulture);

    /// <summary>"3 days": how long something has waited.</summary>
    public string Since(DateTimeOffset at)
    {
        TimeSpan wait = time.GetUtcNow() - at;
        return wait switch
        {
            { TotalMinutes: < 1 } => "under a minute",
            { TotalMinutes: < 60 } => Count((int)wait.TotalMinutes, "minute"),
            { TotalHours: < 24 } => Count((int)wait.TotalHours, "hour"),
            _ => Count((int)wait.TotalDays, "day"),
        };
    }

    /// <summary>Whole days until something in the trash is gone; never below 0.</summary>
    public int DaysLeft(DateTimeOffset trashedAt, int days) => Math.Max(0, (int)Math.Ceiling((trashedAt.AddDays(days) - time.GetUtcNow()).TotalDays));

    private static string Count(int number, string word) => $"{number.ToString(CultureInfo.InvariantCulture)} {word}{(number == 1 ? "" : "s")}";
}
