using System.Collections.Immutable;
using TyingClass.Balance.Bodies;
using TyingClass.Balance.Reports;
using TyingClass.Recipes.Advice;
using TyingClass.Recipes.Model;
using TyingClass.Recipes.Reports;
using Xunit;

namespace TyingClass.Recipes.Tests.Advice;

public sealed class AdviserTests
{
    private static readonly ReportOptions Quick = new() { Flies = 60 };

    // A long-shank streamer with a heavy cone and a down eye, meant point down: common practice says it comes back flipped.
    private static readonly Recipe Flipping = new(
        "Slate Minnow",
        Intent.PointDown,
        new HookSpec { Size = new HookSize(6), ShankSteps = 4, Eye = EyeKind.Down, EyeAngleRad = 0.436332312999 },
        [
            new PartSpec(PartKind.Cone) { Material = "tungsten", SizeM = 5.56e-3 },
            new PartSpec(PartKind.Body) { Material = "fur dubbing", MassKg = 5e-5, DiameterM = 4e-3, AtM = 6e-3, ToM = 20e-3 },
        ],
        new FishingSpec { SpeedMS = 0.6 });

    [Fact]
    public void Propose_FlyThatFlips_EveryProposalReachesTheGoalWhenSolvedAgain()
    {
        ImmutableArray<Proposal> proposals = Adviser.Propose(Flipping, Asked, options: Quick);

        Assert.NotEmpty(proposals);
        Assert.All(proposals, p => Assert.True(Rides(SolvedFly.Solve(p.Change.At(p.Steps), Quick)), p.Change.Kind));
    }

    [Fact]
    public void Propose_FlyThatFlips_OneStepLessFallsShort()
    {
        ImmutableArray<Proposal> proposals = Adviser.Propose(Flipping, Asked, options: Quick);

        Assert.All(proposals.Where(p => p.Steps > 1), p => Assert.False(Rides(SolvedFly.Solve(p.Change.At(p.Steps - 1), Quick)), p.Change.Kind));
    }

    [Fact]
    public void Propose_FlyThatFlips_LightestFirst()
    {
        double[] added = [.. Adviser.Propose(Flipping, Asked, options: Quick).Select(p => p.AddedMassG)];

        Assert.Equal(added.Order(), added);
    }

    [Fact]
    public void Propose_FlyThatDoesItAlready_ProposesNothing() => Assert.Empty(Adviser.Propose(Flipping, (_, _) => true, options: Quick));

    [Fact]
    public void Propose_OnlyTheEyeAllowed_ChangesNothingElse()
    {
        ImmutableArray<Proposal> proposals = Adviser.Propose(Flipping, Asked, (change, _) => change.Path == "hook.eye", Quick);

        Assert.All(proposals, p => Assert.Equal("hook.eye", p.Path));
        Assert.All(proposals, p => Assert.Equal(Flipping.Parts, p.Recipe.Parts));
    }

    [Fact]
    public void Propose_WithinABudgetThatIsEnough_ProposesTheSame()
    {
        AdviceBudget enough = AdviceBudget.ForAPage();
        Assert.Equal(
            Adviser.Propose(Flipping, Asked, options: Quick).Select(p => (p.Path, p.Steps)),
            Adviser.Propose(Flipping, Asked, options: Quick, budget: enough).Select(p => (p.Path, p.Steps)));
        Assert.False(enough.RanOut);
        Assert.Equal(Adjustables.Of(Flipping).Length, enough.Tried);
    }

    [Fact]
    public void Propose_BudgetSpent_StopsAndSaysHowManyWereTried()
    {
        int asked = 0;
        AdviceBudget small = new(5 * (10 + Flipping.Parts.Length));
        Adviser.Propose(Flipping, (_, _) => ++asked < 0, options: Quick, budget: small);
        Assert.True(small.RanOut);
        Assert.InRange(small.Tried, 1, Adjustables.Of(Flipping).Length - 1);
        // Begun changes are brought to their end; nothing new is begun.
        Assert.InRange(asked, 5, 25);
    }

    [Fact]
    public void Sensitivities_AnyFly_HeavierConeSinksFaster()
    {
        Sensitivity heavier = Adviser.Sensitivities(Flipping).Single(s => s.Step is AdvisedSize { Part: "cone" } size && size.ToSi > size.FromSi);

        Assert.True(heavier.SinkRateMS > 0);
    }

    // Both ways of one change tell the same slope, and it is half of what lies between the two solved flies.
    [Fact]
    public void Sensitivities_ChangeWithAWayBack_AreCentralDifferences()
    {
        Recipe measured = Flipping with { Hook = Flipping.Hook with { GapeM = 7e-3 } };
        ImmutableArray<Sensitivity> all = Adviser.Sensitivities(measured);
        Sensitivity wider = all.Single(s => s.Step is AdvisedGape g && g.ToM > g.FromM),
            narrower = all.Single(s => s.Step is AdvisedGape g && g.ToM < g.FromM);

        Assert.Equal(wider.PitchDeg, -narrower.PitchDeg, 1e-12);
        double Pitch(double gapeM) =>
            SolvedFly.Solve(measured with { Hook = measured.Hook with { GapeM = gapeM } }, Quick).Report.Soaked.AtFishingSpeed.PitchDeg;
        Assert.Equal((Pitch(7.1e-3) - Pitch(6.9e-3)) / 2, wider.PitchDeg, 1e-6);
    }

    private static bool Asked(Recipe recipe, ReportOptions how) => Rides(SolvedFly.Solve(recipe, how));

    private static bool Rides(SolvedFly fly) => fly.Report.Soaked.Verdict.Kind == VerdictKind.RidesAsIntended;
}
