using TyingClass.Balance.Reports;
using TyingClass.Drawing.Geometry;
using TyingClass.Drawing.Words;

namespace TyingClass.Drawing.Plots;

/// <summary>The righting curve as naval architects draw it: restoring moment against heel, its range marked.</summary>
internal static class RightingPlot
{
    /// <summary>1 g·mm in grain inches.</summary>
    internal const double GrainInches = 1 / 0.06479891 / 25.4;

    public static string Draw(string name, BalanceReport report, DrawingOptions options)
    {
        StateReport state = report.State(options.State);
        RollCurve roll = state.Roll;
        bool metric = options.Units == UnitSystem.Metric;
        double per = metric ? 1 : GrainInches;
        string range = roll.RangeDeg > 0 ? $"returns from up to {Wording.Angle(roll.RangeDeg)}" : "never returns";
        RollPoint top = roll.Points.OrderByDescending(p => p.RestoringGmm).FirstOrDefault();
        string description =
            $"Riding {Wording.Way(report.Intent)}, {Wording.State(state)}. Tipped about the line of pull, the fly {range}. "
            + $"The greatest restoring moment is {Wording.Number(top.RestoringGmm * per, 2)} {(metric ? "g·mm" : "gr·in")} at {Wording.Angle(top.HeelDeg)} of heel.";
        using Plot plot = new(options, "righting", $"{name}: righting curve", description);
        double[] all = [.. roll.Points.Select(p => p.RestoringGmm * per), 0];
        plot.X = Scale.Exact(0, 180, 30, plot.Area.Left, plot.Area.Right);
        plot.Y = Scale.Round(all.Min(), all.Max(), 5, plot.Area.Bottom, plot.Area.Top);
        string hatch = plot.Hatching("range", 5);
        Point[] line = [.. roll.Points.Select(p => plot.At(p.HeelDeg, p.RestoringGmm * per))];
        if (roll.RangeDeg > 0)
        {
            Point[] within = [.. roll.Points.Where(p => p.HeelDeg <= roll.RangeDeg).Select(p => plot.At(p.HeelDeg, p.RestoringGmm * per))];
            plot.Patch([plot.At(0, 0), .. within, plot.At(roll.RangeDeg, 0)], "fly-range", hatch);
        }

        plot.Axes("heel about the line of pull, degrees", $"restoring moment, {(metric ? "g·mm" : "gr·in")}", floor: 0);
        plot.Curve(line, "fly-line fly-soaked", 1.8);
        if (roll.RangeDeg > 0)
        {
            double y = plot.Area.Top - 12, x = plot.X.At(roll.RangeDeg);
            plot.Line(new Point(plot.Area.Left, y), new Point(x, y), "fly-dimension fly-range-span", 1);
            plot.Line(new Point(plot.Area.Left, y - 4), new Point(plot.Area.Left, y + 4), "fly-dimension", 1);
            plot.Line(new Point(x, y - 4), new Point(x, plot.Y.At(0)), "fly-dimension", 0.9, "3 3");
        }

        plot.Text(range, new Point(plot.Area.Right, 13), "end", italic: true);
        return plot.Finish();
    }
}
