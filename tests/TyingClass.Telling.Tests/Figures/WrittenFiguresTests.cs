using TyingClass.Recipes.Text;
using TyingClass.Telling.Figures;
using TyingClass.Telling.Sentences;
using Xunit;

namespace TyingClass.Telling.Tests.Figures;

public sealed class WrittenFiguresTests
{
    [Fact]
    public void BesideOutsideQuotes_Refusal_KeepsWhatWasTyped() => Assert.Equal(
        "“70 mm” is out of range. It may be 0.02 in (0.5 mm) to 0.472 in (12 mm), for example 0.22 in (5.6 mm).",
        WrittenFigures.BesideOutsideQuotes("“70 mm” is out of range. It may be 0.5 mm to 12 mm, for example 5.6 mm.", UnitSystem.Imperial));

    // A bare number typed by a reader of inches was inches.
    [Theory]
    [InlineData("-0.1", "mm", "“-0.1 in”")]
    [InlineData("3", "g", "“3 gr”")]
    [InlineData("0.4", "m/s", "“0.4 ft/s”")]
    public void BesideOutsideQuotes_NumberWithoutAUnit_IsOfferedInTheReadersOwn(string number, string unit, string offered)
    {
        string refusal = $"“{number}” has no unit. Write this or that after the number, for example {number} {unit}.";

        Assert.EndsWith($"for example {offered}.", WrittenFigures.BesideOutsideQuotes(refusal, UnitSystem.Imperial), StringComparison.Ordinal);
        Assert.Equal(refusal, WrittenFigures.BesideOutsideQuotes(refusal, UnitSystem.Metric));
    }

    // No dressing is 7 in long: that reader meant millimeters.
    [Theory]
    [InlineData("7", "mm", " after the number. Are millimeters meant? Then write “7 mm”.")]
    [InlineData("4", "mm", " after the number, for example “4 in”.")]
    [InlineData("30", "m", " after the number, for example “30 ft”.")]
    public void BesideOutsideQuotes_NumberTooLargeForInches_IsAskedAboutAsMillimeters(string number, string unit, string asked)
    {
        string refusal = $"“{number}” has no unit. Write this or that after the number, for example {number} {unit}.";

        Assert.EndsWith(asked, WrittenFigures.BesideOutsideQuotes(refusal, UnitSystem.Imperial), StringComparison.Ordinal);
    }

    // As the reader of recipes says it.
    [Fact]
    public void BesideOutsideQuotes_TheReadersOwnRefusal_IsOfThatForm()
    {
        Assert.False(Units.TryParse("-0.1", Dimension.Length, out _, out string? error));
        Assert.Contains("for example “-0.1 in”.", WrittenFigures.BesideOutsideQuotes(error, UnitSystem.Imperial), StringComparison.Ordinal);
    }

    [Fact]
    public void BesideInHtml_SignsAsEntities_AreFiguresAllTheSame() => Assert.Equal(
        "<p>from 71.6 °F (22 °C) to 610 millionths of an in³ (10 mm³) &amp; on</p>",
        WrittenFigures.BesideInHtml("<p>from 22 &#176;C to 10&nbsp;mm&#179; &amp; on</p>", UnitSystem.Imperial).Replace('\u00A0', ' '));

    // Wire of .030 and .035 in, as the recipe keeps it.
    [Theory]
    [InlineData("0.762 mm", "0.889 mm", UnitSystem.Metric, "0.76 mm", "0.89 mm")]
    [InlineData("0.762 mm", "0.889 mm", UnitSystem.Imperial, "0.03 in", "0.035 in")]
    [InlineData("0.762 mm", "0.764 mm", UnitSystem.Metric, "0.762 mm", "0.764 mm")]
    [InlineData("0.762 mm", "0.764 mm", UnitSystem.Imperial, "0.03 in", "0.0301 in")]
    [InlineData("strip 30.48 cm in 0.5 s", "strip 20 cm in 0.5 s", UnitSystem.Metric, "strip 30.5 cm in 0.5 s", "strip 20 cm in 0.5 s")]
    [InlineData("down 25°", "straight", UnitSystem.Imperial, "down 25°", "straight")]
    [InlineData("12 lb fluorocarbon", "0.254 mm nylon", UnitSystem.Metric, "12 lb fluorocarbon", "0.25 mm nylon")]
    public void Apart_TwoValuesOfARecipe_AreToldAsStatedAndApart(string before, string after, UnitSystem units, string was, string now) =>
        Assert.Equal((was, now), WrittenFigures.Apart(before, after, units));

