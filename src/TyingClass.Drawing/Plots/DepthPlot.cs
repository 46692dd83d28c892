using TyingClass.Balance.Doubting;
using TyingClass.Balance.Reports;
using TyingClass.Drawing.Geometry;
using TyingClass.Telling.Figures;
using TyingClass.Telling.Sentences;

namespace TyingClass.Drawing.Plots;

/// <summary>Depth grows down the page, as it does in water.</summary>
internal static class DepthPlot
{
    public static string Draw(string name, BalanceReport report, DoubtBands? bands, DrawingOptions options)
    {
        double Shown(double depthM) => Magnitudes.Depth.Shown(depthM, options.Units);
        using Plot plot = new(options, "depth", $"{name}: depth in a pause", Describe(report, options.Units) + DoubtBand.Words(bands));
        double[] depths =
        [
            .. Sunk(report).SelectMany(s => s.Sink!.Depth).Select(p => Shown(p.DepthM)),
            .. DoubtBand.Ends(bands?.ByTime.Select(b => (Interval?)b.DepthM), Shown), 0,
        ];
        double longest = Sunk(report).SelectMany(s => s.Sink!.Depth).Select(p => p.TimeS).DefaultIfEmpty(5).Max();
        plot.X = Scale.Round(0, longest, 6, plot.Area.Left, plot.Area.Right);
        plot.Y = Scale.Round(depths.Min(), depths.Max(), 5, plot.Area.Top, plot.Area.Bottom);
        plot.Axes("time on a slack line, s", $"depth below the start, {Magnitudes.Depth.Symbol(options.Units)}", floor: 0);
        DoubtBand.Draw(plot, bands?.ByTime.Select(b => (b.TimeS, (Interval?)b.DepthM)), Shown);
        foreach (StateReport state in Sunk(report))
        {
            bool soaked = state.State == WetState.Soaked;
            Point[] line = [.. state.Sink!.Depth.Select(p => plot.At(p.TimeS, Shown(p.DepthM)))];
            plot.Curve(line, soaked ? "fly-line fly-soaked" : "fly-line fly-fresh", soaked ? 1.8 : 1.2, soaked ? "" : "6 4");
            if (longest >= 5)
                plot.Marker(plot.At(5, Shown(state.Sink!.DepthAfter5sM)), MarkerKind.Round, soaked, Numbers.Write(state.Sink!.DepthAfter5sM, 4));
            SpeedSeries.Legend(plot, soaked ? 0 : SpeedSeries.SecondKey, FlyWords.StateInBrief(state), soaked);
        }

        if (!Sunk(report).Any())
            plot.Text("hangs still in the water", plot.Area.Center, "middle", italic: true);
        return plot.Finish();
    }

    private static string Describe(BalanceReport report, UnitSystem units) => string.Join(" ", report.Compared().Select(s =>
    {
        string state = FlyWords.StateAtHead(s);
        if (s.Sink is not { } sink)
            return $"{state} it hangs still in the water, or never settles.";
        return $"{state} it {(sink.RateMS < 0 ? "rises" : "sinks")} {FlyWords.Nose(sink.PitchDeg)}. {PauseSentence.Of(sink, units)}";
    }));

    private static IEnumerable<StateReport> Sunk(BalanceReport report) => report.Compared().Where(s => s.Sink is not null);
}
