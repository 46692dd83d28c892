using TyingClass.Balance.Reports;
using TyingClass.Drawing.Geometry;
using TyingClass.Telling.Figures;
using TyingClass.Telling.Sentences;

namespace TyingClass.Drawing.Plots;

internal static class LeanPlot
{
    private const double BinDeg = 10;

    public static string Draw(string name, BalanceReport report, DrawingOptions options)
    {
        StateReport state = report.State(options.State);
        ToleranceReport t = state.Tolerance;
        string interval =
            $"{Magnitudes.ShareInterval.Number(t.AsIntendedLow, options.Units)} to {Magnitudes.ShareInterval.Say(t.AsIntendedHigh, options.Units)}";
        string description =
            $"Of {t.Flies} flies tied by the same recipe ({Grade(t.Accuracy)}), {FlyWords.State(state)}: {Numbers.Percent(t.AsIntended)} ride within 30° "
            + $"of {FlyWords.Way(report.Intent)} "
            + $"(95 % interval {interval}), {Numbers.Percent(t.Leaning)} lean further, {Numbers.Percent(t.Flipped)} flip.";
        using Plot plot = new(options, "lean", $"{name}: lean of {t.Flies} flies", description, 260) { Area = new Box(46, 60, 308, 216) };
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
            plot.Bar(new Box(a.X + 0.6, a.Y, b.X - 0.6, b.Y), css, fill,
                $"{t.LeanHistogram[bin]} flies from {Numbers.Write(from, 0)}° to {Numbers.Write(from + BinDeg, 0)}°");
        }

        Key(plot, new Point(46, 30), $"as intended {Numbers.Percent(t.AsIntended)}", "currentColor", "fly-as-intended");
        Key(plot, new Point(182, 30), $"leaning {Numbers.Percent(t.Leaning)}", leaning, "fly-leaning");
        Key(plot, new Point(46, 48), $"flipped {Numbers.Percent(t.Flipped)}", flipped, "fly-flipped");
        plot.Text($"95 % interval {interval}", new Point(plot.Area.Right, 13), "end", italic: true);
        return plot.Finish();
    }

    private static void Key(Plot plot, Point at, string words, string fill, string css)
    {
        plot.Bar(new Box(at.X, at.Y - 9, at.X + 12, at.Y + 1), "fly-bar " + css, fill, words);
        plot.Text(words, at + new Point(17, 0), "start");
    }

    private static string Grade(TyingAccuracy accuracy) => accuracy switch
    {
        TyingAccuracy.FirstSeason => "first-season hands",
        TyingAccuracy.Practiced => "practiced hands",
        _ => "production hands",
    };
}
