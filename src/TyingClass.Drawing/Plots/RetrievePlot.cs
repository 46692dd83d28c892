using TyingClass.Balance.Retrieving;
using TyingClass.Drawing.Geometry;
using TyingClass.Telling.Figures;
using TyingClass.Telling.Sentences;

namespace TyingClass.Drawing.Plots;

/// <summary>Depth and nose of a whole retrieve on one axis of time, the strips marked, and which way up it rides below.</summary>
internal static class RetrievePlot
{
    private const double Height = 338;
    private static readonly Box DepthArea = new(46, 42, 308, 132), PitchArea = new(46, 178, 308, 262);

    public static string Draw(string name, RetrieveReport report, DrawingOptions options)
    {
        string described = string.Join(" ", RetrieveSentence.Of(report, options.Units));
        using Plot plot = new(options, "retrieve", $"{name}: depth and nose over the retrieve", described, Height)
        {
            Area = DepthArea,
        };
        if (!report.HasFigures)
        {
            plot.Text("no retrieve to follow", plot.Area.Center, "middle", italic: true);
            return plot.Finish();
        }

        double Shown(double depthM) => Magnitudes.Depth.Shown(depthM, options.Units);
        string strips = plot.Hatching("strip", 4);
        plot.X = Scale.Round(0, report.Path[^1].TimeS, 6, DepthArea.Left, DepthArea.Right);
        plot.Y = Scale.Round(0, Math.Max(0.1, Shown(report.Path.Max(p => p.DepthM))), 4, DepthArea.Top, DepthArea.Bottom);
        Mark(plot, report, strips, DepthArea);
        plot.Axes("", "", floor: 0);
        plot.Text($"depth, {Magnitudes.Depth.Symbol(options.Units)}", new Point(2, 13), "start", italic: true);
        plot.Curve([.. report.Path.Select(p => plot.At(p.TimeS, Shown(p.DepthM)))], "fly-line fly-soaked", 1.6);
        plot.Text("strips", new Point(DepthArea.Right, 13), "end", italic: true);
        plot.Bar(new Box(DepthArea.Right - 48, 4, DepthArea.Right - 32, 14), "fly-strip", strips, "strips");

        plot.Area = PitchArea;
        double lowest = Math.Min(-30, report.Path.Min(p => p.PitchDeg)), highest = Math.Max(30, report.Path.Max(p => p.PitchDeg));
        plot.Y = Scale.Round(lowest, highest, 4, PitchArea.Bottom, PitchArea.Top);
        Mark(plot, report, strips, PitchArea);
        plot.Axes("time since it landed, s", "", floor: 0);
        plot.Text("nose, degrees (up is positive)", new Point(2, PitchArea.Top - 10), "start", italic: true);
        plot.Curve([.. report.Path.Select(p => plot.At(p.TimeS, p.PitchDeg))], "fly-line fly-soaked", 1.4);
        plot.Line(plot.At(0, RetrieveReport.DownDeg), plot.At(report.Path[^1].TimeS, RetrieveReport.DownDeg), "fly-doubt-edge", 0.8, "2 3");
        Ways(plot, report);
        return plot.Finish();
    }

    private static void Mark(Plot plot, RetrieveReport report, string hatching, Box area)
    {
        foreach (TimedStep step in report.Steps.Where(s => s.Step.IsStrip))
            plot.Patch(
                [
                    new Point(plot.X.At(step.StartS), area.Top), new Point(plot.X.At(step.EndS), area.Top), new Point(plot.X.At(step.EndS), area.Bottom),
                    new Point(plot.X.At(step.StartS), area.Bottom),
                ], "fly-strip", hatching);
    }

    // A band under the time: empty upright, hatched leaning, crossed over.
    private static void Ways(Plot plot, RetrieveReport report)
    {
        string leaning = plot.Hatching("leaning", 5), over = plot.Hatching("over", 4, crossed: true);
        double top = PitchArea.Bottom + 46, step = report.Path[1].TimeS - report.Path[0].TimeS;
        int from = 0;
        for (int i = 1; i <= report.Path.Length; i++)
        {
            if (i < report.Path.Length && Way(report.Path[i]) == Way(report.Path[from])) continue;
            double left = plot.X.At(report.Path[from].TimeS), right = plot.X.At(Math.Min(report.Path[^1].TimeS, report.Path[i - 1].TimeS + step));
            string fill = Way(report.Path[from]) switch { 0 => "none", 1 => leaning, _ => over };
            if (right > left) plot.Bar(new Box(left, top, right, top + 10), "fly-ways", fill, "way");
            from = i;
        }

        RideShares ride = report.Ride;
        plot.Text($"upright {Numbers.Percent(ride.Upright)}, leaning {Numbers.Percent(ride.Leaning)}, over {Numbers.Percent(ride.Over)} of the time",
            new Point((PitchArea.Left + PitchArea.Right) / 2, top + 26), "middle", italic: true);
    }

    private static int Way(RetrievePoint p) => p.LeanDeg < 30 ? 0 : p.LeanDeg <= 120 ? 1 : 2;
}
