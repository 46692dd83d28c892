using System.Collections.Immutable;

namespace TyingClass.Balance.Retrieving;

/// <summary>What is read off a path.</summary>
internal static class RetrieveFigures
{
    private const double UprightDeg = 30, OverDeg = 120;

    public static RetrieveReport None(RetrievePlan plan, Timeline timeline, RetrieveLimit limit) => new()
    {
        Plan = plan,
        Limit = limit,
        Path = [],
        Steps = timeline.Steps,
        Strips = [],
        CountedDepthM = 0,
        DeepestM = 0,
        ShallowestM = 0,
        HopM = 0,
        DriftM = null,
        DivePitchDeg = null,
        Ride = default,
        SettleS = null,
        TouchesBottom = null,
    };

    public static RetrieveReport Of(RetrievePlan plan, Timeline timeline, RetrieveRun run)
    {
        ImmutableArray<RetrievePoint> path = [.. run.Path];
        ImmutableArray<StripOutcome> strips = Strips(timeline, path);
        int lastRound = strips.IsEmpty ? 0 : strips[^1].Strip.Round;
        StripOutcome[] last = [.. strips.Where(s => s.Strip.Round == lastRound)];
        RetrievePoint[] fished = [.. path.Where(p => p.TimeS >= timeline.StartS)];
        (double deepest, double shallowest) = Depths(lastRound);
        double? before = lastRound > 0 ? Depths(lastRound - 1).Deepest : null;
        double? settle = last.Select(s => s.DownAfterS).Min();
        double still = strips.IsEmpty ? timeline.StartS : strips[^1].Strip.EndS;
        return new RetrieveReport
        {
            Plan = plan,
            Limit = timeline.LineIsIn ? (strips.IsEmpty ? RetrieveLimit.NothingToStrip : RetrieveLimit.LineIsIn) : RetrieveLimit.None,
            Path = path,
            Steps = timeline.Steps,
            Strips = strips,
            CountedDepthM = Math.Max(0, DepthAt(path, timeline.StartS)),
            DeepestM = deepest,
            ShallowestM = shallowest,
            HopM = last.Length > 0 ? last.Max(s => s.HopM) : 0,
            DriftM = deepest - before,
            DivePitchDeg = last.Select(s => s.SteepestDeg).Min(),
            Ride = new RideShares(Share(p => p.LeanDeg < UprightDeg), Share(p => p.LeanDeg is >= UprightDeg and <= OverDeg), Share(p => p.LeanDeg > OverDeg)),
            SettleS = settle ?? run.HoldUntilDown(still + RetrieveReport.LongestPauseS) - still,
            TouchesBottom = run.TouchesBottom,
        };

        double Share(Func<RetrievePoint, bool> which) => fished.Length == 0 ? 0 : fished.Count(which) / (double)fished.Length;

        (double Deepest, double Shallowest) Depths(int round)
        {
            TimedStep[] steps = [.. timeline.Steps.Where(s => s.Round == round)];
            if (steps.Length == 0) return (path.Max(p => p.DepthM), path.Min(p => p.DepthM));
            RetrievePoint[] points = [.. Between(path, steps[0].StartS, steps[^1].EndS)];
            return (points.Max(p => p.DepthM), points.Min(p => p.DepthM));
        }
    }

    private static ImmutableArray<StripOutcome> Strips(Timeline timeline, ImmutableArray<RetrievePoint> path)
    {
        ImmutableArray<StripOutcome>.Builder all = ImmutableArray.CreateBuilder<StripOutcome>();
        ImmutableArray<TimedStep> steps = timeline.Steps;
        for (int i = 0; i < steps.Length; i++)
        {
            if (!steps[i].Step.IsStrip) continue;
            int next = i + 1;
            while (next < steps.Length && !steps[next].Step.IsStrip) next++;
            double endS = next < steps.Length ? steps[next].StartS : timeline.EndS, from = DepthAt(path, steps[i].StartS);
            RetrievePoint[] whole = [.. Between(path, steps[i].StartS, endS)], after = [.. Between(path, steps[i].EndS, endS)];
            bool pauses = next > i + 1 && after.Length > 0;
            RetrievePoint[] down = pauses ? [.. after.Where(p => p.PitchDeg <= RetrieveReport.DownDeg).Take(1)] : [];
            all.Add(new StripOutcome(
                steps[i], from, whole.Length > 0 ? Math.Min(from, whole.Min(p => p.DepthM)) : from,
                after.Length > 0 ? after.Max(p => p.DepthM) : DepthAt(path, endS),
                pauses ? after.Min(p => p.PitchDeg) : null,
                down.Length > 0 ? Math.Max(0, down[0].TimeS - steps[i].EndS) : null));
        }

        return all.ToImmutable();
    }

    private static IEnumerable<RetrievePoint> Between(ImmutableArray<RetrievePoint> path, double fromS, double toS) =>
        path.Where(p => p.TimeS >= fromS - 1e-9 && p.TimeS <= toS + 1e-9);

    private static double DepthAt(ImmutableArray<RetrievePoint> path, double timeS)
    {
        int i = 1;
        while (i < path.Length - 1 && path[i].TimeS < timeS) i++;
        if (path.Length < 2) return path.IsEmpty ? 0 : path[0].DepthM;
        double share = Math.Clamp((timeS - path[i - 1].TimeS) / (path[i].TimeS - path[i - 1].TimeS), 0, 1);
        return path[i - 1].DepthM + share * (path[i].DepthM - path[i - 1].DepthM);
    }
}
