using System.Collections.Immutable;
using TyingClass.Balance.Reports;
using TyingClass.Drawing.Plots;
using TyingClass.Telling;
using TyingClass.Telling.Figures;
using TyingClass.Telling.Sentences;

namespace TyingClass.Drawing.Figures;

/// <summary>One curve of several flies in one plot, at one scale, soaked.</summary>
internal sealed class Compared : TeachingFigure
{
    public override string Kind => "compare";

    public override bool NeedsCurves => true;

    public override ImmutableArray<FigurePanel> Draw(FigureRequest request, DrawingOptions options)
    {
        Curve curve = Of(request.Values["curve"], options.Units);
        (string Name, ImmutableArray<(double X, double Y)> Points)[] series = [.. request.Flies.Select(f => (f.Name, curve.Points(f.Fly.Report)))];
        foreach ((string name, ImmutableArray<(double, double)> points) in series)
        {
            if (points.Length < 2) throw new ArgumentException($"{name} has no curve of {curve.Name} that could be drawn.");
        }

        string described = string.Join(" ", series.Select(s => $"{Grammar.Capital(s.Name)}: {curve.Say(s.Points[0])}, {curve.Say(s.Points[^1])}."));
        using Plot plot = new(options, "compare", $"{Grammar.Capital(curve.Name)}: {Grammar.And(series.Select(s => s.Name))}", described, 240
            + SeriesKey.Height(series.Length))
        {
            Area = SeriesKey.Area(series.Length),
        };
        double[] x = [.. series.SelectMany(s => s.Points).Select(p => p.X)], y = [.. series.SelectMany(s => s.Points).Select(p => p.Y), 0];
        plot.X = curve.Name == "righting moment" ? Scale.Exact(0, 180, 30, plot.Area.Left, plot.Area.Right) : Scale.Round(0, x.Max(), 6, plot.Area.Left,
            plot.Area.Right);
        (double zero, double far) = curve.Downward ? (plot.Area.Top, plot.Area.Bottom) : (plot.Area.Bottom, plot.Area.Top);
        plot.Y = Scale.Round(y.Min(), y.Max(), 5, zero, far);
        plot.Axes(curve.Across, curve.Along, floor: 0);
        for (int i = 0; i < series.Length; i++)
            SeriesKey.Draw(plot, i, series[i].Name, [.. series[i].Points.Select(p => plot.At(p.X, p.Y))]);
        return [new FigurePanel("", plot.Finish())];
    }

    private sealed record Curve(string Name, string Across, string Along, Func<BalanceReport, ImmutableArray<(double X, double Y)>> Points, Func<(double X,
        double Y), string> Say)
    {
        public bool Downward { get; init; }
    }

    private static Curve Of(string word, UnitSystem units)
    {
        Magnitude speed = Magnitudes.FishingSpeed, keel = Magnitudes.KeelHeight, moment = Magnitudes.KeelMoment, depth = Magnitudes.Depth;
        double Speed(TowReport t) => speed.Shown(t.SpeedMS, units);
        string Plain((double X, double Y) p, string symbol, string at, int decimals) =>
            $"{Numbers.Write(p.Y, decimals)} {symbol} at {Numbers.Write(p.X, 1)} {at}";
        return word switch
        {
            "pitch" => new Curve("pitch", speed.Axis(units), "pitch, degrees (nose up is positive)",
                r => [.. r.Soaked.Tow.Select(t => (Speed(t), t.PitchDeg))], p => $"{FlyWords.Pitch(p.Y)} at {Numbers.Write(p.X, 1)} {speed.Symbol(units)}"),
            "keel height" => new Curve("keel height", speed.Axis(units), $"keel height, {keel.Symbol(units)}",
                r => [.. r.Soaked.Tow.Where(t =>
                    t.KeelHeightMm.For(r.Intent) is not null).Select(t => (Speed(t), keel.Shown(Si.Mm(t.KeelHeightMm.For(r.Intent)!.Value), units)))],
                p => Plain(p, keel.Symbol(units), speed.Symbol(units), 1)),
            "righting" => new Curve("righting moment", "heel, degrees", $"righting moment, {moment.Symbol(units)}",
                r => [.. r.Soaked.Roll.Points.Select(p =>
                    (p.HeelDeg, moment.Shown(Si.Gmm(p.RestoringGmm), units)))], p => Plain(p, moment.Symbol(units), "degrees", 2)),
            "depth" => new Curve("depth", "time on a slack line, s", $"depth below the start, {depth.Symbol(units)}",
                r => [.. (r.Soaked.Sink?.Depth ?? []).Select(p => (p.TimeS, depth.Shown(p.DepthM, units)))], p => Plain(p, depth.Symbol(units), "s", 2))
            { Downward = true },
            _ => throw new ArgumentException($"No curve is called \"{word}\"."),
        };
    }
}
