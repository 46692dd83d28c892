using CsCheck;
using TyingClass.Lessons.Reasons;
using Xunit;

namespace TyingClass.Lessons.Tests.Reasons;

// Checked against the axioms and worked examples of L. S. Shapley, "A value for n-person games" (1953).
public sealed class ShapleyTests
{
    [Fact]
    public void Of_TwoThatOnlyWorkTogether_ShareEvenly() => Assert.Equal([0.5, 0.5], Shapley.Of(2, mask => mask == 3 ? 1 : 0)!);

    // The glove game: two left gloves and one right make one pair; the right one is worth 2/3, each left one 1/6.
    [Fact]
    public void Of_TheGloveGame_IsShapleysOwnResult()
    {
        double[] shares = Shapley.Of(3, mask => (mask & 4) != 0 && (mask & 3) != 0 ? 1 : 0)!;

        Assert.Equal(1.0 / 6, shares[0], 12);
        Assert.Equal(1.0 / 6, shares[1], 12);
        Assert.Equal(2.0 / 3, shares[2], 12);
    }

    [Fact]
    public void Of_AnyGame_SumsToTheWholeAndGivesNothingToOneThatDoesNothing() => Gen.Double[-10, 10].Array[8].Sample(values =>
    {
        // The fourth changes nothing.
        double[] shares = Shapley.Of(4, mask => values[mask & 7])!;
        Assert.Equal(values[7] - values[0], shares.Sum(), 9);
        Assert.Equal(0, shares[3], 9);
    });

    [Fact]
    public void Of_AFigureLostOnOneWay_IsAveragedOverTheOthers()
    {
        // With the first alone there is no figure: only the order that turns the second first can be gone through.
        Assert.Equal([2, 1], Shapley.Of(2, mask => mask switch { 0 => 0, 1 => (double?)null, 2 => 1, _ => 3 })!);
        Assert.Null(Shapley.Of(2, mask => mask is 1 or 2 ? null : 0));
    }
}
