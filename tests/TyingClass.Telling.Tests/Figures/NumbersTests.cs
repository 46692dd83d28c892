using TyingClass.Telling.Figures;
using Xunit;

namespace TyingClass.Telling.Tests.Figures;

public sealed class NumbersTests
{
    [Theory]
    [InlineData(true, "+0.14 g·mm", "+0.13 g·mm", "+0.01 g·mm")]
    [InlineData(false, "+0.15 g·mm", "+0.13 g·mm", "+0.01 g·mm")]
    [InlineData(true, "−0.02 g·mm", "+0.13 g·mm", "−0.15 g·mm")]
    [InlineData(true, "0.37 g", "0.2 g", "0.17 g")]
    [InlineData(false, "15°", "7°", "9°")]
    [InlineData(true, "40 %", "25 %", "15 %")]
    public void Adds_FiguresAsTold_IsWhetherTheyMakeUpTheSum(bool adds, string sum, params string[] terms) => Assert.Equal(adds, Numbers.Adds(terms, sum));
}
