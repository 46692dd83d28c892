using TyingClass.Balance.Reports;
using TyingClass.Drawing.Geometry;
using TyingClass.Drawing.Words;

namespace TyingClass.Drawing.Plots;

internal static class LeanPlot
{
    private const double BinDeg = 10;

    public static string Draw(string name, BalanceReport report, DrawingOptions options)
    {
        StateReport state = report.State(options.State);
        ToleranceReport t = state.Tolerance;
        string interval = $"{Wording.Number(t.AsIntendedLow * 100, 1)} to {Wording.Number(t.AsIntendedHigh * 100, 1)} %";
        string description =
            $"Of {t.Flies} flies tied by the same recipe ({Grade(t.Accuracy)}), {Wording.State(state)}: {Wording.Percent(t.AsIntended)} ride within 30° of {Wording.Way(report.Intent)} "
            + $"(95 % interval {interval}), {Wording.Percent(t.Leaning)} lean further, {Wording.Percent(t.Flipped)} flip.";
        using Plot plot = new(options, "lean", $"{name}: lean of {t.Flies} flies", description, 290) { Area = new Box(46, 60, 388, 246) };
        plot.X = Scale.Exact(0, 180, 30, plot.Area.Left, plot.Area.Right);
        plot.Y = Scale.Round(0, Math.Max(1, t.LeanHistogram.DefaultIfEmpty(0).Max()), 5, plot.Area.Bottom, plot.Area.Top);
        string leaning = plot.Hatching("leaning", 5), flipped = plot.Hatching("flipped", 5, crossed: true);
        plot.Axes("lean, degrees from as intended", "flies", floor: 0);
        for (int bin = 0; bin < t.LeanHistogram.Length; bin++)
        {
            double from = bin * BinDeg;
            if (t.LeanHistogram[bin] == 0)
                continue;
            Point a = plot.At(from, t.LeanHistogram[bin]), b = plot.At(from + BinDeg, 0);
            (string css, string fill) = from switch
            {
                < 30 => ("fly-bar fly-as-intended", "currentColor"),
                < 120 => ("fly-bar fly-leaning", leaning),
                _ => ("fly-bar fly-flipped", flipped),
            };
            plot.Bar(new Box(a.X + 0.6, a.Y, b.X - 0.6, b.Y), css, fill, $"{t.LeanHistogram[bin]} flies from {Wording.Number(from, 0)}° to {Wording.Number(from + BinDeg, 0)}°");
        }

        Key(plot, 46, $"as intended {Wording.Percent(t.AsIntended)}", "currentColor", "fly-as-intended");
        Key(plot, 200, $"leaning {Wording.Percent(t.Leaning)}", leaning, "fly-leaning");
        Key(plot, 306, $"flipped {Wording.Percent(t.Flipped)}", flipped, "fly-flipped");
        plot.Text($"95 % interval {interval}", new Point(46, 48), "start", italic: true);
        return plot.Finish();
    }

    private static void Key(Plot plot, double left, string words, string fill, string css)
    {
        plot.Bar(new Box(left, 21, left + 12, 31), "fly-bar " + css, fill, words);
        plot.Text(words, new Point(left + 17, 30), "start");
    }

    private static string Grade(TyingAccuracy accuracy) => accuracy switch
    {
        TyingAccuracy.FirstSeason => "first-season hands",
        TyingAccuracy.Practiced => "practiced hands",
        _ => "production hands",
    };
}
