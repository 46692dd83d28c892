using System.Collections.Frozen;
using System.Collections.Immutable;
using TyingClass.Lessons.Courses;
using TyingClass.Lessons.Exercises;
using TyingClass.Recipes.Text;

namespace TyingClass.Lessons.Checking;

/// <summary>
/// The exercise ids that were ever published, one to a line in exercise-ids.txt beside the lessons: students' attempts hang on them, so none may vanish.
/// </summary>
public static class IdList
{
    public const string FileName = "exercise-ids.txt";

    /// <summary>A folder of lessons is known by its list.</summary>
    public static bool IsCourse(string directory) => File.Exists(Path.Combine(directory, FileName));

    /// <param name="mayStand">Tells of an id that is not in the course whether it may stand in a lesson that cannot be read.</param>
    public static IEnumerable<AuthorError> Check(string directory, Course course, Func<string, bool>? mayStand = null)
    {
        ArgumentNullException.ThrowIfNull(course);
        string[] lines = Lines(directory);
        HashSet<string> now = [.. course.Exercises.Select(e => e.Id)];
        Exercise[] unheardOf = UnheardOf(lines, course);
        for (int i = 0; i < lines.Length; i++)
        {
            string id = lines[i].Trim();
            if (id.Length == 0 || id[0] == '#' || now.Contains(id) || mayStand?.Invoke(id) == true) continue;
            yield return Nearest.Find(id, unheardOf.Select(e => e.Id)) is { } near
                ? SaidRenamed(unheardOf.First(e => e.Id == near), id)
                : new AuthorError(FileName, i + 1, 1,
                    $"The exercise “{id}” was published and is gone. Students' attempts hang on it: bring it back, or delete this line if nobody has "
                        + "worked it yet.");
        }
    }

    /// <summary>Published ids that are gone, where a new one reads so much alike that it is likely a slip.</summary>
    public static FrozenSet<string> Renamed(string directory, Course course)
    {
        ArgumentNullException.ThrowIfNull(course);
        string[] lines = Lines(directory);
        string[] unheardOf = [.. UnheardOf(lines, course).Select(e => e.Id)];
        return lines.Select(l => l.Trim()).Except(course.Exercises.Select(e => e.Id)).Where(id => Nearest.Find(id, unheardOf) is not null)
            .ToFrozenSet(StringComparer.Ordinal);
    }

    private static Exercise[] UnheardOf(string[] lines, Course course) => [.. course.Exercises.ExceptBy(lines.Select(l => l.Trim()), e => e.Id)];

    private static AuthorError SaidRenamed(Exercise exercise, string id)
    {
        (int line, int column) = exercise.Place.Of("id");
        return new AuthorError(exercise.Place.File, line, column,
            $"“{exercise.Id}” is a new id, and “{id}”, which was published, is gone. If this is that exercise, write “{id}” again: "
                + "students' attempts hang on it.");
    }

    /// <summary>Adds the ids that are new; writes nothing when there are none.</summary>
    public static ImmutableArray<string> Record(string directory, Course course)
    {
        ArgumentNullException.ThrowIfNull(course);
        string[] lines = Lines(directory);
        ImmutableArray<string> added = [.. course.Exercises.Select(e => e.Id).Except(lines.Select(l => l.Trim())).Order(StringComparer.Ordinal)];
        if (added.Length > 0) File.WriteAllLines(Path.Combine(directory, FileName), lines.Where(l => l.Length > 0).Concat(added));
        return added;
    }

    private static string[] Lines(string directory)
    {
        string path = Path.Combine(directory, FileName);
        return File.Exists(path) ? File.ReadAllLines(path) : [];
    }
}
