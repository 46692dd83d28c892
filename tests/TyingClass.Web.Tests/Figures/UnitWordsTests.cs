using TyingClass.Web.Figures;
using Xunit;

namespace TyingClass.Web.Tests.Figures;

public sealed class UnitWordsTests
{
    [Theory]
    [InlineData("mass", "Any unit of its kind will do: 0.25 g and 3.86 gr are the same answer.")]
    [InlineData("keel height", "Any unit of its kind will do: 5.6 mm and 0.22 in are the same answer.")]
    [InlineData("hang angle", "25° and 25 deg are the same answer.")]
    [InlineData("rides as intended", "With its unit, as in 90 %.")]
    [InlineData("parts", "A plain number.")]
    public void SameAnswer_Quantity_ShowsUnitsOfItsKind(string quantity, string expected) => Assert.Equal(expected, UnitWords.SameAnswer(quantity));

    [Theory]
    [InlineData("mass", "With its unit, as in 0.25 g.")]
    [InlineData("mass center, x", "Distance from the front of the shank to the mass center. With its unit, as in 5.6 mm.")]
    public void AsIn_Quantity_SaysWhatItIsWhereTheNameDoesNot(string quantity, string expected) => Assert.Equal(expected, UnitWords.AsIn(quantity));
}
