using System.Collections.Immutable;
using TyingClass.Balance.Tying;
using TyingClass.Drawing.Plots;
using TyingClass.Telling.Figures;

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
                $"Which way up: the model said what the tub showed for {agreed} of {looked} {(looked == 1 ? "fly" : "flies")} "
                    + $"({Numbers.Write(100.0 * agreed / looked, 0)} %). With so few flies, the true share may lie anywhere "
                    + $"from {Numbers.Write(100 * share.Low, 0)} to {Numbers.Write(100 * share.High, 0)} % (95 % interval).");
        }

        if (!drops.IsEmpty)
        {
            double[] ratios = [.. drops.Select(d => d.SeenMS / d.PredictedMS).Order()];
            double middle = ratios.Length % 2 == 1 ? ratios[ratios.Length / 2] : (ratios[ratios.Length / 2 - 1] + ratios[ratios.Length / 2]) / 2;
            words.Add(ratios.Length == 1
                ? $"Sink rate: the one drop timed came to {Numbers.Fixed(middle, 2)} times the computed."
                : $"Sink rate: in the middle, {Numbers.Fixed(middle, 2)} times the computed; from {Numbers.Fixed(ratios[0], 2)} "
                    + $"to {Numbers.Fixed(ratios[^1], 2)} times over {ratios.Length} drops.");
        }

        return words.ToImmutable();
    }
}
