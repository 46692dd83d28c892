using TyingClass.Balance.Bodies;
using TyingClass.Recipes.Advice;
using TyingClass.Recipes.Model;
using TyingClass.Recipes.Text;
using TyingClass.Telling.Sentences;
using Xunit;

namespace TyingClass.Telling.Tests.Sentences;

public sealed class AdviceSentenceTests
{
    private const double OunceKg = 28.349523125e-3;

    public static TheoryData<Advised, string, string> All => new()
    {
        { new AdvisedKnot(Knot.Loop), "tie it on with a loop knot", "tie it on with a loop knot" },
        { new AdvisedEye(-25 * Math.PI / 180), "use a hook with its eye down 25°", "use a hook with its eye down 25°" },
        { new AdvisedEye(0), "use a hook with its eye straight", "use a hook with its eye straight" },
        {
            new AdvisedGape(8.5e-3, 7e-3), "use a hook with a gape of 8.5 mm instead of 7 mm", "use a hook with a gape of 0.335 in instead of 0.276 in"
        },
        {
            new AdvisedSize("bead", BoughtBy.Size, 4.76e-3, 3.97e-3), "use a 4.76 mm size of bead instead of 3.97 mm",
            "use a 3/16 in size of bead instead of 5/32 in"
        },
        {
            new AdvisedSize("dumbbell eyes", BoughtBy.PairWeight, OunceKg / 30, OunceKg / 50), "use a 1/30 oz pair of dumbbell eyes instead of 1/50 oz",
            "use a 1/30 oz pair of dumbbell eyes instead of 1/50 oz"
        },
        {
            new AdvisedSize("putty", BoughtBy.LumpMass, 0.1e-3, 0.05e-3), "use a 0.1 g lump of putty instead of 0.05 g",
            "use a 1.54 gr lump of putty instead of 0.772 gr"
        },
        { new AdvisedMaterial("cone", "tungsten", "brass"), "make the cone tungsten instead of brass", "make the cone tungsten instead of brass" },
        { new AdvisedTurns(1, 2), "wind 1 turn instead of 2", "wind 1 turn instead of 2" },
        {
            new AdvisedPlace("wing", 1.5e-3, Back: true, 6.5e-3), "tie the wing 1.5 mm further back, at 6.5 mm",
            "tie the wing 0.059 in further back, at 0.256 in"
        },
        { new AdvisedRetrieve("count down", "8 s", "5 s"), "count down 8 s instead of 5 s", "count down 8 s instead of 5 s" },
        {
            new AdvisedRetrieve("retrieve", "strip 10 cm in 0.3 s", "strip 25.4 cm in 0.3 s"),
            "retrieve it otherwise: “strip 10 cm in 0.3 s” instead of “strip 25.4 cm in 0.3 s”",
            "retrieve it otherwise: “strip 3.94 in in 0.3 s” instead of “strip 10 in in 0.3 s”"
        },
        { new AdvisedSide("wing", Side.Under), "tie the wing under the shank, on the point side", "tie the wing under the shank, on the point side" },
    };

    [Theory]
    [MemberData(nameof(All))]
    public void Of_Change_IsAnInstructionInTheReadersUnits(Advised advised, string metric, string imperial)
    {
        Assert.Equal(metric, AdviceSentence.Of(advised, UnitSystem.Metric));
        Assert.Equal(imperial, AdviceSentence.Of(advised, UnitSystem.Imperial));
    }

    [Theory]
    [InlineData(0.0004, "It adds no mass.")]
    [InlineData(0.05, "It adds 0.05 g.")]
    [InlineData(-0.12, "It takes off 0.12 g.")]
    public void Cost_AddedMass_IsSaid(double addedG, string expected) => Assert.Equal(expected, AdviceSentence.Cost(addedG, UnitSystem.Metric));

    // A change that the adviser learns and nobody gave a sentence would only show at the bench.
    [Fact]
    public void All_HoldsEveryKindOfChange() => Assert.Equal(
        typeof(Advised).Assembly.GetTypes().Where(t => t.IsSubclassOf(typeof(Advised))).Select(t => t.Name).Order(),
        All.Select(row => row.Data.Item1.GetType().Name).Distinct().Order());
}
