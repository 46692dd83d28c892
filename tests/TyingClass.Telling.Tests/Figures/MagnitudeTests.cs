using TyingClass.Recipes.Text;
using TyingClass.Telling.Figures;
using Xunit;

namespace TyingClass.Telling.Tests.Figures;

public sealed class MagnitudeTests
{
    // 25.4 mm, 0.3048 m, 1 lb = 0.45359237 kg = 7000 grains: international yard and pound agreement, 1959.
    [Theory]
    [InlineData("keel height", 0.66e-3, UnitSystem.Metric, "0.7 mm")]
    [InlineData("keel height", -0.94e-3, UnitSystem.Metric, "−0.9 mm")]
    [InlineData("keel height", 0.0385e-3, UnitSystem.Metric, "0.04 mm")]
    [InlineData("keel height", -0.004e-3, UnitSystem.Metric, "0 mm")]
    [InlineData("keel height", 12.7e-3, UnitSystem.Imperial, "0.5 in")]
    [InlineData("keel height", 0.66e-3, UnitSystem.Imperial, "0.026 in")]
    [InlineData("keel height", 0.01e-3, UnitSystem.Imperial, "0.0004 in")]
    [InlineData("mass", 0.554e-3, UnitSystem.Metric, "0.55 g")]
    [InlineData("mass", 0.0254e-3, UnitSystem.Metric, "0.025 g")]
    [InlineData("mass", 0.6479891e-3, UnitSystem.Imperial, "10 gr")]
    [InlineData("mass", 0.03e-3, UnitSystem.Imperial, "0.46 gr")]
    [InlineData("mass", 5e-3, UnitSystem.Imperial, "77.2 gr")]
    [InlineData("pitch", -1.2985, UnitSystem.Imperial, "−74°")]
    [InlineData("pitch", -0.004, UnitSystem.Metric, "0°")]
    [InlineData("sink rate", 0.3048, UnitSystem.Imperial, "1 ft/s")]
    [InlineData("sink rate", 0.2349, UnitSystem.Metric, "0.23 m/s")]
    [InlineData("sink rate", 0.0466, UnitSystem.Metric, "0.047 m/s")]
    [InlineData("sink rate", 1.359, UnitSystem.Metric, "1.4 m/s")]
    [InlineData("depth", 0.9144, UnitSystem.Imperial, "3 ft")]
    [InlineData("depth", 0.423, UnitSystem.Metric, "0.42 m")]
    [InlineData("keel moment of", -0.9123e-6, UnitSystem.Metric, "−0.91 g·mm")]
    [InlineData("keel moment of", 1e-6, UnitSystem.Imperial, "0.61 gr·in")]
    [InlineData("rides as intended", 0.934, UnitSystem.Metric, "93 %")]
    [InlineData("rides as intended", 0.9967, UnitSystem.Metric, "99.7 %")]
    [InlineData("rides as intended", 1, UnitSystem.Metric, "100 %")]
    [InlineData("rides as intended", 0.002, UnitSystem.Metric, "0.2 %")]
    [InlineData("lift", -1.26e-3, UnitSystem.Imperial, "−2 gr")]
    public void Say_Value_HasTheDigitsTheModelDeserves(string name, double si, UnitSystem units, string expected) =>
        Assert.Equal(expected, Magnitudes.Find(name)!.Say(si, units));

    [Fact]
    public void Say_None_SaysSo() => Assert.Equal("cannot be told", Magnitudes.KeelHeight.Say(null, UnitSystem.Metric));

    [Theory]
    [InlineData(0.66e-3, "+0.7 mm")]
    [InlineData(-0.66e-3, "−0.7 mm")]
    [InlineData(0.001e-3, "0 mm")]
    public void SaySigned_Value_HasItsSign(double si, string expected) => Assert.Equal(expected, Magnitudes.KeelHeight.SaySigned(si, UnitSystem.Metric));

    [Fact]
    public void SayApart_FiguresThatRoundAlike_GetThePlacesItTakes()
    {
        Assert.Equal(["0.41 mm", "0.38 mm"], Magnitudes.KeelHeight.SayApart(UnitSystem.Metric, 0.41e-3, 0.38e-3));
        Assert.Equal(["0.4 mm", "0.4 mm"], Magnitudes.KeelHeight.SayApart(UnitSystem.Metric, 0.41e-3, 0.41e-3));
        Assert.Equal(["0.4 mm", "cannot be told"], Magnitudes.KeelHeight.SayApart(UnitSystem.Metric, 0.41e-3, null));
        Assert.Equal(["12°", "12.3°"], Magnitudes.Pitch.SayApart(UnitSystem.Metric, 12 * Math.PI / 180, 12.3 * Math.PI / 180));
    }

    [Fact]
    public void Axis_Imperial_NamesTheReadersUnit() => Assert.Equal("speed, ft/s", Magnitudes.FishingSpeed.Axis(UnitSystem.Imperial));

    [Theory]
    [InlineData("keelHeightMm", 12.7, UnitSystem.Imperial, "0.5 in")]
    [InlineData("massG", 0.55, UnitSystem.Metric, "0.55 g")]
    [InlineData("asIntendedShare", 0.934, UnitSystem.Metric, "93 %")]
    public void KeptFigures_Name_SpeaksTheReadersUnits(string name, double value, UnitSystem units, string said) =>
        Assert.Equal(said, KeptFigures.Say(name, value, units)!.Value.Value);

    [Fact]
    public void KeptFigures_OfAnOlderEngine_AreLeftOut() => Assert.Null(KeptFigures.Say("somethingElseMm", 1, UnitSystem.Metric));

    [Theory]
    [InlineData(Dimension.Mass, UnitSystem.Metric, "Any unit of its kind will do: 0.25 g and 3.86 gr are the same answer.")]
    [InlineData(Dimension.Length, UnitSystem.Metric, "Any unit of its kind will do: 5.6 mm and 0.22 in are the same answer.")]
    [InlineData(Dimension.Length, UnitSystem.Imperial, "Any unit of its kind will do: 0.22 in and 5.6 mm are the same answer.")]
    [InlineData(Dimension.Angle, UnitSystem.Metric, "25° and 25 deg are the same answer.")]
    [InlineData(Dimension.Share, UnitSystem.Metric, "With its unit, as in 90 %.")]
    [InlineData(null, UnitSystem.Metric, "A plain number.")]
    public void SameAnswer_Dimension_ShowsUnitsOfItsKind(Dimension? dimension, UnitSystem units, string expected) =>
        Assert.Equal(expected, TypingHelp.SameAnswer(dimension, units));

    [Fact]
    public void AsIn_Quantity_SaysWhatItIsWhereTheNameDoesNot()
    {
        Assert.Equal("With its unit, as in 0.25 g.", TypingHelp.AsIn("mass", "mass", Dimension.Mass, UnitSystem.Metric));
        Assert.Equal(
            "Distance from the front of the shank to the mass center. With its unit, as in 0.22 in.",
            TypingHelp.AsIn("mass center, x", "distance from the front of the shank to the mass center", Dimension.Length, UnitSystem.Imperial));
    }
}
