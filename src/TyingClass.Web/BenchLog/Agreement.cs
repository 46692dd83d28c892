using System.Collections.Immutable;
using TyingClass.Balance.Reports;
using TyingClass.Recipes.Text;
using TyingClass.Storage.BenchLog;
using TyingClass.Telling.Figures;

namespace TyingClass.Web.BenchLog;

/// <summary>One thing seen beside what was computed.</summary>
/// <param name="Apart">How far the two are apart, in words.</param>
/// <param name="Agrees">Only for what can be said yes or no of: which way up.</param>
public sealed record AgreementRow(string What, string Computed, string Seen, string Apart, bool? Agrees = null);

/// <summary>Seen beside computed. The tub has the last word: nothing here calls an observation wrong.</summary>
public static class Agreement
{
    public static ImmutableArray<AgreementRow> Of(LogEntry entry, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(entry);
        (Seen seen, Foreseen foreseen) = (entry.Seen, entry.Foreseen);
        ImmutableArray<AgreementRow>.Builder rows = ImmutableArray.CreateBuilder<AgreementRow>();
        if (seen.Way is { } way)
        {
            bool agrees = WayAgrees(entry) == true;
            rows.Add(new AgreementRow($"Which way up, {State(seen)}", foreseen.Way, LogReader.Words(way), agrees ? "as computed" : "not as computed", agrees));
        }

        if (seen.HangAngleRad is { } hang)
            rows.Add(Row("Hang angle, shank from plumb", foreseen.HangAngleRad, hang, Magnitudes.HangAngle, units));
        if (seen.MassKg is { } mass)
            rows.Add(Row("Mass, dry", foreseen.MassKg, mass, Magnitudes.Mass, units) with { Apart = Percent(foreseen.MassKg, mass) });
        if (seen.SinkRateMS is { } rate)
        {
            string what = $"Sink rate over {Magnitudes.Depth.SayStated(seen.SinkDepthM!.Value, units)}, {State(seen)}";
            rows.Add(foreseen.SinkRateMS is { } computed
                ? Row(what, computed, rate, Magnitudes.SinkRate, units) with { Apart = Ratio(computed, rate) }
                : new AgreementRow(what, "settles to no rate", Stated.Say(rate, Dimension.Speed, units), "nothing to compare with"));
        }

        if (seen.HopM is { } hop)
        {
            rows.Add(foreseen.HopM is { } computed
                ? Row("Hop of a strip", computed, hop, Magnitudes.Hop, units)
                : new AgreementRow("Hop of a strip", "no retrieve to follow", Magnitudes.Hop.SayStated(hop, units), "nothing to compare with"));
        }

        if (seen.NoseDownS is { } down)
        {
            rows.Add(foreseen.NoseDownS is { } computed
                ? Row("Pause until the nose is down", computed, down, Magnitudes.PointDownTime, units)
                : new AgreementRow("Pause until the nose is down", "never points down", Stated.Say(down, Dimension.Duration, units), "not as computed"));
        }

        return rows.ToImmutable();
    }

    /// <returns>Null when nobody looked which way up.</returns>
    public static bool? WayAgrees(LogEntry entry) => entry?.Seen.Way switch
    {
        null => null,
        SeenWay.PointDown => entry.Foreseen.Way == "point down",
        SeenWay.PointUp => entry.Foreseen.Way == "point up",
        SeenWay.OnItsSide => entry.Foreseen.Way == Telling.Sentences.WayWords.OnItsSide,
        _ => entry.Foreseen.Way == Telling.Sentences.WayWords.NoClearWay,
    };

    public static string Ratio(double computed, double seen) => computed <= 0
        ? "computed to rise"
        : $"{Numbers.Fixed(seen / computed, 2)} times the computed";

    private static string Percent(double computed, double seen) =>
        $"{Numbers.Fixed(Math.Abs(100 * (seen / computed - 1)), 1)} % {(seen >= computed ? "more" : "less")}";

    private static string State(Seen seen) => seen.State == WetState.Fresh ? "fresh" : "soaked";

    private static AgreementRow Row(string what, double computed, double seen, Magnitude magnitude, UnitSystem units)
    {
        double more = seen - computed;
        string apart = magnitude.Say(Math.Abs(more), units);
        return new AgreementRow(
            what, magnitude.Say(computed, units), magnitude.SayStated(seen, units),
            apart == magnitude.Say(0, units) ? "about the same" : $"{apart} {(more >= 0 ? "more" : "less")}");
    }
}
