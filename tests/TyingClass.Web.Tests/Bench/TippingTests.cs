using System.Collections.Immutable;
using TyingClass.Balance.Reports;
using TyingClass.Web.Bench;
using Xunit;

namespace TyingClass.Web.Tests.Bench;

public sealed class TippingTests
{
    // Restores up to 90°, turns over beyond: sin 2θ.
    private static readonly RollCurve Curve = new([.. Enumerable.Range(0, 37).Select(i => new RollPoint(5 * i, Math.Sin(2 * 5 * i * Math.PI / 180)))], 90);

    [Theory]
    [InlineData(40, 0), InlineData(85, 0), InlineData(95, 180), InlineData(170, 180), InlineData(0, 0), InlineData(180, 180)]
    public void From_EitherSideOfTheRange_EndsWhereTheMomentSends(double from, double to)
    {
        ImmutableArray<double> heels = Tipping.From(Curve, from);
        Assert.Equal(from, heels[0]);
        Assert.Equal(to, heels[^1], 0.6);
        Assert.Equal(from < 90 ? heels.OrderDescending() : heels.Order(), heels);
    }

    [Fact]
    public void From_NoCurve_ShowsNothing() => Assert.Empty(Tipping.From(new RollCurve([], 0), 40));
}
