using System.Collections.Immutable;
using System.Globalization;
using TyingClass.Balance.Tying;
using TyingClass.Drawing.Plots;

namespace TyingClass.Web.BenchLog;

/// <summary>What a class's observations come to. A handful of flies proves little, and says so by its interval.</summary>
internal static class ClassLogWords
{
    public static ImmutableArray<string> Of(int looked, int agreed, ImmutableArray<TimedSink> drops)
    {
        ImmutableArray<string>.Builder words = ImmutableArray.CreateBuilder<string>();
        if (looked > 0)
        {
            ShareInterval share = ShareInterval.Wilson(agreed, looked);
            words.Add(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"Which way up: the model said what the tub showed for {agreed} of {looked} {(looked == 1 ? "fly" : "flies")} "
                        + $"({100.0 * agreed / looked:0} %). With so few flies, the true share may lie anywhere from {100 * share.Low:0} "
                        + $"to {100 * share.High:0} % (95 % interval)."));
        }

        if (!drops.IsEmpty)
        {
            double[] ratios = [.. drops.Select(d => d.SeenMS / d.PredictedMS).Order()];
            double middle = ratios.Length % 2 == 1 ? ratios[ratios.Length / 2] : (ratios[ratios.Length / 2 - 1] + ratios[ratios.Length / 2]) / 2;
            words.Add(ratios.Length == 1
                ? FormattableString.Invariant($"Sink rate: the one drop timed came to {middle:0.00} times the computed.")
                : FormattableString.Invariant(
                $"Sink rate: in the middle, {middle:0.00} times the computed; from {ratios[0]:0.00} to {ratios[^1]:0.00} times over {ratios.Length} drops."));
        }

        return words.ToImmutable();
    }
}
