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

/// <summary>People stuck for one cause.</summary>
/// <param name="Column">The exercise, where it is one misreading or one goal of it.</param>
/// <param name="Said">What they were told; null where the cause is only a concept.</param>
/// <param name="Concept">What it is about.</param>
/// <param name="People">The last try first.</param>
public sealed record StuckGroup(RegisterColumn? Column, string? Said, string Concept, ImmutableArray<StuckPerson> People);

/// <summary>Whom to sit beside: stuck is who fell short twice and has no success; one miss is not stuck.</summary>
public static class SitBeside
{
    public const int LeastFailed = 2;

    /// <summary>By cause: first what several share, then by concept; the largest group first.</summary>
    public static ImmutableArray<StuckGroup> Of(IEnumerable<StuckLine> lines)
    {
        ArgumentNullException.ThrowIfNull(lines);
        ImmutableArray<StuckLine> stuck = [.. lines.Where(l => l.Standing.IsOpen && l.Standing.Failed >= LeastFailed)];
        var byCause = stuck.GroupBy(l => (l.Column.Exercise.Id, Cause(l)));
        ImmutableArray<StuckGroup> shared = [.. byCause.Where(g => g.Key.Item2 is not null && g.Count() > 1).Select(g =>
            new StuckGroup(g.First().Column, g.Key.Item2, ConceptOf(g.First()), People(g)))];
        IEnumerable<StuckGroup> rest = byCause.Where(g => g.Key.Item2 is null || g.Count() == 1).SelectMany(g => g)
            .GroupBy(ConceptOf).Select(g => new StuckGroup(null, null, g.Key, People(g)));
        return [.. shared.Concat(rest).OrderByDescending(g => g.People.Length).ThenByDescending(g => g.People[0].LastAt)];
    }

    /// <summary>Fell short once and have not come back: no cause yet.</summary>
    public static ImmutableArray<StuckLine> MissedOnce(IEnumerable<StuckLine> lines) =>
        [.. lines.Where(l => l.Standing.IsOpen && l.Standing.Failed < LeastFailed).OrderByDescending(l => l.Standing.LastAt)];

    /// <summary>What the last try shows, in a sentence; null where nothing is known of it.</summary>
    public static string? Cause(StuckLine line)
    {
        ArgumentNullException.ThrowIfNull(line);
        return line.Standing.LastFailed is not { } last ? null
            : last.Misreading ?? (last.Missed is { } goal ? $"Misses the goal “{goal}”." : null);
    }

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
