using TyingClass.Balance.Bodies;
using TyingClass.Balance.Reports;
using TyingClass.Recipes.Bodies;
using TyingClass.Recipes.Catalogue;
using TyingClass.Recipes.Model;
using Xunit;
using static TyingClass.Recipes.Tests.Bodies.TestFly;

namespace TyingClass.Recipes.Tests.Bodies;

public sealed class FlyBuilderTests
{
    /// <summary>The specification's own example.</summary>
    private static readonly Recipe CopperLoach = new(
        "Copper Loach", Intent.PointUp,
        new HookSpec { Size = new HookSize(6), ShankSteps = 4, GapeM = 8.5 * Mm, Eye = EyeKind.Down, EyeAngleRad = 25 * Math.PI / 180, MassKg = 0.21e-3 },
        [
            new PartSpec(PartKind.Cone) { Material = "brass", SizeM = 5.6 * Mm },
            new PartSpec(PartKind.Wraps) { Material = "lead", DiameterM = 0.025 * 25.4 * Mm, Turns = 18, AtM = 6 * Mm },
            new PartSpec(PartKind.Body) { Material = "fur dubbing", MassKg = 0.10e-3, DiameterM = 6 * Mm, AtM = 6 * Mm, ToM = 22 * Mm },
            new PartSpec(PartKind.Wing) { Material = "fur strip", LengthM = 45 * Mm, MassKg = 0.25e-3, AtM = 5 * Mm, Side = Side.Under, Tied = TieDown.Front },
        ],
        new FishingSpec { LeaderDiameterM = 0.25 * Mm, Knot = Knot.Loop, Water = WaterKind.Fresh, TemperatureC = 12, SpeedMS = 0.4 });

    [Fact]
    public void Build_TypicalFly_NamesItsPartsAndStaysSmall()
    {
        FlyBody body = FlyBuilder.Build(CopperLoach).Body;

        Assert.Equal(["hook", "cone", "wraps", "body", "wing"], body.Parts.Select(p => p.Name));
        Assert.InRange(body.Parts.Sum(p => p.Drag.Length), 10, 35);
        Assert.False(body.Parts[0].IsTied);
        Assert.All(body.Parts.Skip(1), p => Assert.True(p.IsTied));
        Assert.Equal(Intent.PointUp, body.Intent);
    }

    [Fact]
    public void Build_Repeated_NumbersTheSecond()
    {
        FlyBody body = FlyBuilder.Build(Recipe(new PartSpec(PartKind.Wing), new PartSpec(PartKind.DumbbellEyes), new PartSpec(PartKind.Wing))).Body;

        Assert.Equal(["hook", "wing", "dumbbell eyes", "wing 2"], body.Parts.Select(p => p.Name));
    }

    [Fact]
    public void Build_Twice_GivesTheSameBody() =>
        Assert.Equal(
            FlyBuilder.Build(CopperLoach).Body.Parts.SelectMany(p => p.Drag),
            FlyBuilder.Build(CopperLoach).Body.Parts.SelectMany(p => p.Drag));

    [Fact]
    public void Build_WhatTheTyerMeasured_IsNotListedAsAssumed()
    {
        string[] assumed = [.. FlyBuilder.Build(CopperLoach).Assumed.Select(a => a.What)];

        Assert.Contains("hook shank", assumed);
        Assert.Contains("hook wire", assumed);
        Assert.Contains("cone density", assumed);
        Assert.Contains("wing suppleness", assumed);
        Assert.DoesNotContain("body suppleness", assumed);
        Assert.DoesNotContain("cone caught air", assumed);
        Assert.DoesNotContain("hook gape", assumed);
        Assert.DoesNotContain("hook eye angle", assumed);
        Assert.DoesNotContain("body mass", assumed);
        Assert.DoesNotContain("wing mass", assumed);
        Assert.DoesNotContain("fishing speed", assumed);
        Assert.Equal(assumed.Length, assumed.Distinct().Count());
    }

    [Fact]
    public void Build_NothingSaidOfFishing_FillsInAndSaysSo()
    {
        BuiltFly fly = FlyBuilder.Build(Recipe());

        Assert.Equal(0.4, fly.Conditions.SpeedMS);
        Assert.Equal(Knot.Loop, fly.Conditions.Knot);
        Assert.Equal(0.25 * Mm, fly.Conditions.Leader.DiameterM, 1e-12);
        // Fresh water at 12 °C: 999.50 kg/m³ (between Kell's 999.70 at 10 °C and 999.10 at 15 °C).
        Assert.Equal(999.5, fly.Conditions.Water.DensityKgM3, 0.02);
        string[] fishing = [.. fly.Assumed.Where(a => a.What.StartsWith("fishing ", StringComparison.Ordinal)).Select(a => a.What[8..])];
        Assert.Equal(
            ["temperature", "water", "leader material", "leader diameter", "leader stiffness E", "leader density", "knot", "speed"], fishing);
    }

