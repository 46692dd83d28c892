using TyingClass.Balance.Reports;
using TyingClass.Drawing.Geometry;
using TyingClass.Telling.Figures;
using TyingClass.Telling.Sentences;

namespace TyingClass.Drawing.Plots;

/// <summary>Two lines against speed: soaked solid with filled markers, fresh dashed with open ones.</summary>
internal static class SpeedSeries
{
    /// <summary>Where the second entry of a legend begins, from the left of the area.</summary>
    public const double SecondKey = 96;

    /// <summary>Speed as plotted, in the reader's unit.</summary>
    public static double Shown(double speedMS, UnitSystem units) => Magnitudes.FishingSpeed.Shown(speedMS, units);

    public static Scale Axis(BalanceReport report, UnitSystem units, Box area)
    {
        double highest = report.Compared().SelectMany(s => s.Tow).Select(t => t.SpeedMS).Append(report.Soaked.AtFishingSpeed.SpeedMS).Max();
        return Scale.Round(0, Shown(highest, units), 6, area.Left, area.Right);
    }

    public static string AxisWords(UnitSystem units) => Magnitudes.FishingSpeed.Axis(units);

    public static MarkerKind Shape(TowReport tow) => tow.LeanDeg switch
    {
        < 30 => MarkerKind.Round,
        <= 120 => MarkerKind.Diamond,
        _ => MarkerKind.Cross,
    };

    /// <summary>The area of a plot that marks how the fly rides: lower where the legend takes a second row.</summary>
    public static Box AreaByLean(BalanceReport report) => Strays(report) ? new Box(46, 60, 308, 196) : new Box(46, 40, 308, 196);

    /// <param name="value">What is plotted; null leaves a gap.</param>
    /// <param name="byLean">Marks how the fly rides, and breaks the line where that changes.</param>
    public static void Draw(Plot plot, StateReport state, UnitSystem units, Func<TowReport, double?> value, bool byLean)
    {
        bool soaked = state.State == WetState.Soaked;
        List<Point> run = [];
        MarkerKind last = MarkerKind.Round;
        foreach (TowReport tow in state.Tow)
        {
            MarkerKind shape = byLean ? Shape(tow) : MarkerKind.Round;
            if (value(tow) is not { } v || (run.Count > 0 && shape != last))
                Flush();
            last = shape;
            if (value(tow) is { } shown)
                run.Add(plot.At(Shown(tow.SpeedMS, units), shown));
        }

        Flush();
        foreach (TowReport tow in state.Tow)
        {
            if (value(tow) is { } v)
                plot.Marker(plot.At(Shown(tow.SpeedMS, units), v), byLean ? Shape(tow) : MarkerKind.Round, soaked, Numbers.Write(v, 3));
        }

        void Flush()
        {
            plot.Curve(run, soaked ? "fly-line fly-soaked" : "fly-line fly-fresh", soaked ? 1.8 : 1.2, soaked ? "" : "6 4");
            run.Clear();
        }
    }

    /// <summary>A line at the speed fished, and the legend above the plot.</summary>
    public static void Furnish(Plot plot, BalanceReport report, UnitSystem units, bool byLean)
    {
        double x = plot.X.At(Shown(report.Soaked.AtFishingSpeed.SpeedMS, units));
        plot.Line(new Point(x, plot.Area.Top), new Point(x, plot.Area.Bottom), "fly-guide", 0.9, "1.5 3");
        bool room = x < plot.Area.Right - 46;
        plot.Text("fished", new Point(room ? x + 4 : x - 4, plot.Area.Bottom - 5), room ? "start" : "end", italic: true);
        Legend(plot, 0, "soaked", soaked: true);
        Legend(plot, SecondKey, FlyWords.StateInBrief(report.Compared()[0]), soaked: false);
        if (!byLean || !Strays(report))
            return;
        plot.Marker(new Point(plot.Area.Left + 15, 44), MarkerKind.Diamond, filled: true);
        plot.Text("leaning", new Point(plot.Area.Left + 35, 48), "start");
        plot.Marker(new Point(plot.Area.Left + SecondKey + 15, 44), MarkerKind.Cross, filled: true);
        plot.Text("flipped", new Point(plot.Area.Left + SecondKey + 35, 48), "start");
    }

    private static bool Strays(BalanceReport report) => report.Compared().SelectMany(s => s.Tow).Any(t => Shape(t) != MarkerKind.Round);

    public static void Legend(Plot plot, double offset, string words, bool soaked)
    {
        double left = plot.Area.Left + offset;
        plot.Line(new Point(left, 26), new Point(left + 30, 26), soaked ? "fly-line fly-soaked" : "fly-line fly-fresh", soaked ? 1.8 : 1.2,
            soaked ? "" : "6 4");
        plot.Marker(new Point(left + 15, 26), MarkerKind.Round, soaked);
        plot.Text(words, new Point(left + 35, 30), "start");
    }
}
