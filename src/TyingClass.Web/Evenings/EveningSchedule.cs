using System.Collections.Immutable;
using System.Globalization;
using TyingClass.Storage.Evenings;
using TyingClass.Web.Calendar;

namespace TyingClass.Web.Evenings;

/// <summary>One evening of a list of dates that is looked over before it counts.</summary>
/// <param name="Now">As it stands.</param>
/// <param name="Text">As it is to be, whatever was typed; empty for no date.</param>
/// <param name="Version">Of the evening as it was read.</param>
public sealed record ScheduleLine(int Number, DateTime? Now, string Text, int Version)
{
    public string Field => FormattableString.Invariant($"at-{Number}");

    public string VersionField => FormattableString.Invariant($"version-{Number}");

    public string? Error { get; init; }

    /// <summary>What the clocks do at that time.</summary>
    public string? Note { get; init; }

    public DateTime? Then => ClassClock.TryRead(Text, out DateTime? local) ? local : null;

    /// <summary>A date that stands there now would be lost.</summary>
    public bool Overwrites => Now is not null && Now != Then;
}

/// <summary>Dates for several evenings, typed or worked out, to be set all at once.</summary>
public sealed record EveningSchedule(ImmutableArray<ScheduleLine> Lines)
{
    public const int MostSkipped = 60;

    public bool HasErrors => Lines.Any(l => l.Error is not null);

    public int Overwritten => Lines.Count(l => l.Overwrites);

    /// <summary>One evening every so many days by the calendar, at the same time on the wall; a day to be skipped moves that evening, and all after it, on by
    /// one step.</summary>
    public static EveningSchedule Every(IEnumerable<EveningLine> evenings, DateTime first, int days, IReadOnlySet<DateOnly> skipped)
    {
        ArgumentNullException.ThrowIfNull(evenings);
        ArgumentNullException.ThrowIfNull(skipped);
        ImmutableArray<ScheduleLine>.Builder lines = ImmutableArray.CreateBuilder<ScheduleLine>();
        DateTime at = first;
        foreach (EveningLine evening in evenings)
        {
            while (skipped.Contains(DateOnly.FromDateTime(at))) at = at.AddDays(days);
            lines.Add(Line(evening, at));
            at = at.AddDays(days);
        }

        return new EveningSchedule(lines.ToImmutable());
    }

    /// <summary>Those after an evening that was moved, moved as far; those without a date stay without.</summary>
    public static EveningSchedule After(IEnumerable<EveningLine> evenings, int moved, TimeSpan by)
    {
        ArgumentNullException.ThrowIfNull(evenings);
        return new EveningSchedule([.. evenings.Where(e => e.Number > moved && e.Plan.StartsLocal is not null).Select(e =>
            Line(e, e.Plan.StartsLocal!.Value + by))]);
    }

    public static EveningSchedule Posted(IFormCollection form, IEnumerable<EveningLine> evenings, ClassClock clock)
    {
        ArgumentNullException.ThrowIfNull(form);
        return new EveningSchedule([.. evenings.Select(e => Line(e, null)).Where(l => form.ContainsKey(l.Field)).Select(l => Read(l, form, clock))]);
    }

    /// <summary>Only of a list without errors.</summary>
    public ImmutableArray<EveningStart> Starts() => [.. Lines.Select(l => new EveningStart(l.Number, l.Then, l.Version))];

    /// <summary>The same lines beside what stands there by now, versions and all.</summary>
    public EveningSchedule Beside(IReadOnlyDictionary<int, EveningPlan> now) => new([.. Lines.Select(l =>
        now.TryGetValue(l.Number, out EveningPlan? plan) ? l with { Now = plan.StartsLocal, Version = plan.Version } : l)]);

    /// <summary>Days without an evening, one a line.</summary>
    /// <returns>The days, or what is wrong with them.</returns>
    public static (ImmutableHashSet<DateOnly> Days, string? Problem) ReadSkipped(string? text)
    {
        ImmutableHashSet<DateOnly>.Builder days = ImmutableHashSet.CreateBuilder<DateOnly>();
        foreach (string word in (text ?? "").Split(['\n', '\r', ',', ';', ' '], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries))
        {
            if (!DateOnly.TryParseExact(word, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out DateOnly day))
                return ([], $"“{word}” is not a day. Write each as 2026-12-24, one a line.");
            days.Add(day);
        }

        return days.Count > MostSkipped ? ([], $"At most {MostSkipped} days can be left out.") : (days.ToImmutable(), null);
    }

    private static string Name(ScheduleLine line) => FormattableString.Invariant($"Evening {line.Number}");

    private static ScheduleLine Line(EveningLine evening, DateTime? at) =>
        new(evening.Number, evening.Plan.StartsLocal, ClassClock.Write(at), evening.Plan.Version);

    private static ScheduleLine Read(ScheduleLine line, IFormCollection form, ClassClock clock)
    {
        string text = form[line.Field].ToString().Trim();
        int version = int.TryParse(form[line.VersionField], CultureInfo.InvariantCulture, out int posted) ? posted : line.Version;
        ScheduleLine read = line with { Text = text, Version = version };
        if (!ClassClock.TryRead(text, out DateTime? local))
            return read with { Error = $"{Name(line)}: “{text}” is not a date with a time. Write it as 2026-01-14 19:00, or leave it empty for no date." };
        return local is { } at && clock.ChangeAt(at) != ClockChange.None ? read with { Note = "The clocks change that night." } : read;
    }
}
