using System.Collections.Immutable;

namespace TyingClass.Lessons.Practice;

/// <summary>Where a student stands with one concept.</summary>
/// <param name="Strength">0 to 1; see <see cref="ConceptStrength"/>.</param>
/// <param name="DueAt">When it is good to come back to it; null for a concept not begun.</param>
public sealed record ConceptStanding(string Concept, double Strength, DateTimeOffset? DueAt)
{
    public string Words => DueAt is null ? "not begun" : ConceptStrength.Words(Strength);

    public static ConceptStanding Of(string concept, IEnumerable<ConceptAttempt> attempts)
    {
        ImmutableArray<ConceptAttempt> inOrder = [.. attempts.OrderBy(a => a.At)];
        return new ConceptStanding(concept, ConceptStrength.Of(inOrder), ConceptSchedule.DueAt(inOrder));
    }
}

/// <summary>When concepts come back, and which one next.</summary>
/// <remarks>
/// Gaps that double with each success and start over after a failure, as cards move through the compartments of Leitner's box
/// (S. Leitner, So lernt man lernen, 1972; reference from memory). A success before the gap is over does not lengthen it.
/// </remarks>
public static class ConceptSchedule
{
    public const double FirstGapDays = 1;
    public const int MostDoublings = 6;

    /// <param name="attempts">Oldest first.</param>
    public static DateTimeOffset? DueAt(ImmutableArray<ConceptAttempt> attempts)
    {
        DateTimeOffset? due = null;
        int step = 0;
        foreach (ConceptAttempt attempt in attempts)
        {
            if (!attempt.Passed)
            {
                (step, due) = (0, attempt.At);
            }
            else if (due is null || attempt.At >= due)
            {
                due = attempt.At + TimeSpan.FromDays(FirstGapDays * Math.Pow(2, step));
                step = Math.Min(step + 1, MostDoublings);
            }
        }

        return due;
    }

    /// <summary>The concept most in need: of those due, the weakest; if none is due, the first not begun; else none.</summary>
    /// <param name="standings">In the order of the course.</param>
    public static ConceptStanding? Next(IEnumerable<ConceptStanding> standings, DateTimeOffset now)
    {
        ArgumentNullException.ThrowIfNull(standings);
        ConceptStanding[] all = [.. standings];
        return all.Where(s => s.DueAt <= now).OrderBy(s => s.Strength).ThenBy(s => s.DueAt).FirstOrDefault()
            ?? all.FirstOrDefault(s => s.DueAt is null);
    }
}
