using TyingClass.Balance.Bodies;
using TyingClass.Balance.Reports;

namespace TyingClass.Balance.Retrieving;

/// <summary>
/// Fishing simulated: a fly on a line that is stripped in and let fall, in water that stands or moves steadily. Pure and free of shared state.
/// </summary>
public static class RetrieveEngine
{
    /// <summary>From landing to the end of the last round, s.</summary>
    public const double LongestS = 600;

    /// <summary>The whole retrieve.</summary>
    /// <exception cref="OperationCanceledException">The asker wants it no more (<see cref="StopSignal"/>).</exception>
    public static RetrieveReport Report(FlyBody body, FishingConditions conditions, RetrievePlan plan) =>
        Report(body, conditions, plan, RetrieveFineness.Usual);

    internal static RetrieveReport Report(FlyBody body, FishingConditions conditions, RetrievePlan plan, RetrieveFineness fineness)
    {
        ArgumentNullException.ThrowIfNull(body);
        ArgumentNullException.ThrowIfNull(plan);
        Timeline timeline = Timeline.Of(plan);
        if (timeline.EndS > LongestS) return RetrieveFigures.None(plan, timeline, RetrieveLimit.TooLong);
        RetrieveRun run = new(body, conditions, plan, timeline, fineness);
        return run.Follow() ? RetrieveFigures.Of(plan, timeline, run) : RetrieveFigures.None(plan, timeline, RetrieveLimit.NotFollowed);
    }
}

/// <summary>How finely time and line are cut.</summary>
/// <param name="Step">1 as used; 0.5 halves every step.</param>
/// <param name="Line">1 as used; 2 has pieces half as long.</param>
internal readonly record struct RetrieveFineness(double Step = 1, double Line = 1)
{
    public static readonly RetrieveFineness Usual = new(1, 1);
}
