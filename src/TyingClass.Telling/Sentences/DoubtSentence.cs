using System.Collections.Immutable;
using TyingClass.Balance.Doubting;
using TyingClass.Recipes.Text;
using TyingClass.Telling.Figures;

namespace TyingClass.Telling.Sentences;

/// <summary>
/// How far the model can be trusted with one fly, and what to measure first. Of a perfectly tied fly: how steadily a person ties is told by the verdict, and
/// the two are never mixed.
/// </summary>
public static class DoubtSentence
{
    /// <summary>Over the details.</summary>
    public const string Heading = "How far to trust it";

    private const double PracticallyAll = 0.995;

    public static string Of(DoubtReport doubt)
    {
        ArgumentNullException.ThrowIfNull(doubt);
        return doubt.IsSure
            ? $"The model is sure: with its guesses drawn otherwise, it says the same of a perfectly tied fly in {Draws(doubt.SameVerdict)}."
            : $"The model’s own guesses decide here: with them drawn otherwise, it says the same of a perfectly tied fly in only {Draws(doubt.SameVerdict)}. "
                + First(doubt);
    }

    /// <summary>Each figure's range, nine draws in ten, in a reader's words; none for a figure that has none.</summary>
    public static ImmutableArray<SaidRange> Ranges(DoubtReport doubt, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(doubt);
        return
        [
            .. Range(Magnitudes.KeelHeight, doubt.KeelHeightMm, Si.Mm, units),
            .. Range(Magnitudes.Pitch, doubt.PitchDeg, Si.Deg, units),
            .. Range(Magnitudes.SinkRate, doubt.SinkRateMS, si => si, units),
        ];
    }

    /// <summary>What matters most, for the details: "most of it hangs on hook wire by the scale".</summary>
    public static string? Mostly(DoubtReport doubt)
    {
        ArgumentNullException.ThrowIfNull(doubt);
        return doubt.MostlyBy is { } name
            ? $"What matters most among the guesses is {Guess(name)}: {Numbers.Percent(doubt.Shares[0].Share)} of the spread."
            : null;
    }

    private static string First(DoubtReport doubt) => doubt.MostlyBy is not { } name ? "No one guess stands out. Try the fly in a tub."
        : WorthMeasuring(doubt) is { } measure ? $"{Grammar.Capital(measure)} first, and write it into the recipe."
        : $"What matters most is {Guess(name)}, which no recipe can say. Try the fly in a tub.";

    // What a recipe has a key for, unless something else matters more than twice as much.
    private static string? WorthMeasuring(DoubtReport doubt) =>
        doubt.Shares.Where(s => s.Share >= Math.Max(DoubtRules.ShareWorthNaming, doubt.Shares[0].Share / 2)).Select(s => MeasureFirst.Of(s.Estimate))
            .FirstOrDefault(m => m is not null);

    private static string Guess(string name) => $"“{name}”";

    private static string Draws(double share) => share >= PracticallyAll ? "practically every draw" : $"{Numbers.Write(100 * share, 0)} of 100 draws";

    private static IEnumerable<SaidRange> Range(Magnitude what, Interval? interval, Func<double, double> toSi, UnitSystem units)
    {
        if (interval is not { } range) yield break;
        double low = toSi(range.Low), high = toSi(range.High);
        string text = what.Number(low, units) == what.Number(high, units) ? what.Say(low, units) : $"{what.Number(low, units)} to {what.Say(high, units)}";
        yield return new SaidRange(what, low, high, text);
    }
}

/// <summary>"keel height", "0.4 to 0.9 mm".</summary>
/// <param name="Low">SI.</param>
/// <param name="High">SI.</param>
public sealed record SaidRange(Magnitude What, double Low, double High, string Text);
