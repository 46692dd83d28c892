using System.Collections.Immutable;

namespace TyingClass.Balance.Retrieving;

/// <summary>One strip or pause as it falls in time.</summary>
/// <param name="Round">From 0.</param>
/// <param name="DrawnBeforeM">Line drawn in before it, m.</param>
public readonly record struct TimedStep(RetrieveStep Step, int Round, double StartS, double DrawnBeforeM)
{
    public double EndS => StartS + Step.DurationS;
}

/// <summary>Every strip and pause of a retrieve in time, as far as there is line to strip.</summary>
internal sealed class Timeline
{
    /// <summary>Left outside the rod, m: where a fly is lifted off.</summary>
    public const double LeastOutM = 1;

    private Timeline(ImmutableArray<TimedStep> steps, double startS, bool lineIsIn) => (Steps, StartS, LineIsIn) = (steps, startS, lineIsIn);

    public ImmutableArray<TimedStep> Steps { get; }

    /// <summary>When the count is over, s.</summary>
    public double StartS { get; }

    /// <summary>Ended early because the line was in.</summary>
    public bool LineIsIn { get; }

    public double EndS => Steps.IsEmpty ? StartS : Steps[^1].EndS;

    public static Timeline Of(RetrievePlan plan)
    {
        ImmutableArray<TimedStep>.Builder steps = ImmutableArray.CreateBuilder<TimedStep>();
        double at = plan.CountDownS, drawn = 0;
        for (int round = 0; round < plan.Repeat; round++)
        {
            foreach (RetrieveStep step in plan.Round)
            {
                if (drawn + step.StripM > plan.LineOutM - LeastOutM) return new Timeline(steps.ToImmutable(), plan.CountDownS, lineIsIn: true);
                steps.Add(new TimedStep(step, round, at, drawn));
                at += step.DurationS;
                drawn += step.StripM;
            }
        }

        return new Timeline(steps.ToImmutable(), plan.CountDownS, lineIsIn: false);
    }

    /// <summary>Line drawn in by a moment, m. The hand starts and ends a strip gently: its speed is half a wave of a sine.</summary>
    public double DrawnM(double atS)
    {
        if (Steps.IsEmpty || atS <= StartS) return 0;
        TimedStep step = Steps[Index(atS)];
        double share = Math.Clamp((atS - step.StartS) / step.Step.DurationS, 0, 1);
        return step.DrawnBeforeM + step.Step.StripM * (1 - Math.Cos(Math.PI * share)) / 2;
    }

    /// <summary>Something is drawn in between two moments.</summary>
    public bool Strips(double fromS, double toS) => !Steps.IsEmpty && toS > StartS
        && (Steps[Index(fromS)] is { Step.IsStrip: true } one && one.EndS > fromS || Steps[Index(toS)] is { Step.IsStrip: true } two && two.StartS < toS);

    private int Index(double atS)
    {
        int low = 0, high = Steps.Length - 1;
        while (low < high)
        {
            int middle = (low + high + 1) / 2;
            (low, high) = Steps[middle].StartS <= atS ? (middle, high) : (low, middle - 1);
        }

        return low;
    }
}
