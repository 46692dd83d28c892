using TyingClass.Balance.Reports;
using TyingClass.Recipes.Measured;
using TyingClass.Recipes.Text;
using TyingClass.Telling.Sentences;
using Xunit;

namespace TyingClass.Telling.Tests.Sentences;

public sealed class TakeOverSentenceTests
{
    private static readonly HookWeighed Weighed = new(0.53e-3, 0.32e-3, 0.2e-3, 0.21e-3);

    [Fact]
    public void Of_HookTaken_SaysWhatWasWeighedAndWhatFollows() => Assert.Equal(
        "Hook mass taken from the bench: the fly weighed 0.53 g; its other parts come to 0.32 g; so the hook is put at 0.21 g (before: 0.2 g).",
        TakeOverSentence.Of(Weighed with { Taken = true }, UnitSystem.Metric));

    [Fact]
    public void Of_HookTaken_IsInTheReadersUnits() => Assert.Equal(
        "Hook mass taken from the bench: the fly weighed 8.18 gr; its other parts come to 4.9 gr; so the hook is put at 3.2 gr (before: 3.1 gr).",
        TakeOverSentence.Of(Weighed with { Taken = true }, UnitSystem.Imperial));

    [Fact]
    public void Of_PartsOutweighTheFly_SaysToWeighTheParts() => Assert.StartsWith(
        "The fly was weighed at 0.53 g, but the parts on the hook alone come to 0.6 g by the recipe.",
        TakeOverSentence.Of(Weighed with { OthersKg = 0.6e-3, WantedKg = -0.07e-3 }, UnitSystem.Metric), StringComparison.Ordinal);

    [Theory]
    [InlineData(AirFault.FasterThanWithoutAir, "faster than it could")]
    [InlineData(AirFault.SlowerThanAnyAir, "slower than any amount of air")]
    [InlineData(AirFault.AttitudeJumps, "changes its attitude in between")]
    public void Of_AirNotFound_SaysWhyAndWhatToDo(AirFault fault, string why) =>
        Assert.Contains(why, TakeOverSentence.Of(new AirTimed("body", 0.2, WetState.Soaked) { Fault = fault }, UnitSystem.Metric), StringComparison.Ordinal);

    [Theory]
    [InlineData(12e-9, "12 mm³ more air")]
    [InlineData(-12e-9, "12 mm³ less air")]
    public void Of_AirFound_SaysHowMuch(double moreM3, string expected) => Assert.Contains(
        expected,
        TakeOverSentence.Of(new AirTimed("body", 0.2, WetState.Fresh) { MoreAirM3 = moreM3, DensityKgM3 = 700, DensityBeforeKgM3 = 900 }, UnitSystem.Metric),
        StringComparison.Ordinal);
}
