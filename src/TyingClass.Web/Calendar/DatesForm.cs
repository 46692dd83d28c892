using System.Collections.Immutable;
using System.Globalization;
using TyingClass.Lessons.Courses;
using TyingClass.Storage.Dates;
using TyingClass.Storage.Evenings;

namespace TyingClass.Web.Calendar;

/// <summary>One line of the form: what was typed, whatever it is.</summary>
public sealed record DateLine(string Target, string Title, string Opens, string Due)
{
    public ImmutableArray<string> Errors { get; init; } = [];

    /// <summary>What the clocks do to these times.</summary>
    public ImmutableArray<string> Notes { get; init; } = [];

    /// <summary>What someone else saved meanwhile, where it differs.</summary>
    public string? Theirs { get; init; }

    public string OpensField => "opens:" + Target;

    public string DueField => "due:" + Target;

    public bool IsBlank => Opens.Length == 0 && Due.Length == 0;
}

/// <param name="Exercises">Dates of their own; most have none.</param>
public sealed record DateGroup(Lesson Lesson, DateLine Line, ImmutableArray<DateLine> Exercises)
{
    public IEnumerable<DateLine> All => Exercises.Prepend(Line);

    /// <summary>Open the list when there is something in it.</summary>
    public bool HasOwn => Exercises.Any(e => !e.IsBlank || e.Theirs is not null);
}

/// <summary>The form of a class's dates: from what is kept, from what was posted, or from the evenings.</summary>
public sealed record DatesForm(ImmutableArray<DateGroup> Groups, int Version)
{
    public bool HasErrors => Groups.SelectMany(g => g.All).Any(l => !l.Errors.IsEmpty);

    public static DatesForm Of(Course course, ClassDates dates, ClassClock clock) => new(Build(course, target =>
    {
        DateRow? row = dates.Of(target);
        return (ClassClock.Write(row?.OpensLocal), ClassClock.Write(row?.DueLocal));
    }, clock), dates.Version);

    public static DatesForm Posted(Course course, IFormCollection form, int version, ClassClock clock) => new(
        Build(course, target => (form["opens:" + target].ToString().Trim(), form["due:" + target].ToString().Trim()), clock), version);

    /// <summary>Lessons open so many days before their evening and are due when the next one begins. The exercises' own dates stay.</summary>
    public DatesForm FromEvenings(Course course, IReadOnlyList<EveningPlan> evenings, int daysBefore, ClassClock clock)
    {
        Dictionary<int, DateTime> starts = evenings.Where(e => e.StartsLocal is not null).ToDictionary(e => e.Number, e => e.StartsLocal!.Value);
        return this with
        {
            Groups = [.. Groups.Select(group => group.Lesson.Evening is { } number && starts.TryGetValue(number, out DateTime start)
                ? Checked(
                group with { Line =
                    Line(group.Line.Target, group.Line.Title, ClassClock.Write(start.AddDays(-daysBefore)), ClassClock.Write(Next(number, start)), clock) })
                : group)],
        };

        DateTime Next(int number, DateTime start) =>
            starts.Where(s => s.Key > number).OrderBy(s => s.Key).Select(s => (DateTime?)s.Value).FirstOrDefault() ?? start.AddDays(7);
    }

    /// <summary>What was typed, with what someone else saved meanwhile beside it.</summary>
    public DatesForm Beside(ClassDates theirs) => this with
    {
        Version = theirs.Version,
        Groups = [.. Groups.Select(g => g with { Line = Mark(g.Line, theirs), Exercises = [.. g.Exercises.Select(e => Mark(e, theirs))] })],
    };

    public IEnumerable<DateRow> Rows() => Groups.SelectMany(g => g.All).Select(line =>
        new DateRow(line.Target, Read(line.Opens), Read(line.Due)));

