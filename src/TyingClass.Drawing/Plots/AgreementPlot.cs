using TyingClass.Balance.Reports;
using TyingClass.Drawing.Geometry;
using TyingClass.Telling.Figures;

namespace TyingClass.Drawing.Plots;

/// <summary>One fly's sink rate, computed and timed.</summary>
public readonly record struct TimedSink(string Name, double PredictedMS, double SeenMS, WetState State);

/// <summary>Timed against computed, one mark a fly; on the slanting line they agree.</summary>
internal static class AgreementPlot
{
    public static string Draw(string title, IReadOnlyList<TimedSink> flies, DrawingOptions options)
    {
        double Shown(double rateMS) => Magnitudes.SinkRate.Shown(rateMS, options.Units);
        string unit = Magnitudes.SinkRate.Symbol(options.Units);
        double most = Shown(flies.SelectMany(f => new[] { f.PredictedMS, f.SeenMS }).DefaultIfEmpty(0.1).Max());
        int above = flies.Count(f => f.SeenMS > f.PredictedMS), below = flies.Count(f => f.SeenMS < f.PredictedMS);
        string description =
            $"{Count(flies.Count, "drop")} timed. {Count(above, "fly", "flies")} sank faster than computed, {below} slower. "
            + string.Concat(
            flies.Take(40)
                .Select(f =>
                $"{f.Name}: computed {Magnitudes.SinkRate.Say(f.PredictedMS, options.Units)}, seen {Magnitudes.SinkRate.Say(f.SeenMS, options.Units)}. "));
        using Plot plot = new(options, "agreement", title, description.TrimEnd(), 330) { Area = new Box(46, 60, 308, 286) };
        plot.X = Scale.Round(0, most, 5, plot.Area.Left, plot.Area.Right);
        plot.Y = Scale.Round(0, most, 5, plot.Area.Bottom, plot.Area.Top);
        plot.Axes($"sink rate computed, {unit}", $"sink rate timed, {unit}", floor: 0);
        double high = Math.Min(plot.X.High, plot.Y.High);
        plot.Line(plot.At(0, 0), plot.At(high, high), "fly-guide", 1, dash: "5 4");
        plot.Text("as computed", plot.At(0.64 * high, 0.64 * high) + new Point(14, 12), "start", italic: true);
        Key(plot, 46, "soaked", MarkerKind.Round, filled: true);
        Key(plot, 130, "fresh from the cast", MarkerKind.Diamond, filled: false);
        foreach (TimedSink fly in flies)
        {
            bool soaked = fly.State == WetState.Soaked;
            plot.Marker(
                plot.At(Shown(fly.PredictedMS), Shown(fly.SeenMS)), soaked ? MarkerKind.Round : MarkerKind.Diamond, filled: soaked,
                $"{fly.Name}: computed {Magnitudes.SinkRate.Say(fly.PredictedMS, options.Units)}, timed {Magnitudes.SinkRate.Say(fly.SeenMS, options.Units)}");
        }

        return plot.Finish();
    }

    private static void Key(Plot plot, double left, string words, MarkerKind kind, bool filled)
    {
        plot.Marker(new Point(left + 5, 32), kind, filled);
        plot.Text(words, new Point(left + 15, 36), "start");
    }

    private static string Count(int number, string one, string? many = null) => $"{number} {(number == 1 ? one : many ?? one + "s")}";
}
