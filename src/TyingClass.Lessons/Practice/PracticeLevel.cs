namespace TyingClass.Lessons.Practice;

/// <summary>
/// How hard the next problem of a concept should be, 0 (plain) to 1 (close calls), steered so that a student succeeds about four times in five.
/// </summary>
/// <remarks>
/// Weighted up-down rule: the step down after a failure is p/(1 - p) times the step up after a success, so that the level settles where
/// success has probability p. Kaernbach, Perception &amp; Psychophysics 49 (1991) 227 (reference from memory).
/// </remarks>
public static class PracticeLevel
{
    public const double TargetShare = 0.8;

    public const double Start = 0.2;

    /// <summary>Step after a success. Estimate.</summary>
    public const double StepUp = 0.05;

    public const double StepDown = StepUp * TargetShare / (1 - TargetShare);

    /// <summary>As an address carries it, 0 to 100.</summary>
    public static int Hundredths(double level) => (int)Math.Round(100 * Math.Clamp(level, 0, 1));

    public static double Next(double level, bool passed) => Math.Clamp(level + (passed ? StepUp : -StepDown), 0, 1);

    /// <summary>The level after a student's attempts at practice of one concept, oldest first.</summary>
    public static double After(IEnumerable<bool> passed)
    {
        ArgumentNullException.ThrowIfNull(passed);
        return passed.Aggregate(Start, Next);
    }
}
