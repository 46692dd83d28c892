using System.Globalization;

namespace TyingClass.Web.Practice;

/// <summary>When a concept comes back, in words.</summary>
internal static class DueWords
{
    public static string Of(DateTimeOffset? due, DateTimeOffset now, TimeZoneInfo zone)
    {
        if (due is not { } at) return "not begun";
        if (at <= now) return "due now";
        int days = (Day(at) - Day(now)).Days;
        return days switch
        {
            0 => "back later today",
            1 => "back tomorrow",
            < 7 => string.Create(CultureInfo.InvariantCulture, $"back in {days} days"),
            _ => $"back on {TimeZoneInfo.ConvertTime(at, zone).ToString("MMM d", CultureInfo.InvariantCulture)}",
        };

        DateTime Day(DateTimeOffset t) => TimeZoneInfo.ConvertTime(t, zone).Date;
    }
}
