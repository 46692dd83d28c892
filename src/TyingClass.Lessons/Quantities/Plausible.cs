using TyingClass.Recipes.Text;
using TyingClass.Telling.Sentences;

namespace TyingClass.Lessons.Quantities;

/// <summary>
/// Whether a figure that somebody typed can be meant of a fly at all. Bounds are far outside anything tied on a hook: they catch a slipped unit, never a
/// wrong answer. Estimates.
/// </summary>
internal static class Plausible
{
    private const double HeaviestKg = 0.05;
    private const double LargestM3 = 2e-4;
    private const double LongestM = 10;
    private const double DeepestM = 60;
    private const double FastestMS = 10;
    private const double StrongestN = 20;

    /// <returns>The question to ask; null where the figure may be meant.</returns>
    public static string? Question(QuantityQuery query, double si, string typed, UnitSystem units)
    {
        (double low, double high) = Bounds(query.Quantity);
        return si >= low && si <= high ? null
            : RefusalSentence.BeyondReason(typed, query.Phrase(units), query.SayStated(low, units), query.SayStated(high, units));
    }

    private static (double Low, double High) Bounds(Quantity quantity) => (quantity.Name, quantity.Dimension) switch
    {
        // What floats weighs less than nothing in the water, and a change may be for the lighter.
        ("wet weight" or "added mass", _) => (-HeaviestKg, HeaviestKg),
        (_, Dimension.Mass) => (0, HeaviestKg),
        (_, Dimension.Volume) => (0, LargestM3),
        ("depth", _) => (-1, DeepestM),
        (_, Dimension.Length) => (-LongestM, LongestM),
        ("hang angle" or "lean" or "lean while sinking" or "righting range", _) => (0, Math.PI),
        (_, Dimension.Angle) => (-Math.PI, Math.PI),
        (_, Dimension.Speed) => (-FastestMS, FastestMS),
        (_, Dimension.Share) => (0, 1),
        (_, Dimension.Force) => (-StrongestN, StrongestN),
        _ => (double.NegativeInfinity, double.PositiveInfinity),
    };
}
