using TyingClass.Balance.Reports;
using TyingClass.Drawing.Geometry;
using TyingClass.Telling.Figures;
using TyingClass.Telling.Sentences;

namespace TyingClass.Drawing.Plots;

/// <summary>One figure of a fly against the time it has been in the water. How it rides is told by the markers' shape, as against speed.</summary>
internal static class SoakPlot
{
    public static string Draw(string name, BalanceReport report, SoakFigure figure, DrawingOptions options)
    {
        (string kind, Magnitude what, string axis, Func<SoakPoint, double?> si) = Of(figure, report);
        double? Value(SoakPoint at) => si(at) is { } known ? what.Shown(known, options.Units) : null;
        string Said(SoakPoint at) => si(at) is { } known ? what.Say(known, options.Units) : "undefined";
        using Plot plot = new(options, $"soak-{kind}", $"{name}: {what.Name} as it soaks", Describe(report, what.Name, Said));
        double[] all = [.. report.Soak.Select(Value).OfType<double>()];
        double longest = report.Soak.Select(p => p.SoakS).DefaultIfEmpty(1).Max();
        bool fromZero = figure != SoakFigure.Mass;
        plot.X = Scale.Round(0, longest, 6, plot.Area.Left, plot.Area.Right);
        plot.Y = Scale.Round(fromZero ? Math.Min(0, all.DefaultIfEmpty(0).Min()) : all.Min(), fromZero ? Math.Max(0, all.DefaultIfEmpty(1).Max()) : all.Max(),
            5, plot.Area.Bottom, plot.Area.Top);
        plot.Axes("time in the water, s", $"{axis}, {what.Symbol(options.Units)}", fromZero ? 0 : double.NaN);
        List<Point> run = [];
        foreach (SoakPoint at in report.Soak)
        {
            if (Value(at) is { } v) run.Add(plot.At(at.SoakS, v));
            else Flush();
        }

        Flush();
        foreach (SoakPoint at in report.Soak)
        {
            if (Value(at) is { } v) plot.Marker(plot.At(at.SoakS, v), Shape(at), filled: true, Numbers.Write(v, 3));
        }

        Legend(plot, 0, MarkerKind.Round, "as intended");
        Legend(plot, 110, MarkerKind.Diamond, "leaning");
        Legend(plot, 190, MarkerKind.Cross, "flipped");
        if (all.Length == 0)
            plot.Text(figure == SoakFigure.SinkRate ? "finds no attitude to sink in" : "hangs too steeply for a keel height", plot.Area.Center, "middle",
                italic: true);
        return plot.Finish();

        void Flush()
        {
            plot.Curve(run, "fly-line fly-soaked", 1.8);
            run.Clear();
        }
    }

    private static (string Kind, Magnitude What, string Axis, Func<SoakPoint, double?> Si) Of(SoakFigure figure, BalanceReport report)
    {
        return figure switch
        {
            SoakFigure.KeelHeight => ("keel", Magnitudes.KeelHeight, $"keel height {FlyWords.Way(report.Intent)}", p => Si.Mm(p.KeelHeightMm)),
            SoakFigure.SinkRate => ("sink", Magnitudes.SinkRate, "sink rate", p => p.SinkRateMS),
            SoakFigure.Mass => ("mass", Magnitudes.Mass, "mass to cast", p => Si.G(p.MassG)),
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

    private static string Describe(BalanceReport report, string title, Func<SoakPoint, string> said)
    {
        if (report.Soak.IsEmpty) return "No soak was worked out.";
        SoakPoint first = report.Soak[0], last = report.Soak[^1];
        string begins =
            $"The {title} is {said(first)} fresh from the cast "
            + $"and {said(last)} {FlyWords.Soaked(last.SoakS).Replace(" in the water", "", StringComparison.Ordinal)}.";
        // "As intended" by its lean alone, the way the markers tell it.
        int turn = report.Soak.Select((p, i) => (p, i)).FirstOrDefault(x => x.i > 0 && Shape(x.p) != Shape(report.Soak[x.i - 1])).i;
        return turn > 0
            ? $"{begins} Between {Numbers.Write(report.Soak[turn - 1].SoakS, 0)} and {Numbers.Write(report.Soak[turn].SoakS, 0)} s the way it rides "
            + $"changes: it leans {FlyWords.Degrees(report.Soak[turn].LeanDeg)} then."
            : $"{begins} The way it rides does not change.";
    }
}
