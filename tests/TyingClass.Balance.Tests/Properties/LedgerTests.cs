using System.Collections.Immutable;
using TyingClass.Balance.Bodies;
using TyingClass.Balance.Geometry;
using TyingClass.Balance.Reports;
using TyingClass.Balance.Tests.Flies;
using TyingClass.Balance.Towing;
using TyingClass.Recipes.Bodies;
using Xunit;

namespace TyingClass.Balance.Tests.Properties;

public sealed class LedgerTests
{
    private static readonly ReportOptions Quick = new() { Flies = 1, SpeedsMS = [0.5] };

    [Fact]
    public void Ledger_RandomFlies_SumsToKeelHeightTimesWetWeight()
    {
        int checkedStates = 0;
        for (int seed = 20_000; seed < 20_120; seed++)
        {
            (FlyBody body, FishingConditions conditions) = seed % 2 == 0 ? RandomBodies.Fly(seed) : Built(seed);
            foreach (StateReport state in BalanceEngine.Report(body, conditions, Quick).States)
            {
                if (state.AtFishingSpeed.KeelHeightMm.For(body.Intent) is not { } keelMm) continue;
                double sum = state.Ledger.Sum(e => e.KeelMomentGmm), size = state.Ledger.Sum(e => Math.Abs(e.KeelMomentGmm));
                Assert.Equal(keelMm * state.WetWeightG, sum, 1e-7 * size);
                checkedStates++;
            }
        }

        Assert.True(checkedStates > 120, $"only {checkedStates} states had a keel height");
    }

    [Fact]
    public void Ledger_CinchedKnot_HasALineForEveryPartAndTheKnot()
    {
        BuiltFly fly = FlyBuilder.Build(RandomRecipes.Fly(4));
        FishingConditions cinched = fly.Conditions with { Knot = Knot.Cinched, SpeedMS = 0.4 };
        StateReport state = BalanceEngine.Report(fly.Body, cinched, Quick).Soaked;
        // The hook stands as its eye, shank and bend: the bend is what a bead has to outweigh.
        string[] expected = ["hook eye", "shank", "bend", .. fly.Body.Parts.Skip(1).Select(p => p.Name), "knot"];
        Assert.Equal(expected, state.Ledger.Select(e => e.Part));
    }

    // Righting curve and keel height are two ways to one number: K is the curve's slope at no heel.
    [Fact]
    public void Roll_AtSmallHeel_RisesByTheLedgersSum()
    {
        int checkedStates = 0;
        for (int seed = 20_000; seed < 20_060; seed++)
        {
            (FlyBody body, FishingConditions conditions) = RandomBodies.Fly(seed, mirrored: true);
            StateReport state = BalanceEngine.Report(body, conditions, Quick).Soaked;
            if (state.AtFishingSpeed.KeelHeightMm.For(body.Intent) is not { } keelMm || state.Roll.Points.Length < 3) continue;
            // The report's own 5° are too wide for a body that is pushed aside: three quarters of a degree.
            Attitude upright = Attitude.Symmetric(body.Intent, state.AtFishingSpeed.SymmetricPitchDeg * Math.PI / 180);
            ImmutableArray<RightingPoint> curve = Righting.Curve(TowedFly.From(body, conditions, double.PositiveInfinity), upright, conditions.SpeedMS, 240);
            // A cubic through 0, ¾° and 1½° with no square term, as the curve is odd in the heel.
            double first = curve[1].RestoringNM, second = curve[2].RestoringNM;
            double slope = (8 * first - second) / (6 * curve[1].HeelRad) * 1e6 / Standard.GravityMS2;
            double scale = state.Ledger.Sum(e => Math.Abs(e.KeelMomentGmm));
            Assert.Equal(keelMm * state.WetWeightG, slope, 0.01 * scale);
            checkedStates++;
        }

        Assert.True(checkedStates > 30, $"only {checkedStates} flies had a curve");
    }

    private static (FlyBody Body, FishingConditions Conditions) Built(int seed)
    {
        BuiltFly fly = FlyBuilder.Build(RandomRecipes.Fly(seed));
        return (fly.Body, fly.Conditions);
    }
}
