using System.Globalization;
using TyingClass.Storage.People;
using TyingClass.Web.Calendar;

namespace TyingClass.Web.Classes;

/// <summary>Spans and moments as one says them.</summary>
public static class TimeWords
{
    /// <summary>"just now", "20 minutes", "3 hours", "12 days": whole units, rounded down.</summary>
    public static string Span(TimeSpan span) => span switch
    {
        { TotalMinutes: < 1 } => "under a minute",
        { TotalHours: < 1 } => Count((int)span.TotalMinutes, "minute"),
        { TotalDays: < 1 } => Count((int)span.TotalHours, "hour"),
        _ => Count((int)span.TotalDays, "day"),
    };

    public static string Ago(DateTimeOffset at, DateTimeOffset now) => now - at < TimeSpan.FromMinutes(5) ? "just now" : Span(now - at) + " ago";

    /// <summary>By the calendar, as one counts evenings: from Monday to Sunday is six days. "today", "yesterday", "6 days ago".</summary>
    public static string DaysAgo(ClassClock clock, DateTimeOffset at, DateTimeOffset now)
    {
        ArgumentNullException.ThrowIfNull(clock);
        return (clock.Local(now).Date - clock.Local(at).Date).Days switch
        {
            <= 0 => "today",
            1 => "yesterday",
            var days => Count(days, "day") + " ago",
        };
    }

    /// <summary>"3 days ago", "not here yet".</summary>
    public static string LastSeen(Person person, DateTimeOffset now)
    {
        ArgumentNullException.ThrowIfNull(person);
        return person.HasBeenHere ? Ago(person.LastSeenAt, now) : "not here yet";
    }

    /// <summary>"Jan 14, 19:30" on the clock of a zone.</summary>
    public static string Moment(DateTimeOffset at, TimeZoneInfo zone) =>
        TimeZoneInfo.ConvertTime(at, zone).ToString("MMM d, HH:mm", CultureInfo.InvariantCulture);

    public static string Day(DateOnly day) => day.ToString("dddd, MMMM d", CultureInfo.InvariantCulture);

    private static string Count(int count, string unit) => FormattableString.Invariant($"{count} {unit}{(count == 1 ? "" : "s")}");
}
