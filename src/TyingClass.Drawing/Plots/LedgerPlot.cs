using TyingClass.Balance.Reports;
using TyingClass.Drawing.Geometry;
using TyingClass.Recipes.Reports;
using TyingClass.Telling.Figures;
using TyingClass.Telling.Sentences;

namespace TyingClass.Drawing.Plots;

/// <summary>A bar a part, right for what brings the fly back and left for what turns it over, and the sum under a rule.</summary>
internal static class LedgerPlot
{
    private const double Row = 24, Top = 44, LabelWidth = 110, MostLetters = 17, FigureWidth = 46, Foot = 20;

    public static string Draw(SolvedFly fly, DrawingOptions options)
    {
        (string name, BalanceReport report) = (fly.Recipe.Name, fly.Report);
        StateReport state = report.State(options.State);
        UnitSystem units = options.Units;
        double total = state.Ledger.Sum(e => e.KeelMomentGmm);
        bool adds = Numbers.Adds(state.Ledger.Select(e => Signed(e.KeelMomentGmm, units)), Signed(total, units));
        HashSet<string> byWater = [.. LedgerSentence.PulledByWater(fly, state).Select(e => e.Part)];
        string description =
            $"Riding {FlyWords.Way(report.Intent)}, {FlyWords.State(state)}; positive brings the fly back. "
            + string.Concat(state.Ledger.Select(e => $"{e.Part} {Signed(e.KeelMomentGmm, units)}; "))
            + $"in all{(adds ? "" : $", {Numbers.EachRounded},")} {Magnitudes.KeelMoment.SaySigned(Si.Gmm(total), units)}. "
            + LedgerSentence.ByWater(fly, state, units);
        double rows = Top + Row * (state.Ledger.Length + 1) + 8;
        double height = rows + 12 + (byWater.Count > 0 ? Foot : 0);
        using Plot plot = new(options, "ledger", $"{name}: what holds it up and what turns it over", description.TrimEnd(), height)
        {
            Area = new Box(LabelWidth, Top, 308, rows),
        };
        double[] all = [.. state.Ledger.Select(e => e.KeelMomentGmm), total, 0];
        // Room beyond the longest bar on each side for its figure, and some for a figure at zero.
        double span = Math.Max(all.Max() - all.Min(), 1e-6);
        int sides = all.Min() < 0 ? 2 : 1;
        double figure = span * FigureWidth / (plot.Area.Width - sides * FigureWidth);
        double low = all.Min() < 0 ? all.Min() - figure : 0, high = all.Max() + figure;
        plot.X = Scale.Exact(low, high, high - low, plot.Area.Left, plot.Area.Right);
        string hatch = plot.Hatching("against", 4);
        double zero = plot.X.At(0);
        plot.Text($"keel moment by part, {Magnitudes.KeelMoment.Symbol(units)}", new Point(2, 13), "start", italic: true);
        plot.Text("← turns it over", new Point(LabelWidth, 32), "start", italic: true);
        plot.Text("brings it back →", new Point(plot.Area.Right, 32), "end", italic: true);
        for (int i = 0; i < state.Ledger.Length; i++)
        {
            LedgerEntry entry = state.Ledger[i];
            string part = byWater.Contains(entry.Part) ? entry.Part + " *" : entry.Part;
            Bar(plot, Top + Row * i, part, (entry.KeelMomentGmm, Signed(entry.KeelMomentGmm, units)), hatch);
        }

        double rule = Top + Row * state.Ledger.Length + 3;
        plot.Line(new Point(2, rule), new Point(plot.Area.Right, rule), "fly-axis-line", 0.9);
        Bar(plot, rule + 2, adds ? "in all" : "in all, rounded", (total, Signed(total, units)), hatch, strong: true);
        plot.Line(new Point(zero, Top - 4), new Point(zero, rows), "fly-axis-line", 1.3);
        if (byWater.Count > 0) plot.Text("* mostly the pull of the water on it, not its weight", new Point(2, rows + 20), "start", italic: true);
        return plot.Finish();
    }

    private static void Bar(Plot plot, double top, string part, (double Gmm, string Said) moment, string hatch, bool strong = false)
    {
        double value = moment.Gmm;
        double zero = plot.X.At(0), end = plot.X.At(value);
        string shown = part.Length > MostLetters ? part[..((int)MostLetters - 1)] + "…" : part;
        plot.Text(shown, new Point(2, top + 16), "start", css: strong ? "fly-words fly-strong" : "fly-words");
        plot.Bar(new Box(Math.Min(zero, end), top + 5, Math.Max(zero, end), top + 19), value >= 0 ? "fly-bar fly-for" : "fly-bar fly-against",
            value >= 0 ? "currentColor" : hatch, $"{part} {moment.Said}");
        plot.Text(moment.Said, new Point(value >= 0 ? end + 5 : end - 5, top + 16), value >= 0 ? "start" : "end");
    }

    private static string Signed(double gmm, UnitSystem units) => Magnitudes.KeelMoment.NumberSigned(Si.Gmm(gmm), units);
}
