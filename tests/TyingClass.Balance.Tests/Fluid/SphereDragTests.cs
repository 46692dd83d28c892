using TyingClass.Balance.Fluid;
using Xunit;

namespace TyingClass.Balance.Tests.Fluid;

public sealed class SphereDragTests
{
    // Computed from Clift, Grace and Weber 1978, Haider and Levenspiel 1989, Brown and Lawler 2003; each printed to the digits shown.
    [Theory]
    [InlineData(0.1, 244.26, 249.80, 247.50, 6e-3)]
    [InlineData(1, 27.156, 28.335, 27.600, 6e-4)]
    [InlineData(10, 4.2584, 4.3185, 4.1275, 6e-5)]
    [InlineData(100, 1.0870, 1.0947, 1.0731, 6e-5)]
    [InlineData(1e3, 0.4711, 0.4535, 0.4634, 6e-5)]
    [InlineData(1e4, 0.4052, 0.4204, 0.4106, 6e-5)]
    [InlineData(1e5, 0.5018, 0.4715, 0.4661, 6e-5)]
    public void SphereDrag_AtReynolds_IsThePublishedCorrelation(double reynolds, double clift, double haider, double brown, double tolerance)
    {
        Assert.Equal(clift, Published.CliftGraceWeber(reynolds), tolerance);
        Assert.Equal(haider, Published.HaiderLevenspiel(reynolds), tolerance);
        Assert.Equal(brown, SphereDrag.BrownLawler(reynolds), tolerance);
    }

    // The standard curve is given in pieces; where two meet they differ by a percent or so (Clift, Grace and Weber 1978, table 5.2).
    [Theory]
    [InlineData(20)]
    [InlineData(260)]
    [InlineData(1500)]
    [InlineData(1.2e4)]
    [InlineData(4.4e4)]
    public void CliftGraceWeber_WherePiecesMeet_HasNoJumpOverAPercentAndAHalf(double reynolds) =>
        Assert.Equal(1, Published.CliftGraceWeber(0.99999 * reynolds) / Published.CliftGraceWeber(1.00001 * reynolds), 0.015);
}
