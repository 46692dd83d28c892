using System.Collections.Immutable;
using TyingClass.Lessons.Courses;
using TyingClass.Lessons.Exercises;
using TyingClass.Storage.Classes;
using TyingClass.Storage.People;
using TyingClass.Web.Calendar;
using TyingClass.Web.Progress;

namespace TyingClass.Web.Classes;

/// <param name="IsStuck">Failed attempts and no success, and nothing waiting to be read.</param>
/// <param name="Lateness">Against the due dates of the class.</param>
public readonly record struct RegisterCell(StandingKind Kind, int Attempts, bool IsStuck, Lateness Lateness = Lateness.None)
{
    /// <summary>Nothing for a grade in time; "late" or "overdue".</summary>
    public string LateWord => LatenessWords.Of(Lateness);
}

/// <param name="Number">Within its lesson, from 1.</param>
public sealed record RegisterColumn(Lesson Lesson, Exercise Exercise, int Number);

public sealed record RegisterRow(Person Person, ImmutableArray<RegisterCell> Cells)
{
    public int Passed => Cells.Count(c => c.Kind == StandingKind.Passed);

    public int Stuck => Cells.Count(c => c.IsStuck);
}

/// <param name="Evenings">Those the course has, to choose from; so with <paramref name="Concepts"/>.</param>
public sealed record RegisterView(
    ClassRoom Room, RegisterFilter Filter, ImmutableArray<RegisterColumn> Columns, ImmutableArray<RegisterRow> Rows, int People,
    ImmutableArray<int> Evenings, ImmutableArray<string> Concepts)
{
    private const int MostTitled = 26;

    /// <summary>Columns of one lesson stand under one head.</summary>
    public IEnumerable<(Lesson Lesson, int Count)> Heads => Columns.GroupBy(c => c.Lesson).Select(g => (g.Key, g.Count()));

    /// <summary>Too many columns for words in the cells: the marks stand alone, the words are for those who cannot see them.</summary>
    public bool IsDense => Columns.Length > 12;

    /// <summary>Few enough columns for the exercises' names to stand upright over them.</summary>
    public bool IsTitled => IsDense && Columns.Length <= MostTitled;

    public string Style => IsTitled ? "dense titled" : IsDense ? "dense" : "roomy";

    /// <summary>The same in tables that fit a landscape page: whole lessons, as many as go into 26 columns, everyone in each.</summary>
    public IEnumerable<RegisterView> Sheets()
    {
        int from = 0, to = 0;
        foreach ((Lesson _, int count) in Heads)
        {
            if (to > from && to + count - from > MostTitled)
            {
                yield return Only(from, to);
                from = to;
            }

            to += count;
        }

        yield return Only(from, to);
    }

    /// <summary>Students only.</summary>
    public int PassedIn(int column) => Rows.Count(r => r.Person.Role == Role.Student && r.Cells[column].Kind == StandingKind.Passed);

    private RegisterView Only(int from, int to) =>
        this with { Columns = Columns[from..to], Rows = [.. Rows.Select(r => r with { Cells = r.Cells[from..to] })] };
}
