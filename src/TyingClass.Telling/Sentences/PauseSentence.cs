using TyingClass.Balance.Reports;
using TyingClass.Recipes.Text;
using TyingClass.Telling.Figures;

namespace TyingClass.Telling.Sentences;

/// <summary>What happens when the retrieve stops.</summary>
public static class PauseSentence
{
    /// <summary>"the first meter", "the first 3.3 ft".</summary>
    public static string FirstMeter(UnitSystem units) => units == UnitSystem.Metric ? "the first meter" : $"the first {Magnitudes.Depth.Say(1, units)}";

    /// <summary>The line is slack in a pause: all that is told of one is told so.</summary>
    public static string Of(SinkReport sink, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(sink);
        string rate = Magnitudes.SinkRate.Say(Math.Abs(sink.RateMS), units);
        if (sink.RateMS < 0) return $"The line is slack, and it rises at {rate}.";

        string depth = Magnitudes.Depth.Say(sink.DepthAfter5sM, units);
        return sink.FirstMeterMS is { } first
            ? $"The line is slack: nothing but the leader it draws down holds it back. It sets out at {rate}, makes "
                + $"{Magnitudes.FirstMeterRate.Say(first, units)} over {FirstMeter(units)}, and is {depth} down after 5 s."
            : $"The line is slack: nothing but the leader it draws down holds it back. It sets out at {rate} and is {depth} down after 5 s.";
    }
}