    // EOS-80 at S = 35, 10 °C: 1026.952 kg/m³.
    [Fact]
    public void Build_SeaWithoutSalinity_IsStandardSeaWater()
    {
        BuiltFly fly = FlyBuilder.Build(Recipe() with { Fishing = new FishingSpec { Water = WaterKind.Sea, TemperatureC = 10 } });

        Assert.Equal(1026.952, fly.Conditions.Water.DensityKgM3, 0.01);
        Assert.Contains(fly.Assumed, a => a.What == "fishing salinity" && a.Value == "35 g/kg");
    }

    // d = √(4F/πσ), 10 lb = 44.4822 N, 700 MPa: √(177.9288 / 2.199115e9) = 0.284446 mm.
    [Fact]
    public void Build_LeaderByStrength_TakesDiameterFromBreakingStress() =>
        Assert.Equal(
            0.284446,
            FlyBuilder.Build(Recipe() with { Fishing = new FishingSpec { LeaderStrengthN = 44.4822 } }).Conditions.Leader.DiameterM / Mm, 1e-6);

    // X rule, d = 0.011 - 0.001 X in, and the trade's line strengths of 0X to 8X in lb (common practice): stress varies 630-975 MPa, so diameters agree within
    // a fifth.
    [Theory]
    [InlineData(0, 9)]
    [InlineData(2, 6.3)]
    [InlineData(4, 4.3)]
    [InlineData(6, 2.1)]
    [InlineData(8, 1.0)]
    public void DiameterFromStrengthM_TradeTippets_AgreeWithXRule(int x, double pounds)
    {
        double expectedM = (0.011 - 0.001 * x) * 0.0254;
        Assert.Equal(expectedM, FishingScale.DiameterFromStrengthM(pounds * 4.448222), 0.2 * expectedM);
    }

    [Fact]
    public void Build_Refined_MultipliesDragElementsAndNothingElse()
    {
        FlyBody coarse = FlyBuilder.Build(CopperLoach).Body, fine = FlyBuilder.Build(CopperLoach, 2).Body;

        foreach ((BodyPart a, BodyPart b) in coarse.Parts.Zip(fine.Parts))
        {
            AssertNear(a.MassCenterMm(), b.MassCenterMm(), 1e-9);
            Assert.Equal(a.MassG(), b.MassG(), 1e-12);
            Assert.Equal(a.Drag.Sum(e => e.LengthM * e.DiameterM), b.Drag.Sum(e => e.LengthM * e.DiameterM), 1e-12);
            Assert.Equal(
                a.Drag.Sum(e => e.BluntShare * e.DiameterM * e.DiameterM), b.Drag.Sum(e => e.BluntShare * e.DiameterM * e.DiameterM), 1e-12);
        }
    }

    // The design's own bound: doubling the elements changes no angle by over half a degree.
    [Theory]
    [InlineData(BendKind.Round)]
    [InlineData(BendKind.Long)]
    [InlineData(BendKind.Square)]
    public void Build_Refined_ChangesNoAngleByHalfADegree(BendKind bend)
    {
        Recipe recipe = CopperLoach with { Hook = CopperLoach.Hook with { Bend = bend } };

        TowReport coarse = Towed(recipe, 1), fine = Towed(recipe, 2), finest = Towed(recipe, 8);

        Assert.Equal(fine.PitchDeg, coarse.PitchDeg, 0.5);
        Assert.Equal(finest.PitchDeg, coarse.PitchDeg, 0.5);
        Assert.Equal(finest.LeanDeg, coarse.LeanDeg, 0.5);

        static TowReport Towed(Recipe recipe, int refinement)
        {
            BuiltFly fly = FlyBuilder.Build(recipe, refinement);
            return BalanceEngine.Report(fly.Body, fly.Conditions, ReportOptions.Default with { Flies = 1 }).Soaked.AtFishingSpeed;
        }
    }

    [Fact]
    public void Build_PartBackToFront_SaysWhichPart()
    {
        ArgumentException e = Assert.Throws<ArgumentException>(
            () => FlyBuilder.Build(Recipe(new PartSpec(PartKind.Body) { AtM = 12 * Mm, ToM = 6 * Mm })));
        Assert.Contains("The body has no length", e.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Build_HookWithoutSizeOrMeasures_SaysWhatIsMissing()
    {
        ArgumentException e = Assert.Throws<ArgumentException>(() => FlyBuilder.Build(Recipe(new HookSpec())));
        Assert.Contains("needs a size, or its shank, gape and wire", e.Message, StringComparison.Ordinal);
    }
}
