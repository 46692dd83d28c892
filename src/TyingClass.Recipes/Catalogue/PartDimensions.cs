using TyingClass.Balance.Shapes;
using TyingClass.Recipes.Model;

namespace TyingClass.Recipes.Catalogue;

/// <summary>A part's outline with every dimension known. Which apply depends on the kind; the others are 0.</summary>
/// <param name="SizeM">Widest diameter: of a bead or cone, of one eye, of a body, hackle, foam or resin; the wire's own for wraps.</param>
/// <param name="LengthM">Of a strand from its tie-in; of anything else, along the shank.</param>
/// <param name="Turns">Wraps only.</param>
internal sealed record PartDimensions(double FrontM, double RearM, double SizeM, double LengthM, int Turns)
{
    /// <summary>Volume of a dumbbell over its eye diameter cubed: two barrels and the waist between them.</summary>
    public static double DumbbellVolumeRatio { get; } =
        2 * Cylinders.VolumeM3(1, PartScale.EyeBarrelShare.Value)
        + Cylinders.VolumeM3(PartScale.EyeWaistShare.Value, 2 * PartScale.EyeReachShare.Value - PartScale.EyeBarrelShare.Value);

    public static PartDimensions Of(PartSpec part, ResolvedHook hook, AssumptionLog? log = null) => part.Kind switch
    {
        PartKind.Bead => Bead(part, hook, log),
        PartKind.Cone => Cone(part, hook, log),
        PartKind.DumbbellEyes => Dumbbell(part, hook, log),
        PartKind.Wraps => Wraps(part, hook, log),
        PartKind.Body => Sleeve(part, hook, log, BodyDiameterM(part, hook, log), double.PositiveInfinity),
        PartKind.Foam => Sleeve(part, hook, log, Diameter(part, log, PartScale.FoamDiameterGapes, hook.GapeM), double.PositiveInfinity),
        PartKind.Resin => Sleeve(part, hook, log, Diameter(part, log, PartScale.BodyDiameterWires, hook.WireM), PartScale.CollarWires.Value * hook.WireM),
        PartKind.Hackle => Sleeve(part, hook, log, Diameter(part, log, PartScale.HackleDiameterGapes, hook.GapeM), PartScale.CollarWires.Value * hook.WireM),
        PartKind.Wing => Strand(part, hook, log, PartScale.WingLengthShanks),
        PartKind.Tail => Strand(part, hook, log, PartScale.TailLengthShanks),
        PartKind.Legs => Strand(part, hook, log, PartScale.LegLengthShanks),
        _ => throw new ArgumentOutOfRangeException(nameof(part), part.Kind, "No such kind of part."),
    };

    /// <summary>Bore of a bead or cone: the usual share of its size, or what the wire needs if that is more; never so wide that nothing is left.</summary>
    public static double BoreM(double sizeM, double narrowM, ResolvedHook hook) =>
        Math.Min(Math.Max(PartScale.BoreShare.Value * sizeM, hook.WireM), 0.95 * narrowM);

    public static double ConeNoseM(double sizeM) => PartScale.ConeNoseShare.Value * sizeM;

    private static PartDimensions Bead(PartSpec part, ResolvedHook hook, AssumptionLog? log)
    {
        double sizeM = Size(part, log, PartScale.BeadSizeGapes, hook, BoredSphere.VolumeM3(1, PartScale.BoreShare.Value));
        double lengthM = BoredSphere.LengthM(sizeM, BoreM(sizeM, sizeM, hook));
        return new PartDimensions(part.AtM, part.AtM + lengthM, sizeM, lengthM, 0);
    }

    private static PartDimensions Cone(PartSpec part, ResolvedHook hook, AssumptionLog? log)
    {
        double noseShare = PartScale.ConeNoseShare.Value;
        double ratio = new BoredFrustum(noseShare, 1, PartScale.ConeLengthShare.Value, PartScale.BoreShare.Value).VolumeM3;
        double sizeM = Size(part, log, PartScale.ConeSizeGapes, hook, ratio);
        double lengthM = part.LengthM ?? PartScale.ConeLengthShare.Value * sizeM;
        if (part.LengthM is null) log?.AddLength("length", lengthM, "generic cone", PartScale.ConeLengthShare);
        return new PartDimensions(part.AtM, part.AtM + lengthM, sizeM, lengthM, 0);
    }

    private static PartDimensions Dumbbell(PartSpec part, ResolvedHook hook, AssumptionLog? log)
    {
        double sizeM = Size(part, log, PartScale.EyeSizeGapes, hook, DumbbellVolumeRatio);
        return new PartDimensions(part.AtM, part.AtM + sizeM, sizeM, sizeM, 0);
    }

