using TyingClass.Balance.Doubting;
using Xunit;

namespace TyingClass.Balance.Tests.Doubting;

public sealed class StrataTests
{
    [Theory]
    [InlineData("hook wire by the scale", 200)]
    [InlineData("suppleness of marabou", 7)]
    [InlineData("", 1)]
    public void Of_AnyName_HasOneDrawInTheMiddleOfEachStratum(string name, int draws) =>
        Assert.Equal(Enumerable.Range(0, draws).Select(i => (i + 0.5) / draws), Strata.Of(name, draws).Order());

    [Fact]
    public void Of_SameName_IsTheSame() => Assert.Equal(Strata.Of("spear", 200), Strata.Of("spear", 200));

    // Written down once: another shuffle would be another doubt of every fly.
    [Fact]
    public void Of_ThisName_StaysWhatItWas() =>
        Assert.Equal([0.45, 0.85, 0.95, 0.05, 0.15], Strata.Of("spear", 10).Take(5).Select(u => Math.Round(u, 2)));

    // Of independent columns the correlation has a standard deviation of 1/√199 = 0.07; five of them would be a fault of the shuffle.
    [Fact]
    public void Of_ManyNames_AreAsGoodAsIndependent()
    {
        double[][] columns = [.. Enumerable.Range(0, 60).Select(i => Strata.Of($"estimate {i}", 200))];
        double[] correlations = [.. from a in Enumerable.Range(0, 60) from b in Enumerable.Range(0, a) select Correlation(columns[a], columns[b])];

        Assert.InRange(correlations.Max(Math.Abs), 0, 5 / Math.Sqrt(199));
        Assert.Equal(1 / Math.Sqrt(199), Math.Sqrt(correlations.Average(r => r * r)), 0.006);
    }

    private static double Correlation(double[] a, double[] b) =>
        a.Zip(b, (x, y) => (x - 0.5) * (y - 0.5)).Sum() / Math.Sqrt(a.Sum(x => (x - 0.5) * (x - 0.5)) * b.Sum(y => (y - 0.5) * (y - 0.5)));
}
