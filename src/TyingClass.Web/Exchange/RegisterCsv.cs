using System.Globalization;
using TyingClass.Storage.Attempts;
using TyingClass.Storage.Classes;
using TyingClass.Storage.People;
using TyingClass.Web.Calendar;
using TyingClass.Web.Classes;
using TyingClass.Web.Progress;

namespace TyingClass.Web.Exchange;

/// <summary>The register as a table: one row a person and exercise, which any spreadsheet can pivot.</summary>
public sealed class RegisterCsv(ClassRegister register, AttemptStore store, ClassCalendar calendar)
{
    public static readonly string[] Heads = ["name", "role", "evening", "lesson", "exercise", "title", "state", "attempts", "failed", "last at", "due", "late"];

    public byte[] Of(ClassRoom room)
    {
        ArgumentNullException.ThrowIfNull(room);
        RegisterView view = register.Of(room, new RegisterFilter { WithMentors = true });
        ClassWindows windows = calendar.Of(room);
        Dictionary<(string, string), Standing> standings = store.StandingsOf(view.Rows.Select(r => r.Person.Id)).ToDictionary(s => (s.PersonId, s.ExerciseId));
        return CsvText.Write(view.Rows
            .SelectMany(
            row => view.Columns.Select(column => Row(row.Person, column, standings.GetValueOrDefault((row.Person.Id, column.Exercise.Id)), windows)))
            .Prepend(Heads));
    }

    private IEnumerable<string> Row(Person person, RegisterColumn column, Standing? standing, ClassWindows windows)
    {
        Window window = windows.Of(column.Lesson, column.Exercise);
        return
        [
            person.Label,
            person.Role.ToString().ToLowerInvariant(),
            column.Lesson.Evening?.ToString(CultureInfo.InvariantCulture) ?? "",
            column.Lesson.Slug,
            column.Exercise.Id,
            column.Exercise.Title,
            StandingKinds.Word(StandingKinds.Of(standing)),
            Whole(standing?.Attempts),
            Whole(standing?.Failed),
            standing is null ? "" : Local(standing.LastAt),
            window.DueAt is { } due ? Local(due) : "",
            LatenessWords.Of(ClassWindows.Of(standing, window, calendar.Now)),
        ];

        // On the class's clock, as spreadsheets read dates.
        string Local(DateTimeOffset at) => windows.Clock.Local(at).ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture);
    }

    private static string Whole(int? n) => (n ?? 0).ToString(CultureInfo.InvariantCulture);
}
