using TyingClass.Balance.Bodies;
using TyingClass.Recipes.Advice;
using TyingClass.Recipes.Catalogue;
using TyingClass.Recipes.Model;
using Xunit;

namespace TyingClass.Recipes.Tests.Catalogue;

/// <summary>Sizes that shops sell (common practice, no source) and the substance of leaders, as the table of check values has them.</summary>
public sealed class TradeSizeTests
{
    // Beads 5/64 … 3/16 in.
    [Fact]
    public void Adjustables_HeavierBead_GoesThroughTheSizesSold()
    {
        double[] sizesMm = [.. Steps(new PartSpec(PartKind.Bead) { Material = "brass", SizeM = 1.5e-3 }, "heavier bead").Select(m => 1e3 * m).Take(6)];

        Assert.Equal([1.98, 2.38, 2.78, 3.18, 3.97, 4.76], sizesMm.Select(m => Math.Round(m, 6)));
        int[] sixtyFourths = [5, 6, 7, 8, 10, 12];
        Assert.All(sizesMm.Zip(sixtyFourths), pair => Assert.Equal(pair.Second * 25.4 / 64, pair.First, 0.006));
    }

    // Dumbbell eyes 1/100 … 1/18 oz; 1 oz = 28.349523125 g exactly.
    [Fact]
    public void Adjustables_HeavierEyes_GoThroughTheWeightsSold()
    {
        double[] grams =
            [.. Steps(new PartSpec(PartKind.DumbbellEyes) { Material = "lead", MassKg = 0.2e-3, AtM = 3e-3 }, "heavier dumbbell eyes").Select(kg => 1e3 * kg)];

        int[] perOunce = [100, 80, 60, 50, 40, 36, 30, 24, 20, 18];
        Assert.Equal(perOunce.Select(n => Math.Round(28.349523125 / n, 6)), grams.Select(g => Math.Round(g, 6)));
    }

    // Morton and Hearle, table 5.1: nylon 1140. Polyvinylidene fluoride 1750-1780, handbooks. E of nylon line 2-4 GPa: from memory.
    [Fact]
    public void FishingScale_Leaders_AreOfPublishedSubstance()
    {
        Assert.Equal(1140, FishingScale.NylonDensity.Value);
        Assert.InRange(FishingScale.FluorocarbonDensity.Value, 1750, 1780);
        Assert.InRange(FishingScale.NylonModulus.Value, 2, 4);
        Assert.InRange(FishingScale.BreakingStress.Value, 630, 975);
    }

    private static IEnumerable<double> Steps(PartSpec part, string kind)
    {
        Recipe recipe = new("Reed Darter", Intent.PointDown, new HookSpec { Size = new HookSize(2) }, [part], new FishingSpec());
        Adjustable change = Adjustables.Of(recipe).Single(a => a.Kind == kind);
        return Enumerable.Range(1, change.Steps).Select(n => ((AdvisedSize)change.Advise(n)).ToSi);
    }
}
