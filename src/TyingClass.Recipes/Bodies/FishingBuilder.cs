using TyingClass.Balance.Bodies;
using TyingClass.Balance.Fluid;
using TyingClass.Recipes.Catalogue;
using TyingClass.Recipes.Model;

namespace TyingClass.Recipes.Bodies;

/// <summary>Fills in the water, the leader, the knot and the speed.</summary>
internal static class FishingBuilder
{
    public static FishingConditions Build(FishingSpec spec, Guesses guesses, AssumptionLog log)
    {
        log.Part = "fishing";
        return new FishingConditions(BuildWater(spec, log), BuildLeader(spec, guesses, log), BuildKnot(spec, log),
            Stated(spec.SpeedMS, FishingScale.Speed, "speed", log));
    }

    private static Water BuildWater(FishingSpec spec, AssumptionLog log)
    {
        double temperatureC = Stated(spec.TemperatureC, FishingScale.Temperature, "temperature", log);
        if (spec.Water is null) log.Add("water", "fresh", Figure.Estimate);
        double salinity = spec.Water != WaterKind.Sea ? 0
            : spec.SalinityKgKg ?? 1e-3 * Stated(null, FishingScale.SeaSalinity, "salinity", log);
        return WaterProperties.At(temperatureC, salinity);
    }

    private static Leader BuildLeader(FishingSpec spec, Guesses guesses, AssumptionLog log)
    {
        if (spec.LeaderMaterial is null) log.Add("leader material", "nylon", Figure.Estimate);
        (Figure modulus, Figure density) = spec.LeaderMaterial == LeaderMaterial.Fluorocarbon
            ? (FishingScale.FluorocarbonModulus, FishingScale.FluorocarbonDensity)
            : (FishingScale.NylonModulus, FishingScale.NylonDensity);
        double diameterM = LeaderDiameterM(spec, guesses, log);
        log.AddFigure("leader stiffness E", modulus);
        log.AddFigure("leader density", density);
        return new Leader(diameterM, guesses.Of(modulus) * 1e9, density.Value) { FrictionFactor = guesses.Of(FishingScale.LeaderFriction) };
    }

    private static double LeaderDiameterM(FishingSpec spec, Guesses guesses, AssumptionLog log)
    {
        if (spec.LeaderDiameterM is { } statedM) return statedM;
        if (spec.LeaderStrengthN is not { } strengthN) return 1e-3 * Stated(null, FishingScale.LeaderDiameter, "leader diameter", log);

        LeaderMaterial material = spec.LeaderMaterial ?? LeaderMaterial.Nylon;
        double diameterM = FishingScale.DiameterFromStrengthM(strengthN, material, guesses);
        log.AddLength("leader diameter", diameterM, "from its breaking strength", FishingScale.BreakingStressOf(material));
        return diameterM;
    }

    private static Knot BuildKnot(FishingSpec spec, AssumptionLog log)
    {
        if (spec.Knot is null) log.Add("knot", "loop", Figure.Estimate);
        return spec.Knot ?? Knot.Loop;
    }

    private static double Stated(double? stated, Figure usual, string what, AssumptionLog log)
    {
        if (stated is null) log.AddFigure(what, usual);
        return stated ?? usual.Value;
    }
}
