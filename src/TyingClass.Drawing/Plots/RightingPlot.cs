using TyingClass.Balance.Reports;
using TyingClass.Drawing.Geometry;
using TyingClass.Telling.Figures;
using TyingClass.Telling.Sentences;

namespace TyingClass.Drawing.Plots;

/// <summary>The righting curve as naval architects draw it: restoring moment against heel, its range marked.</summary>
internal static class RightingPlot
{
    public static string Draw(string name, BalanceReport report, DrawingOptions options)
    {
        StateReport state = report.State(options.State);
        RollCurve roll = state.Roll;
        UnitSystem units = options.Units;
        double Shown(RollPoint p) => Magnitudes.KeelMoment.Shown(Si.Gmm(p.RestoringGmm), units);
        string range = roll.RangeDeg > 0 ? $"returns from up to {FlyWords.Degrees(roll.RangeDeg)}" : "never returns";
        RollPoint top = roll.Points.OrderByDescending(p => p.RestoringGmm).FirstOrDefault();
        string description =
            $"Riding {FlyWords.Way(report.Intent)}, {FlyWords.State(state)}. Tipped over and let go, the fly {range}. "
            + $"The greatest restoring moment is {Magnitudes.KeelMoment.Say(Si.Gmm(top.RestoringGmm), units)} at {FlyWords.Degrees(top.HeelDeg)} of heel.";
        using Plot plot = new(options, "righting", $"{name}: righting curve", description);
        double[] all = [.. roll.Points.Select(Shown), 0];
        plot.X = Scale.Exact(0, 180, 30, plot.Area.Left, plot.Area.Right);
        plot.Y = Scale.Round(all.Min(), all.Max(), 5, plot.Area.Bottom, plot.Area.Top);
        string hatch = plot.Hatching("range", 5);
        Point[] line = [.. roll.Points.Select(p => plot.At(p.HeelDeg, Shown(p)))];
        if (roll.RangeDeg > 0)
        {
            Point[] within = [.. roll.Points.Where(p => p.HeelDeg <= roll.RangeDeg).Select(p => plot.At(p.HeelDeg, Shown(p)))];
            plot.Patch([plot.At(0, 0), .. within, plot.At(roll.RangeDeg, 0)], "fly-range", hatch);
        }

        plot.Axes("heel, degrees", $"restoring moment, {Magnitudes.KeelMoment.Symbol(units)}", floor: 0);
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
