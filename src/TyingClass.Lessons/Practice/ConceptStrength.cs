using System.Collections.Immutable;

namespace TyingClass.Lessons.Practice;

/// <summary>One answer that bears on a concept.</summary>
public readonly record struct ConceptAttempt(DateTimeOffset At, bool Passed);

/// <summary>How firmly a student holds a concept: the probability that it is known, from the attempts so far.</summary>
/// <remarks>
/// Knowledge tracing, Corbett and Anderson, User Modeling and User-Adapted Interaction 4 (1995) 253 (reference from memory): after each
/// answer P(known) is updated by Bayes' rule with the chances of a slip and of a lucky guess, then raised by the chance of having learned
/// from it. The four chances are estimates.
/// </remarks>
public static class ConceptStrength
{
    public const double KnownAtFirst = 0.2;
    public const double Learned = 0.15;
    public const double Slip = 0.1;
    public const double Guess = 0.25;

    /// <summary>Older attempts say little of today.</summary>
    public const int RecentAttempts = 20;

    private static readonly ImmutableArray<(double Below, string Words)> Scale =
        [(0.3, "just beginning"), (0.6, "coming along"), (0.85, "nearly there"), (0.95, "firm")];

    /// <summary>0 to 1; attempts oldest first.</summary>
    public static double Of(IEnumerable<ConceptAttempt> attempts)
    {
        ArgumentNullException.ThrowIfNull(attempts);
        return attempts.TakeLast(RecentAttempts).Aggregate(KnownAtFirst, (known, attempt) => Next(known, attempt.Passed));
    }

    public static double Next(double known, bool passed)
    {
        double ifKnown = known * (passed ? 1 - Slip : Slip), ifNot = (1 - known) * (passed ? Guess : 1 - Guess);
        double after = ifKnown / (ifKnown + ifNot);
        return after + (1 - after) * Learned;
    }

    /// <summary>For the student, beside the bar.</summary>
    public static string Words(double strength)
    {
        foreach ((double below, string words) in Scale)
        {
            if (strength < below) return words;
        }

        return "very firm";
    }
}