    // 1 in = 25.4 mm, 1 ft = 0.3048 m, 1 g = 15.4324 gr: international yard and pound agreement, 1959.
    [Theory]
    [InlineData("Keep height at least 0.4 mm.", "Keep height at least 0.016 in (0.4 mm).")]
    [InlineData("between 6.5 mm and 8 mm", "between 0.256 in (6.5 mm) and 0.315 in (8 mm)")]
    [InlineData("at: 3.2 mm … 6.4 mm", "at: 0.126 in (3.2 mm) … 0.252 in (6.4 mm)")]
    [InlineData("wire of 0.20 and 0.25 mm", "wire of 0.008 and 0.01 in (0.20 and 0.25 mm)")]
    [InlineData("0.29 g × 2 is the water.", "4.48 gr (0.29 g) × 2 is the water.")]
    [InlineData("pulled at 0.4 m/s", "pulled at 1.31 ft/s (0.4 m/s)")]
    [InlineData("about 5.2 g·mm", "about 3.16 gr·in (5.2 g·mm)")]
    [InlineData("−0.9\u00A0mm", "−0.035 in (−0.9\u00A0mm)")]
    [InlineData("fresh 12 °C", "fresh 53.6 °F (12 °C)")]
    [InlineData("wraps, lead, 0.64 mm (0.025 in)", "wraps, lead, 0.025 in (0.64 mm)")]
    [InlineData("0.016 in (0.4 mm)", "0.016 in (0.4 mm)")]
    [InlineData("a 1/8 in bead, eyes of 1/50 oz, nine in 10, 8 lb, 25°, 5 s", "a 1/8 in bead, eyes of 1/50 oz, nine in 10, 8 lb, 25°, 5 s")]
    [InlineData("weighs 1.805\u00A0g (27.9 grains)", "weighs 27.9 grains (1.805\u00A0g)")]
    [InlineData("an eye of 3.18\u00A0mm (1/8\u00A0in)", "an eye of 1/8\u00A0in (3.18\u00A0mm)")]
    [InlineData("past you at 30 m/s (67 miles an hour)", "past you at 67 miles an hour (30 m/s)")]
    [InlineData("30 feet (9.14 m)", "30 feet (9.14 m)")]
    [InlineData("a bead (5 mm) and a cone (5 mm long)", "a bead (0.197 in, 5 mm) and a cone (0.197 in (5 mm) long)")]
    [InlineData("at 0 mm, 0 °C", "at 0 in, 32 °F (0 °C)")]
    [InlineData("lead 11 340 kg/m³", "lead 708 lb/ft³ (11 340 kg/m³)")]
    [InlineData("2.30 mg/mm of 11.34 mg/mm³", "0.9 gr/in (2.30 mg/mm) of 708 lb/ft³ (11.34 mg/mm³)")]
    [InlineData("0.00785 g/mm³, 7.85 g per cm³", "490 lb/ft³ (0.00785 g/mm³), 490 lb/ft³ (7.85 g per cm³)")]
    [InlineData("0.25 mm³ of air in 38 mm³", "15 millionths of an in³ (0.25 mm³) of air in 0.00232 in³ (38 mm³)")]
    [InlineData("eyes of 2.8\nmm", "eyes of 0.11 in (2.8\nmm)")]
    [InlineData("an eye of 3.18\nmm (1/8\nin)", "an eye of 1/8\nin (3.18\nmm)")]
    [InlineData("between 0.20\nand 0.25\nmm", "between 0.008\nand 0.01 in (0.20\nand 0.25\nmm)")]
    [InlineData("Wraps at 7 mm", "Wraps at 0.276 in (7 mm)")]
    [InlineData("8500 kg/m³ and size 6 and 5 more", "531 lb/ft³ (8500 kg/m³) and size 6 and 5 more")]
    public void Beside_ImperialReader_HasTheWritersOwnInParentheses(string text, string expected)
    {
        Assert.Equal(expected, WrittenFigures.Beside(text, UnitSystem.Imperial));
        Assert.Equal(text, WrittenFigures.Beside(text, UnitSystem.Metric));
    }

    [Fact]
    public void Instead_Placeholder_IsTheReadersAlone() => Assert.Equal("4XL or 0.866 in", WrittenFigures.Instead("4XL or 22 mm", UnitSystem.Imperial));

    [Fact]
    public void BesideInHtml_TagsAndCode_StayAsTheyAre() => Assert.Equal(
        "<p title=\"5 mm\">A 0.197 in (5\u00A0mm) bead: <code>size: 5 mm</code></p>",
        WrittenFigures.BesideInHtml("<p title=\"5 mm\">A 5\u00A0mm bead: <code>size: 5 mm</code></p>", UnitSystem.Imperial));

    [Fact]
    public void BesideInHtml_SpacesOfHtmlAndALinkOnTheUnit_AreUnderstood() => Assert.Equal(
        "<p>A 0.197 in (5\u00A0mm) bead of 1.0\u00A0g (15 <a href=\"/glossary\">grains</a>)</p>",
        WrittenFigures.BesideInHtml("<p>A 5&nbsp;mm bead of 1.0&nbsp;g (15 <a href=\"/glossary\">grains</a>)</p>", UnitSystem.Imperial));

    [Theory]
    [InlineData(15, 9, "is too large")]
    [InlineData(7, 9, "is too small")]
    [InlineData(-9, 9, "has the wrong sign")]
    [InlineData(-0.2, -0.9, "is not far enough below zero")]
    [InlineData(-2, -0.9, "is too far below zero")]
    [InlineData(0.9, -0.9, "has the wrong sign")]
    public void Beside_AnswerAndKey_NeverCallsANegativeTooLarge(double answer, double key, string expected) =>
        Assert.Equal(expected, ComparisonWords.Beside(answer, key));
}