    private static DateLine Mark(DateLine line, ClassDates theirs)
    {
        DateRow? row = theirs.Of(line.Target);
        return Read(line.Opens) == row?.OpensLocal && Read(line.Due) == row?.DueLocal
            ? line
            : line with { Theirs = $"opens {Word(row?.OpensLocal)}, due {Word(row?.DueLocal)}" };

        static string Word(DateTime? local) => local is { } at ? ClassClock.Say(at) : "never set";
    }

    private static ImmutableArray<DateGroup> Build(Course course, Func<string, (string Opens, string Due)> typed, ClassClock clock)
    {
        return [.. course.Lessons.Select(lesson => Checked(new DateGroup(
            lesson,
            Make(DateTargets.Lesson(lesson.Slug), lesson.Title),
            [.. lesson.Exercises.Select(e => Make(DateTargets.Exercise(e.Id), e.Title))])))];

        DateLine Make(string target, string title)
        {
            (string opens, string due) = typed(target);
            return Line(target, title, opens, due, clock);
        }
    }

    // What an exercise leaves empty it has from its lesson, and the two must go together.
    private static DateGroup Checked(DateGroup group)
    {
        (DateTime? opens, DateTime? due) = (Read(group.Line.Opens), Read(group.Line.Due));
        return group with { Exercises = [.. group.Exercises.Select(Check)] };

        DateLine Check(DateLine line)
        {
            if (line.IsBlank || !line.Errors.IsEmpty || !group.Line.Errors.IsEmpty) return line;
            if (Read(line.Opens) is null && Read(line.Due) <= opens)
                return line with
                {
                    Errors = [
                    $"{line.Title} is due before its lesson opens, on {ClassClock.Say(opens!.Value)}. Give more time, or let the exercise open earlier "
                        + "than its lesson."]
                };
            return Read(line.Due) is null && Read(line.Opens) >= due
                ? line with
                {
                    Errors = [
                $"{line.Title} opens when its lesson is due already, on {ClassClock.Say(due!.Value)}. Let it open earlier, or give it a due date of its own."]
                }
                : line;
        }
    }

    private static DateLine Line(string target, string title, string opensText, string dueText, ClassClock clock)
    {
        List<string> errors = [];
        if (!ClassClock.TryRead(opensText, out DateTime? opens)) errors.Add(Complaint(title, "opens", opensText));
        if (!ClassClock.TryRead(dueText, out DateTime? due)) errors.Add(Complaint(title, "due", dueText));
        if (opens >= due) errors.Add($"{title} is due before it opens. Let it open earlier, or give more time.");
        return new DateLine(target, title, opensText, dueText) { Errors = [.. errors], Notes = [.. Notes(opens, due, clock)] };
    }

    private static string Complaint(string title, string field, string text) =>
        $"{title}, {field}: “{text}” is not a date with a time. Write it as 2026-01-14 19:00, or leave it empty.";

    private static IEnumerable<string> Notes(DateTime? opens, DateTime? due, ClassClock clock)
    {
        if (opens is { } o && clock.ChangeAt(o) == ClockChange.Skipped)
            yield return $"The clocks skip {Hour(o)} that night: it opens at {Hour(clock.Local(clock.Opening(o)))}.";
        if (opens is { } p && clock.ChangeAt(p) == ClockChange.Twice) yield return $"The clocks show {Hour(p)} twice that night: it opens the first time.";
        if (due is { } d && clock.ChangeAt(d) == ClockChange.Skipped)
            yield return $"The clocks skip {Hour(d)} that night: it is due at {Hour(clock.Local(clock.Due(d)))}.";
        if (due is { } e && clock.ChangeAt(e) == ClockChange.Twice) yield return $"The clocks show {Hour(e)} twice that night: it is due the second time.";
    }

    private static string Hour(DateTime local) => local.ToString("HH:mm", CultureInfo.InvariantCulture);

    private static DateTime? Read(string text) => ClassClock.TryRead(text, out DateTime? local) ? local : null;
}
