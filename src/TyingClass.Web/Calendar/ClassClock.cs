using System.Globalization;
using NodaTime;
using NodaTime.Text;
using NodaTime.TimeZones;
using TyingClass.Storage.Classes;

namespace TyingClass.Web.Calendar;

/// <summary>What the clocks do at a local time.</summary>
public enum ClockChange
{
    None,

    /// <summary>The hands jump over this time.</summary>
    Skipped,

    /// <summary>The hands pass this time twice.</summary>
    Twice,
}

/// <summary>The clock on the wall of a class: local times into instants and back, with the days on which clocks change.</summary>
public sealed class ClassClock
{
    private static readonly LocalDateTimePattern Form = LocalDateTimePattern.CreateWithInvariantCulture("uuuu-MM-dd'T'HH:mm");

    // As browsers without the field for dates, and people, type it.
    private static readonly LocalDateTimePattern[] Forms =
    [
        Form,
        LocalDateTimePattern.CreateWithInvariantCulture("uuuu-MM-dd'T'HH:mm:ss"),
        LocalDateTimePattern.CreateWithInvariantCulture("uuuu-MM-dd HH:mm"),
    ];

    private static readonly string[] KnownZones = [.. TimeZoneInfo.GetSystemTimeZones().Select(z => z.Id).Append("UTC")];

    private readonly DateTimeZone _zone;

    public ClassClock(ClassRoom room)
    {
        ArgumentNullException.ThrowIfNull(room);
        _zone = DateTimeZoneProviders.Tzdb.GetZoneOrNull(room.TimeZoneId) ?? DateTimeZone.Utc;
    }

    /// <summary>In order, the one in force always among them: not every zone that works is listed.</summary>
    public static IEnumerable<string> ZonesToChoose(string? inForce) =>
        KnownZones.Concat(inForce is null ? [] : [inForce]).Distinct().Order(StringComparer.Ordinal);

    /// <summary>"Europe/Berlin".</summary>
    public string ZoneId => _zone.Id;

    /// <summary>
    /// When something opens. A time the clocks skip moves on by as much as they do; of a time that comes twice, the first counts: nobody waits longer than the
    /// wall says.
    /// </summary>
    public DateTimeOffset Opening(DateTime local) => At(local, Resolvers.ReturnEarlier);

    /// <summary>When something is due. As <see cref="Opening"/>, but of a time that comes twice the second counts: nobody is late by the wall.</summary>
    public DateTimeOffset Due(DateTime local) => At(local, Resolvers.ReturnLater);

    public ClockChange ChangeAt(DateTime local) => _zone.MapLocal(LocalDateTime.FromDateTime(local)).Count switch
    {
        0 => ClockChange.Skipped,
        1 => ClockChange.None,
        _ => ClockChange.Twice,
    };

    public DateTime Local(DateTimeOffset time) => Instant.FromDateTimeOffset(time).InZone(_zone).ToDateTimeUnspecified();

    /// <summary>"Wed, Jan 14, 2026, 19:00".</summary>
    public string Say(DateTimeOffset time) => Say(Local(time));

    public static string Say(DateTime local) => local.ToString("ddd, MMM d, yyyy, HH:mm", CultureInfo.InvariantCulture);

    /// <summary>"Wed, Jan 14, 2026".</summary>
    public string Day(DateTimeOffset time) => Local(time).ToString("ddd, MMM d, yyyy", CultureInfo.InvariantCulture);

    /// <summary>As a date field holds it: "2026-01-14T19:00", empty for none.</summary>
    public static string Write(DateTime? local) => local is { } time ? Form.Format(LocalDateTime.FromDateTime(time)) : "";

    /// <param name="text">Blank for none.</param>
    /// <returns>False when it is neither blank nor a date with a time.</returns>
    public static bool TryRead(string? text, out DateTime? local)
    {
        local = null;
        if (string.IsNullOrWhiteSpace(text)) return true;
        foreach (LocalDateTimePattern pattern in Forms)
        {
            if (pattern.Parse(text.Trim()).TryGetValue(default, out LocalDateTime read) && read.Year is >= 2000 and <= 2200)
            {
                local = read.ToDateTimeUnspecified();
                return true;
            }
        }

        return false;
    }

    private DateTimeOffset At(DateTime local, AmbiguousTimeResolver ambiguous) =>
        _zone.ResolveLocal(LocalDateTime.FromDateTime(local), Resolvers.CreateMappingResolver(ambiguous, Resolvers.ReturnForwardShifted)).ToDateTimeOffset();
}
