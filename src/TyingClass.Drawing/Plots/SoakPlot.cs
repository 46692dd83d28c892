using TyingClass.Balance.Reports;
using TyingClass.Drawing.Geometry;
using TyingClass.Drawing.Words;

namespace TyingClass.Drawing.Plots;

/// <summary>One figure of a fly against the time it has been in the water. How it rides is told by the markers' shape, as against speed.</summary>
internal static class SoakPlot
{
    public static string Draw(string name, BalanceReport report, SoakFigure figure, DrawingOptions options)
    {
        (string kind, string title, string axis, Func<SoakPoint, double?> value) = Of(figure, report, options.Units);
        using Plot plot = new(options, $"soak-{kind}", $"{name}: {title} as it soaks", Describe(report, title, axis, value));
        double[] all = [.. report.Soak.Select(value).OfType<double>()];
        double longest = report.Soak.Select(p => p.SoakS).DefaultIfEmpty(1).Max();
        bool fromZero = figure != SoakFigure.Mass;
        plot.X = Scale.Round(0, longest, 6, plot.Area.Left, plot.Area.Right);
        plot.Y = Scale.Round(fromZero ? Math.Min(0, all.DefaultIfEmpty(0).Min()) : all.Min(), fromZero ? Math.Max(0, all.DefaultIfEmpty(1).Max()) : all.Max(), 5, plot.Area.Bottom, plot.Area.Top);
        plot.Axes("time in the water, s", axis, fromZero ? 0 : double.NaN);
        List<Point> run = [];
        foreach (SoakPoint at in report.Soak)
        {
            if (value(at) is { } v) run.Add(plot.At(at.SoakS, v));
            else Flush();
        }

        Flush();
        foreach (SoakPoint at in report.Soak)
        {
            if (value(at) is { } v) plot.Marker(plot.At(at.SoakS, v), Shape(at), filled: true, Wording.Number(v, 3));
        }

        Legend(plot, 0, MarkerKind.Round, "as intended");
        Legend(plot, 110, MarkerKind.Diamond, "leaning");
        Legend(plot, 190, MarkerKind.Cross, "flipped");
        if (all.Length == 0) plot.Text(figure == SoakFigure.SinkRate ? "finds no attitude to sink in" : "hangs too steeply for a keel height", plot.Area.Center, "middle", italic: true);
        return plot.Finish();

        void Flush()
        {
            plot.Curve(run, "fly-line fly-soaked", 1.8);
            run.Clear();
        }
    }

    private static (string Kind, string Title, string Axis, Func<SoakPoint, double?> Value) Of(SoakFigure figure, BalanceReport report, UnitSystem units)
    {
        bool metric = units == UnitSystem.Metric;
        return figure switch
        {
            SoakFigure.KeelHeight => ("keel", "keel height", $"keel height {Wording.Way(report.Intent)}, {(metric ? "mm" : "in")}", p => p.KeelHeightMm / (metric ? 1 : 25.4)),
            SoakFigure.SinkRate => ("sink", "sink rate", $"sink rate, {(metric ? "m/s" : "ft/s")}", p => p.SinkRateMS / (metric ? 1 : 0.3048)),
            // 1 grain = 64.79891 mg exactly.
            SoakFigure.Mass => ("mass", "mass", $"mass to cast, {(metric ? "g" : "grains")}", p => p.MassG / (metric ? 1 : 0.06479891)),
            _ => throw new ArgumentOutOfRangeException(nameof(figure), figure, "No such figure."),
        };
    }

    private static MarkerKind Shape(SoakPoint at) => at.LeanDeg switch
    {
        < 30 => MarkerKind.Round,
        <= 120 => MarkerKind.Diamond,
        _ => MarkerKind.Cross,
    };

    private static void Legend(Plot plot, double offset, MarkerKind kind, string words)
    {
        plot.Marker(new Point(plot.Area.Left + offset + 4, 26), kind, filled: true);
        plot.Text(words, new Point(plot.Area.Left + offset + 13, 30), "start");
    }

    private static string Describe(BalanceReport report, string title, string axis, Func<SoakPoint, double?> value)
    {
        if (report.Soak.IsEmpty) return "No soak was worked out.";
        SoakPoint first = report.Soak[0], last = report.Soak[^1];
        string unit = axis[(axis.LastIndexOf(' ') + 1)..];
        string Said(SoakPoint p) => value(p) is { } v ? $"{Wording.Number(v, 2)} {unit}" : "undefined";
        string begins = $"The {title} is {Said(first)} fresh from the cast and {Said(last)} after {Wording.Number(last.SoakS, 0)} s.";
        // "As intended" by its lean alone, the way the markers tell it.
        int turn = report.Soak.Select((p, i) => (p, i)).FirstOrDefault(x => x.i > 0 && Shape(x.p) != Shape(report.Soak[x.i - 1])).i;
        return turn > 0
            ? $"{begins} Between {Wording.Number(report.Soak[turn - 1].SoakS, 0)} and {Wording.Number(report.Soak[turn].SoakS, 0)} s the way it rides changes: it leans {Wording.Number(report.Soak[turn].LeanDeg, 0)}° then."
            : $"{begins} The way it rides does not change.";
    }
}
