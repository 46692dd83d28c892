using TyingClass.Balance.Retrieving;
using TyingClass.Drawing.Geometry;
using TyingClass.Telling.Figures;
using TyingClass.Telling.Sentences;

namespace TyingClass.Drawing.Plots;

/// <summary>Depth over the last round alone, as large as the page allows and ruled finely: to read figures off.</summary>
internal static class LastRoundPlot
{
    private const double Height = 290;

    // Rulings this near can be told apart on a phone, and halves between them guessed.
    private const int Rulings = 8, Seconds = 6;
    private static readonly Box DepthArea = new(46, 40, 308, 244);

    public static string Draw(string name, RetrieveReport report, DrawingOptions options)
    {
        using Plot plot = new(options, "round", $"{name}: depth in its last round", string.Join(" ", RetrieveSentence.Of(report, options.Units)), Height)
        {
            Area = DepthArea,
        };
        TimedStep[] steps = report.HasFigures ? [.. report.Steps.Where(s => s.Round == report.Steps[^1].Round)] : [];
        double beginS = steps.Length == 0 ? 0 : steps[0].StartS;
        RetrievePoint[] round = [.. report.Path.Where(p => p.TimeS >= beginS - 1e-9)];
        if (steps.Length == 0 || round.Length < 2)
        {
            plot.Text("no retrieve to follow", plot.Area.Center, "middle", italic: true);
            return plot.Finish();
        }

        double Shown(double depthM) => Magnitudes.Depth.Shown(depthM, options.Units);
        string hatching = plot.Hatching("strip", 4);
        plot.X = Scale.Round(0, round[^1].TimeS - beginS, Seconds, DepthArea.Left, DepthArea.Right);
        plot.Y = Scale.Round(Shown(round.Min(p => p.DepthM)), Shown(round.Max(p => p.DepthM)), Rulings, DepthArea.Top, DepthArea.Bottom);
        foreach (TimedStep step in steps.Where(s => s.Step.IsStrip))
            plot.Patch(
                [
                    new Point(plot.X.At(step.StartS - beginS), DepthArea.Top), new Point(plot.X.At(step.EndS - beginS), DepthArea.Top),
                    new Point(plot.X.At(step.EndS - beginS), DepthArea.Bottom), new Point(plot.X.At(step.StartS - beginS), DepthArea.Bottom),
                ], "fly-strip", hatching);
        plot.Axes("time since the last round began, s", "");
        plot.Text($"depth, {Magnitudes.Depth.Symbol(options.Units)}", new Point(2, 13), "start", italic: true);
        plot.Curve([.. round.Select(p => plot.At(p.TimeS - beginS, Shown(p.DepthM)))], "fly-line fly-soaked", 1.8);
        plot.Text("strips", new Point(DepthArea.Right, 13), "end", italic: true);
        plot.Bar(new Box(DepthArea.Right - 48, 4, DepthArea.Right - 32, 14), "fly-strip", hatching, "strips");
        return plot.Finish();
    }
}
