using TyingClass.Balance.Retrieving;
using TyingClass.Recipes.Text;
using TyingClass.Telling.Figures;

namespace TyingClass.Telling.Sentences;

/// <summary>What the line hand does, in words.</summary>
public static class RetrieveWords
{
    /// <summary>"strip 30 cm in 0.5 s, pause 1.5 s".</summary>
    public static string Round(RetrievePlan plan, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(plan);
        return string.Join(", ", plan.Round.Select(s => s.IsStrip
            ? $"strip {Magnitudes.Hop.SayStated(s.StripM, units)} in {Time(s.DurationS, units)}"
            : $"pause {Time(s.DurationS, units)}"));
    }

    private static string Time(double seconds, UnitSystem units) => Stated.Say(seconds, Dimension.Duration, units);
}
