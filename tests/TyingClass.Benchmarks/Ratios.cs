using System.Diagnostics;
using System.Globalization;

namespace TyingClass.Benchmarks;

/// <summary>
/// Ratios on a machine that does other work too: the methods take turns, a few hundred rounds, and the fastest turn of each counts, which is the one nothing
/// interrupted.
/// </summary>
internal static class Ratios
{
    public static void Print(int rounds)
    {
        BalanceBenchmarks fly = new();
        fly.Settle();
        (string Name, int Times, Action Work)[] methods =
        [
            ("moment function", 2000, () => fly.Moment()),
            ("attitude from a warm start", 200, () => fly.WarmAttitude()),
            ("the same by a general root finder", 40, () => fly.WarmAttitudeByGeneralRootFinder()),
            ("the same by time stepping", 1, () => fly.WarmAttitudeByTimeStepping()),
            ("full report", 1, () => fly.FullReport()),
        ];
        double[][] turns = [.. methods.Select(_ => new double[rounds])];
        for (int round = 0; round < rounds; round++)
        {
            for (int i = 0; i < methods.Length; i++)
            {
                long start = Stopwatch.GetTimestamp();
                for (int n = 0; n < methods[i].Times; n++) methods[i].Work();
                turns[i][round] = Stopwatch.GetElapsedTime(start).TotalMicroseconds / methods[i].Times;
            }
        }

        double warm = turns[1].Min();
        for (int i = 0; i < methods.Length; i++)
        {
            Array.Sort(turns[i]);
            Console.WriteLine(
                string.Create(CultureInfo.InvariantCulture,
                    $"{methods[i].Name,-36} fastest {turns[i][0],12:F3} µs   median {turns[i][rounds / 2],12:F3} µs   fastest over fastest warm "
                        + $"attitude {turns[i][0] / warm,9:F2}"));
        }
    }
}
