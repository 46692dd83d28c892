using System.Collections.Immutable;
using TyingClass.Web.Classes;

namespace TyingClass.Web.Briefs;

/// <summary>How far a class has come with one concept.</summary>
/// <param name="Shares">Of all the passes there could be, 0 to 1, at each mark of time.</param>
/// <param name="Since">Passes since the last evening.</param>
/// <param name="Possible">Students times exercises of it.</param>
public sealed record ConceptMove(string Concept, ImmutableArray<double> Shares, int Since, int Passed, int Possible)
{
    public int Percent => (int)Math.Round(100 * Shares[^1]);
}

/// <summary>What moved: passes of each concept over the weeks.</summary>
public static class ConceptMoves
{
    private const int MostMarks = 12;

    /// <param name="since">The last evening; null before the first.</param>
    /// <param name="lastEvening">Exercises of later evenings are not expected of anyone yet; null where evenings have no dates.</param>
    /// <param name="now">What passed later is not counted: an evening is looked back on as it was then.</param>
    /// <returns>Those begun, in the order of the course.</returns>
    public static ImmutableArray<ConceptMove> Of(ClassPulse pulse, DateTimeOffset? since, int? lastEvening, DateTimeOffset now)
    {
        ArgumentNullException.ThrowIfNull(pulse);
        HashSet<string> tried = [.. pulse.Lines.Select(l => l.Column.Exercise.Id)];
        ImmutableArray<RegisterColumn> asked = [.. pulse.Columns.Where(c => c.Lesson.Evening <= lastEvening || tried.Contains(c.Exercise.Id))];
        ILookup<string, DateTimeOffset> passes = pulse.Lines.Where(l => l.Standing.Passed)
            .Select(l => (l.Column.Exercise.Id, At: l.Standing.HandedInAt ?? l.Standing.LastAt)).Where(p => p.At <= now)
            .ToLookup(p => p.Id, p => p.At);
        ImmutableArray<DateTimeOffset> marks = Marks(passes.SelectMany(p => p), now);
        return
        [
            .. asked.SelectMany(c => c.Exercise.Concepts.Select(concept => (concept, c.Exercise.Id))).GroupBy(c => c.concept, c => c.Id)
                .Select(g => Of(g.Key, [.. g.SelectMany(id => passes[id])], pulse.Students.Length * g.Count(), marks, since))
                .Where(m => m.Passed > 0),
        ];
    }

    private static ConceptMove Of(string concept, DateTimeOffset[] passes, int possible, ImmutableArray<DateTimeOffset> marks, DateTimeOffset? since) => new(
        concept, [.. marks.Select(m => possible == 0 ? 0 : Math.Min(1, (double)passes.Count(p => p <= m) / possible))],
        since is { } from ? passes.Count(p => p > from) : 0, passes.Length, possible);

    // Whole weeks back from now, as far as anything was passed.
    private static ImmutableArray<DateTimeOffset> Marks(IEnumerable<DateTimeOffset> passes, DateTimeOffset now)
    {
        DateTimeOffset first = passes.DefaultIfEmpty(now).Min();
        int weeks = Math.Clamp((int)Math.Ceiling((now - first).TotalDays / 7), 1, MostMarks - 1);
        return [.. Enumerable.Range(0, weeks + 1).Select(i => now.AddDays(-7 * (weeks - i)))];
    }
}
