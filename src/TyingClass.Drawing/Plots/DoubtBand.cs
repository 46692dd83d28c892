using TyingClass.Balance.Doubting;
using TyingClass.Drawing.Geometry;

namespace TyingClass.Drawing.Plots;

/// <summary>The band that the model's own doubt lays about the soaked curve: hatched, between two fine lines, so that it shows in print and dark.</summary>
internal static class DoubtBand
{
    private const string Css = "fly-doubt";
    private const double Spacing = 4;

    /// <summary>For who does not see it.</summary>
    public static string Words(DoubtBands? bands) => bands is null
        ? ""
        : " A hatched band about the soaked curve shows what the model’s own guesses leave open: nine draws in ten lie within. The table of figures "
            + "tells it for the speed fished.";

    /// <summary>What the axis must hold.</summary>
    public static IEnumerable<double> Ends(IEnumerable<Interval?>? bands, Func<double, double> shown) =>
        bands?.OfType<Interval>().SelectMany(b => new[] { shown(b.Low), shown(b.High) }) ?? [];

    /// <param name="bands">Place along the axis and band there; null where there is none, which breaks it.</param>
    /// <param name="shown">From the band's unit to the axis'.</param>
    public static void Draw(Plot plot, IEnumerable<(double X, Interval? Band)>? bands, Func<double, double> shown)
    {
        if (bands is null) return;
        string hatching = plot.Hatching("doubt", Spacing);
        List<(double X, Interval Band)> run = [];
        foreach ((double x, Interval? band) in bands)
        {
            if (band is { } known) run.Add((x, known));
            else Flush();
        }

        Flush();
        double left = plot.Area.Left + 2 * SpeedSeries.SecondKey;
        plot.Bar(new Box(left, 20, left + 24, 31), Css, hatching, "doubt");
        plot.Text("doubt", new Point(left + 29, 30), "start");

        void Flush()
        {
            Point[] top = [.. run.Select(r => plot.At(r.X, shown(r.Band.High)))], bottom = [.. run.Select(r => plot.At(r.X, shown(r.Band.Low)))];
            plot.Patch([.. top, .. bottom.Reverse()], Css, hatching);
            plot.Curve(top, "fly-line fly-doubt-edge", 0.7);
            plot.Curve(bottom, "fly-line fly-doubt-edge", 0.7);
            run.Clear();
        }
    }
}
