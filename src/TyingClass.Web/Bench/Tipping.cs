using System.Collections.Immutable;
using TyingClass.Balance.Reports;

namespace TyingClass.Web.Bench;

/// <summary>
/// Where a tipped fly goes when it is let go: down the righting curve, as through treacle, until the moment is gone. The heels are the
/// engine's; the time between them is not, and nothing says it is.
/// </summary>
internal static class Tipping
{
    public const double UsualDeg = 40;

    private const int Stills = 5;
    private const double StepDeg = 0.5;

    /// <param name="fromDeg">0 to 180.</param>
    public static ImmutableArray<double> From(RollCurve roll, double fromDeg)
    {
        if (roll.Points.Length < 2) return [];
        double heel = Math.Clamp(fromDeg, 0, 180);
        List<double> way = [Math.Round(heel)];
        double sign = Math.Sign(MomentGmm(roll, heel));
        while (sign != 0 && Math.Sign(MomentGmm(roll, heel)) == sign && heel - sign * StepDeg is >= 0 and <= 180)
        {
            heel -= sign * StepDeg;
            way.Add(heel);
        }

        way[^1] = Math.Round(heel);
        return [.. Enumerable.Range(0, Stills).Select(i => Math.Round(way[(int)Math.Round((way.Count - 1) * i / (Stills - 1.0))]))];
    }

    private static double MomentGmm(RollCurve roll, double heelDeg)
    {
        int i = 1;
        while (i < roll.Points.Length - 1 && roll.Points[i].HeelDeg < heelDeg) i++;
        RollPoint a = roll.Points[i - 1], b = roll.Points[i];
        double share = (heelDeg - a.HeelDeg) / (b.HeelDeg - a.HeelDeg);
        double moment = a.RestoringGmm + share * (b.RestoringGmm - a.RestoringGmm);
        return Math.Abs(moment) < 1e-6 ? 0 : moment;
    }
}
