using System.Collections.Immutable;
using System.Text.RegularExpressions;
using TyingClass.Lessons.Courses;
using TyingClass.Lessons.Exercises;
using TyingClass.Storage.Attempts;
using TyingClass.Web.Identity;

namespace TyingClass.Web.Classes;

/// <summary>One answer that waits to be read.</summary>
/// <param name="Before">How many this student sent in to the same question before.</param>
public sealed record ReadingLine(StuckLine Line, Attempt Attempt, int Before)
{
    /// <summary>What it is called in an address.</summary>
    public string Key => ReadingDesk.KeyOf(Line);
}

/// <summary>Answers to be read, one at a time or all to one question.</summary>
/// <param name="Question">Of all that are shown; null when nothing is.</param>
/// <param name="IsOne">One answer after another; else all to one question.</param>
/// <param name="At">Which of those that wait, from 1.</param>
/// <param name="Next">Its key; null after the last.</param>
public sealed record ReadingView(
    ImmutableArray<ReadingLine> Lines, Exercise? Question, bool IsOne, int At, int Count, string? Previous, string? Next);

/// <summary>Reads what waits for a person, the longest wait first.</summary>
public sealed partial class ReadingDesk(ICourseSource source, ClassRegister register, AttemptStore attemptStore, ClassAccess access, Visitor visitor)
{
    public static string KeyOf(StuckLine line)
    {
        ArgumentNullException.ThrowIfNull(line);
        return $"{line.Person.Id}/{line.Column.Exercise.Id}";
    }

    /// <summary>Where what was said of an answer can be changed: its student's attempts at the exercise. Null for what is no key.</summary>
    public static string? AddressOf(string? key) => key is not null && Key().IsMatch(key) ? "/class/students/" + key : null;

    public ImmutableArray<StuckLine> Waiting() =>
        access.Current is { } room && visitor.Person is { } me ? register.WaitingIn(room, me) : [];

    /// <param name="key">Which; the first where it is not there any more.</param>
    public ReadingView One(string? key)
    {
        ImmutableArray<StuckLine> waiting = Waiting();
        if (waiting.IsEmpty) return new ReadingView([], null, true, 0, 0, null, null);
        int at = Math.Max(0, waiting.Select(KeyOf).ToList().IndexOf(key ?? ""));
        return new ReadingView(
            [.. Lines([waiting[at]])], waiting[at].Column.Exercise, true, at + 1, waiting.Length, at > 0 ? KeyOf(waiting[at - 1]) : null,
            at + 1 < waiting.Length ? KeyOf(waiting[at + 1]) : null);
    }

    public ReadingView AllTo(string exerciseId)
    {
        ReadingLine[] lines = [.. Lines(Waiting().Where(l => l.Column.Exercise.Id == exerciseId))];
        return new ReadingView(
            [.. lines], source.Current.TryFindExercise(exerciseId, out _, out Exercise exercise) ? exercise : null, false, 0, lines.Length, null, null);
    }

    private IEnumerable<ReadingLine> Lines(IEnumerable<StuckLine> lines) => lines
        .Select(l => (Line: l, Attempts: attemptStore.Of(l.Person.Id, l.Column.Exercise.Id)))
        .Where(l => l.Attempts.Length > 0)
        .Select(l => new ReadingLine(l.Line, l.Attempts[^1], l.Attempts.Length - 1));

    [GeneratedRegex("^[A-Za-z0-9-]+/[a-z0-9-]+$")]
    private static partial Regex Key();
}
