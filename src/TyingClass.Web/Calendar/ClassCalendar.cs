using TyingClass.Lessons.Courses;
using TyingClass.Lessons.Exercises;
using TyingClass.Storage.Attempts;
using TyingClass.Storage.Classes;
using TyingClass.Storage.Dates;
using TyingClass.Storage.People;
using TyingClass.Web.Classes;
using TyingClass.Web.Identity;

namespace TyingClass.Web.Calendar;

/// <summary>From when to when; null for no limit.</summary>
public readonly record struct Window(DateTimeOffset? OpensAt, DateTimeOffset? DueAt);

/// <param name="Class">How it looks: "opens", "late" or "quiet".</param>
public sealed record DateNote(string Class, string Text);

public enum Lateness
{
    /// <summary>In time, or there was no date to keep.</summary>
    None,

    /// <summary>Handed in after it was due.</summary>
    Late,

    /// <summary>Due, and not handed in.</summary>
    Overdue,
}

public static class LatenessWords
{
    /// <summary>Empty when there is nothing to say.</summary>
    public static string Of(Lateness lateness) => lateness switch { Lateness.Late => "late", Lateness.Overdue => "overdue", _ => "" };
}

/// <summary>The dates of one class as instants. Nothing here blocks an answer: late is shown, no more.</summary>
public sealed class ClassWindows(ClassDates dates, ClassClock clock)
{
    public ClassClock Clock => clock;

    public Window Of(Lesson lesson) => Of(Row(DateTargets.Lesson(lesson.Slug)), null);

    /// <summary>An exercise's own date, and its lesson's where it has none.</summary>
    public Window Of(Lesson lesson, Exercise exercise) => Of(Row(DateTargets.Exercise(exercise.Id)), Row(DateTargets.Lesson(lesson.Slug)));

    public static Lateness Of(Standing? standing, Window window, DateTimeOffset now)
    {
        if (window.DueAt is not { } due) return Lateness.None;
        // Records from before there were due dates do not say when; the last attempt is the nearest they know.
        DateTimeOffset? handedIn = standing?.HandedInAt ?? (standing is { Passed: true } or { AwaitsReview: true } ? standing.LastAt : null);
        return handedIn is { } at ? at > due ? Lateness.Late : Lateness.None : now > due ? Lateness.Overdue : Lateness.None;
    }

    private Window Of(DateRow? own, DateRow? general) => new(
        (own?.OpensLocal ?? general?.OpensLocal) is { } opens ? clock.Opening(opens) : null,
        (own?.DueLocal ?? general?.DueLocal) is { } due ? clock.Due(due) : null);

    private DateRow? Row(string target) => dates.Of(target);
}

/// <summary>The calendar as it concerns whoever asks.</summary>
public sealed class ClassCalendar(ClassDatesStore store, ClassAccess access, Visitor visitor, TimeProvider time)
{
    private ClassWindows? _mine;

    public DateTimeOffset Now => time.GetUtcNow();

    public ClassWindows Of(ClassRoom room)
    {
        ArgumentNullException.ThrowIfNull(room);
        return new ClassWindows(store.Of(room.Id), new ClassClock(room));
    }

    /// <summary>Of the visitor's own class; null for a guest and for those who teach, who see everything at once.</summary>
    public ClassWindows? Mine => visitor.PersonIfReadable is { Role: Role.Student } && access.Right < ClassRight.Everything && access.Current is { } room
        ? _mine ??= Of(room) : null;

    /// <summary>When a lesson opens for the visitor; null when it is open.</summary>
    public DateTimeOffset? OpensLater(Lesson lesson) => Later(Mine?.Of(lesson).OpensAt);

    /// <summary>When an exercise opens for the visitor; null when it is open.</summary>
    public DateTimeOffset? OpensLater(Lesson lesson, Exercise exercise) => Later(Mine?.Of(lesson, exercise).OpensAt);

    /// <summary>What to say over an exercise: when it opens, when it is due, whether it came late. Null when there is nothing to say.</summary>
    public DateNote? NoteOn(Lesson lesson, Exercise exercise, IEnumerable<Attempt> attempts)
    {
        if (Mine is not { } windows) return null;
        Window window = windows.Of(lesson, exercise);
        if (Later(window.OpensAt) is { } opens) return new DateNote("opens", $"Opens for your class on {Say(opens)}.");
        if (window.DueAt is not { } due) return null;
        DateTimeOffset? handedIn = attempts.FirstOrDefault(a => a.Passed || a.AwaitsReview)?.At;
        return handedIn > due ? new DateNote("late", $"It was due on {Say(due)}; yours came late, and counts.")
            : handedIn is null && Now > due ? new DateNote("late", $"It was due on {Say(due)}. Late work is marked as late and still counts.")
            : new DateNote("quiet", $"Due on {Say(due)}.");
    }

    /// <summary>"Wed, Jan 14, 2026, 19:00", on the wall of the visitor's class.</summary>
    public string Say(DateTimeOffset at) => Mine is { } windows ? windows.Clock.Say(at) : "";

    private DateTimeOffset? Later(DateTimeOffset? opens) => opens > Now ? opens : null;
}
