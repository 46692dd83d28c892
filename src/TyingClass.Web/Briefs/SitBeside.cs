using System.Collections.Immutable;
using TyingClass.Storage.People;
using TyingClass.Web.Classes;

namespace TyingClass.Web.Briefs;

/// <summary>One person of a group, with everything they are stuck on for its cause.</summary>
/// <param name="Lines">The last try first.</param>
public sealed record StuckPerson(Person Person, ImmutableArray<StuckLine> Lines)
{
    public int Failed => Lines.Sum(l => l.Standing.Failed);

    public DateTimeOffset LastAt => Lines[0].Standing.LastAt;
}

/// <summary>People stuck for one cause: a misreading of one exercise, a goal of it, or else only a concept.</summary>
/// <param name="Column">The exercise, where it is one misreading or one goal of it.</param>
/// <param name="Said">What they were told of what they misread; null where no misreading is known.</param>
/// <param name="Missed">The goal they miss, where nothing is known of how: that is what their flies do, and no belief of theirs.</param>
/// <param name="Concept">What it is about.</param>
/// <param name="People">The last try first.</param>
public sealed record StuckGroup(RegisterColumn? Column, string? Said, string? Missed, string Concept, ImmutableArray<StuckPerson> People)
{
    /// <summary>What most of their flies were told first; null for a misreading, which says it itself, and where nothing was told.</summary>
    public string? Why { get; init; }
}

/// <summary>Whom to sit beside: stuck is who fell short twice and has no success; one miss is not stuck.</summary>
public static class SitBeside
{
    public const int LeastFailed = 2;

    /// <summary>By cause: first what several share, then by concept; the largest group first.</summary>
    public static ImmutableArray<StuckGroup> Of(IEnumerable<StuckLine> lines)
    {
        ArgumentNullException.ThrowIfNull(lines);
        ImmutableArray<StuckLine> stuck = [.. lines.Where(l => l.Standing.IsOpen && l.Standing.Failed >= LeastFailed)];
        var byCause = stuck.GroupBy(l => (l.Column.Exercise.Id, Cause(l), Missed(l)));
        ImmutableArray<StuckGroup> shared = [.. byCause.Where(g => IsCause(g.Key.Item2, g.Key.Item3) && g.Count() > 1).Select(g =>
            new StuckGroup(g.First().Column, g.Key.Item2, g.Key.Item3, ConceptOf(g.First()), People(g)))];
        IEnumerable<StuckGroup> rest = byCause.Where(g => !IsCause(g.Key.Item2, g.Key.Item3) || g.Count() == 1).SelectMany(g => g)
            .GroupBy(ConceptOf).Select(g => new StuckGroup(null, null, null, g.Key, People(g)));
        // What is misread comes before what is only missed, whatever their number.
        return [.. shared.Concat(rest).OrderByDescending(g => g.Said is not null).ThenByDescending(g => g.People.Length)
            .ThenByDescending(g => g.People[0].LastAt)];
    }

    /// <summary>Fell short once and have not come back: no cause yet.</summary>
    public static ImmutableArray<StuckLine> MissedOnce(IEnumerable<StuckLine> lines) =>
        [.. lines.Where(l => l.Standing.IsOpen && l.Standing.Failed < LeastFailed).OrderByDescending(l => l.Standing.LastAt)];

    /// <summary>What the last try misread, as its student was told; null where no misreading is known.</summary>
    public static string? Cause(StuckLine line)
    {
        ArgumentNullException.ThrowIfNull(line);
        return line.Standing.LastFailed?.Misreading;
    }

    /// <summary>The goal that the last try misses, where nothing is known of how.</summary>
    public static string? Missed(StuckLine line)
    {
        ArgumentNullException.ThrowIfNull(line);
        return line.Standing.LastFailed is { Misreading: null, Missed: { } goal } ? goal : null;
    }

    private static bool IsCause(string? misreading, string? missed) => (misreading ?? missed) is not null;

    public static string ConceptOf(StuckLine line)
    {
        ArgumentNullException.ThrowIfNull(line);
        return line.Standing.LastFailed?.MisreadConcept ?? line.Column.Exercise.Concepts.FirstOrDefault() ?? line.Column.Lesson.Title;
    }

    private static ImmutableArray<StuckPerson> People(IEnumerable<StuckLine> lines) =>
    [
        .. lines.GroupBy(l => l.Person.Id)
            .Select(g => new StuckPerson(g.First().Person, [.. g.OrderByDescending(l => l.Standing.LastAt)]))
            .OrderByDescending(p => p.LastAt),
    ];
}
