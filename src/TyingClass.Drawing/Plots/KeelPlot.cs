using TyingClass.Balance.Doubting;
using TyingClass.Balance.Reports;
using TyingClass.Drawing.Geometry;
using TyingClass.Telling.Figures;
using TyingClass.Telling.Sentences;

namespace TyingClass.Drawing.Plots;

internal static class KeelPlot
{
    public static string Draw(string name, BalanceReport report, DoubtBands? bands, DrawingOptions options)
    {
        UnitSystem units = options.Units;
        double? Value(TowReport tow) => tow.KeelHeightMm.For(report.Intent) is { } mm ? Shown(mm) : null;
        using Plot plot = new(options, "keel", $"{name}: keel height against speed", Describe(report, units) + DoubtBand.Words(bands));
        double Shown(double mm) => Magnitudes.KeelHeight.Shown(Si.Mm(mm), units);
        double[] curve = [.. report.Compared().SelectMany(s => s.Tow).Select(Value).OfType<double>()];
        double[] all = [.. curve, .. DoubtBand.Ends(bands?.BySpeed.Select(b => b.KeelHeightMm), Shown), 0];
        double span = Math.Max(all.Max() - all.Min(), Magnitudes.KeelHeight.Shown(Si.Mm(1), units));
        plot.X = SpeedSeries.Axis(report, units, plot.Area);
        plot.Y = Scale.Round(Math.Min(all.Min(), -0.2 * span), Math.Max(all.Max(), 0.2 * span), 5, plot.Area.Bottom, plot.Area.Top);
        plot.Axes(SpeedSeries.AxisWords(units), $"keel height {FlyWords.Way(report.Intent)}, {Magnitudes.KeelHeight.Symbol(units)}", floor: 0);
        double zero = plot.Y.At(0);
        List<Point[]> curves = [.. report.Compared().Select(state => state.Tow.Where(t => Value(t) is not null)
            .Select(t => plot.At(SpeedSeries.Shown(t.SpeedMS, units), Value(t)!.Value)).ToArray())];
        plot.TextWhereFree("returns when tipped", curves, Places(zero - 5, plot.Area.Top + 12, plot.Area));
        if (zero + 14 < plot.Area.Bottom)
            plot.TextWhereFree("turns over", curves, Places(zero + 14, plot.Area.Bottom - 5, plot.Area));
        DoubtBand.Draw(plot, bands?.BySpeed.Select(b => (SpeedSeries.Shown(b.SpeedMS, units), b.KeelHeightMm)), Shown);
        SpeedSeries.Furnish(plot, report, units, byLean: false);
        foreach (StateReport state in report.Compared())
            SpeedSeries.Draw(plot, state, units, Value, byLean: false);
        if (curve.Length == 0)
            plot.Text("hangs at every speed: no keel height", plot.Area.Center, "middle", italic: true);
        return plot.Finish();
    }

    // Beside the axis first, then at the far edge of the same half.
    private static IEnumerable<(Point At, string Anchor)> Places(double near, double far, Box area) =>
        from y in new[] { near, (near + far) / 2, far }
        from side in new[] { (area.Right - 2, "end"), ((area.Left + area.Right) / 2, "middle"), (area.Left + 4, "start") }
        select (new Point(side.Item1, y), side.Item2);

    private static string Describe(BalanceReport report, UnitSystem units) => string.Join(" ", report.Compared().Select(s =>
    {
        string state = FlyWords.StateAtHead(s);
        double? fished = s.AtFishingSpeed.KeelHeightMm.For(report.Intent);
        double[] all = [.. s.Tow.Select(t => t.KeelHeightMm.For(report.Intent)).OfType<double>()];
        if (all.Length == 0)
            return $"{state}: the fly hangs too steeply for a keel height to mean anything at every speed solved ({s.Tow.Length} of {s.Tow.Length}).";
        string now = fished is { } h
            ? $"{Magnitudes.KeelHeight.Say(Si.Mm(h), units)} at the {Magnitudes.FishingSpeed.Say(s.AtFishingSpeed.SpeedMS, units)} it is fished at, " : "";
        return $"{state}: {now}from {Magnitudes.KeelHeight.Say(Si.Mm(all.Min()), units)} to {Magnitudes.KeelHeight.Say(Si.Mm(all.Max()), units)} over all "
            + "speeds; above zero it returns when tipped.";
    }));
}