    // A maker's size wins; else a stated mass fixes the size through the material; else the hook suggests one.
    private static double Size(PartSpec part, AssumptionLog? log, Figure gapes, ResolvedHook hook, double volumeRatio)
    {
        if (part.SizeM is { } statedM) return statedM;
        if (part.MassKg is { } massKg)
        {
            double fromMassM = Math.Cbrt(massKg / (PartSubstance.DensityKgM3(part) * volumeRatio));
            log?.AddLength("size", fromMassM, "from its mass and the density of its material");
            return fromMassM;
        }

        double sizeM = gapes.Value * hook.GapeM;
        log?.AddLength("size", sizeM, "usual on such a hook", gapes);
        return sizeM;
    }

    private static PartDimensions Wraps(PartSpec part, ResolvedHook hook, AssumptionLog? log)
    {
        double wireM = part.DiameterM ?? hook.WireM;
        if (part.DiameterM is null) log?.AddLength("wire diameter", wireM, "as thick as the hook's wire, estimate");
        double? runM = part.ToM - part.AtM ?? part.LengthM;
        int turns = part.Turns ?? TurnsLeftOut(part, hook, log, wireM, runM);
        double lengthM = runM ?? turns * wireM;
        return new PartDimensions(part.AtM, part.AtM + lengthM, wireM, lengthM, turns);
    }

    private static int TurnsLeftOut(PartSpec part, ResolvedHook hook, AssumptionLog? log, double wireM, double? runM)
    {
        (double turns, string why) = (part.MassKg, runM) switch
        {
            ({ } massKg, _) => (massKg / (PartSubstance.DensityKgM3(part) * Cylinders.SectionM2(wireM) * Helix.TurnLengthM((hook.WireM + wireM) / 2, wireM)), "from its mass"),
            (_, { } m) => (m / wireM, "close wound over its length"),
            _ => (PartScale.WrapTurns.Value, "usual number, " + PartScale.WrapTurns.Source),
        };
        int whole = Math.Max(1, (int)Math.Round(turns));
        log?.AddNumber("turns", whole, "", why);
        return whole;
    }

    private static double BodyDiameterM(PartSpec part, ResolvedHook hook, AssumptionLog? log)
    {
        if (part.DiameterM is { } statedM) return statedM;
        if (part.MassKg is not { } massKg) return Diameter(part, log, PartScale.BodyDiameterWires, hook.WireM);

        double lengthM = Sleeve(part, hook, null, 0, double.PositiveInfinity).LengthM;
        double bulkKgM3 = PartSubstance.DensityKgM3(part) * (1 - PartSubstance.Of(part).VoidShare.Value);
        double diameterM = Math.Sqrt(hook.WireM * hook.WireM + massKg / (bulkKgM3 * lengthM) * 4 / Math.PI);
        log?.AddLength("diameter", diameterM, "from its mass and the bulk density of its material, estimate");
        return diameterM;
    }

    private static double Diameter(PartSpec part, AssumptionLog? log, Figure usual, double yardstickM)
    {
        if (part.DiameterM is { } statedM) return statedM;
        double diameterM = usual.Value * yardstickM;
        log?.AddLength("diameter", diameterM, "usual on such a hook", usual);
        return diameterM;
    }

    // Around the shank from `at` to `to`; without either `to` or a length, the usual run, or to the end of the shank.
    private static PartDimensions Sleeve(PartSpec part, ResolvedHook hook, AssumptionLog? log, double diameterM, double usualRunM)
    {
        double? statedRearM = part.ToM ?? (part.AtM + part.LengthM);
        double rearM = statedRearM ?? Math.Min(part.AtM + usualRunM, hook.ShankM);
        if (statedRearM is null) log?.AddLength("rear edge", rearM, double.IsPositiveInfinity(usualRunM) ? "the end of the shank" : "a short collar, estimate");
        return new PartDimensions(part.AtM, rearM, diameterM, rearM - part.AtM, 0);
    }

    private static PartDimensions Strand(PartSpec part, ResolvedHook hook, AssumptionLog? log, Figure shanks)
    {
        double lengthM = part.LengthM ?? Math.Max(shanks.Value * hook.ShankM, part.ToM - part.AtM ?? 0);
        if (part.LengthM is null) log?.AddLength("length", lengthM, "usual on such a hook", shanks);
        if (part.Tied != TieDown.BothEnds) return new PartDimensions(part.AtM, part.AtM, 0, lengthM, 0);

        double rearM = part.ToM ?? Math.Min(part.AtM + lengthM, hook.ShankM);
        if (part.ToM is null) log?.AddLength("rear tie", rearM, "the end of the shank, or of the strand");
        return new PartDimensions(part.AtM, rearM, 0, lengthM, 0);
    }
}
