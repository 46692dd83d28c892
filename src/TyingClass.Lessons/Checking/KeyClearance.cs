using TyingClass.Lessons.Exercises;

namespace TyingClass.Lessons.Checking;

/// <summary>Whether a computed key would survive the errors of a practiced tyer. One that would not is a coin toss, not a question.</summary>
public static class KeyClearance
{
    /// <summary>Flies tied to find out.</summary>
    public const int Flies = 40;

    /// <summary>Share of them that must give the same answer.</summary>
    public const double LeastAgreement = 0.95;

    /// <summary>For which way up, where the engine's own sample is at hand.</summary>
    public const double LeastShare = 0.90;

    /// <summary>Models tried with other guesses.</summary>
    public const int Draws = 100;

    /// <summary>Share of them that must give the same answer: the rest is the model's own doubt.</summary>
    public const double LeastOfDraws = 0.90;

    // So many that all say the same stand for the whole: where only the least share agrees, twenty flies would all agree once in three times, which is less
    // often than thirty-eight of forty would, and twenty-five models once in fourteen. One that differs, and all are asked.
    private const int FirstFlies = 20;
    private const int FirstDraws = 25;

    /// <summary>What makes the key unfit, or null when it is clear.</summary>
    public static string? Complaint(Exercise exercise)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        return exercise.Kind.KeyComplaint(exercise);
    }

    internal static bool Enough(int agree) => agree >= LeastAgreement * Flies;

    /// <summary>How many of the flies tied alike give the key. What the first half all say is taken to be said by all: a retrieve is costly.</summary>
    internal static int Agreeing(IEnumerable<bool> agree)
    {
        (int asked, int alike) = (0, 0);
        foreach (bool one in agree)
        {
            asked++;
            if (one) alike++;
            if (asked == FirstFlies && alike == FirstFlies) return Flies;
        }

        return alike;
    }

    /// <summary>Null when nine in ten models agree.</summary>
    /// <param name="agree">Whether a draw gives the key; null where it cannot tell.</param>
    internal static string? ModelComplaint(IEnumerable<bool?> agree, string answer)
    {
        (int told, int alike) = (0, 0);
        foreach (bool one in agree.OfType<bool>())
        {
            told++;
            if (one) alike++;
            if (told == FirstDraws && alike == FirstDraws) return null;
        }

        return alike >= LeastOfDraws * told ? null
            : $"{answer}, but of {told} models with other guesses only {alike} agree: the model itself is in doubt, so nobody can be marked by it.";
    }

    internal static string Percent(double share) => $"{Math.Round(100 * share)} %";
}
