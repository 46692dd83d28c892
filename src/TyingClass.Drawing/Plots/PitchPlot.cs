using TyingClass.Balance.Doubting;
using TyingClass.Balance.Reports;
using TyingClass.Telling.Figures;
using TyingClass.Telling.Sentences;

namespace TyingClass.Drawing.Plots;

internal static class PitchPlot
{
    public static string Draw(string name, BalanceReport report, DoubtBands? bands, DrawingOptions options)
    {
        UnitSystem units = options.Units;
        string described = Describe(report, units) + DoubtBand.Words(bands);
        using Plot plot = new(options, "pitch", $"{name}: pitch against speed", described) { Area = SpeedSeries.AreaByLean(report) };
        IEnumerable<double> curves = report.Compared().SelectMany(s => s.Tow).Select(t => t.PitchDeg);
        double[] all = [.. curves, .. DoubtBand.Ends(bands?.BySpeed.Select(b => b.PitchDeg), deg => deg), 0];
        plot.X = SpeedSeries.Axis(report, units, plot.Area);
        plot.Y = Scale.Round(all.Min(), all.Max(), 5, plot.Area.Bottom, plot.Area.Top);
        plot.Axes(SpeedSeries.AxisWords(units), "pitch, degrees (nose up is positive)", floor: 0);
        DoubtBand.Draw(plot, bands?.BySpeed.Select(b => (SpeedSeries.Shown(b.SpeedMS, units), b.PitchDeg)), deg => deg);
        SpeedSeries.Furnish(plot, report, units, byLean: true);
        foreach (StateReport state in report.Compared())
            SpeedSeries.Draw(plot, state, units, t => t.PitchDeg, byLean: true);
        return plot.Finish();
    }

    private static string Describe(BalanceReport report, UnitSystem units) => string.Join(" ", report.Compared().Where(s => s.Tow.Length > 0).Select(s =>
    {
        TowReport slow = s.Tow[0], fast = s.Tow[^1];
        string flip = s.Tow.FirstOrDefault(t => t.LeanDeg > 120) is { } over ? $" It is flipped at {Magnitudes.FishingSpeed.Say(over.SpeedMS, units)}." : "";
        string state = FlyWords.StateAtHead(s);
        return $"{state}: {FlyWords.Pitch(slow.PitchDeg)} at {Magnitudes.FishingSpeed.Say(slow.SpeedMS, units)}, {FlyWords.Pitch(fast.PitchDeg)} "
            + $"at {Magnitudes.FishingSpeed.Say(fast.SpeedMS, units)}.{flip}";
    }));
}
