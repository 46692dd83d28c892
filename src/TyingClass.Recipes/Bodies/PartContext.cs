using TyingClass.Recipes.Catalogue;
using TyingClass.Recipes.Model;
using TyingClass.Recipes.Parts;

namespace TyingClass.Recipes.Bodies;

/// <summary>A part about to be built, with all it needs to know of the rest of the fly.</summary>
internal sealed record PartContext(
    int Index, PartSpec Spec, string Name, PartDimensions Dimensions, ResolvedHook Hook, Sheaths Sheaths, AssumptionLog Log, int Refinement)
{
    public KindOfPart Kind { get; } = KindsOfPart.Of(Spec);

    public Material Material { get; } = PartSubstance.Of(Spec, Hook.Guesses);

    public double DensityKgM3 { get; } = PartSubstance.DensityKgM3(Spec, Hook.Guesses);

    /// <summary>What an estimate is taken to be.</summary>
    public double Of(Figure figure) => Hook.Guesses.Of(figure);

    public double MiddleM => (Dimensions.FrontM + Dimensions.RearM) / 2;

    /// <summary>+1 on top of the shank, -1 under it, 0 around it.</summary>
    public int SideSign()
    {
        Side usual = Kind.UsualSide;
        if (Spec.Side is null && usual != Side.Around) Log.Add("side", usual == Side.Top ? "top" : "under", "usual for such a part, estimate");
        return SideOnShank();
    }

    /// <summary>The same, without a word to the log.</summary>
    public int SideOnShank() => (Spec.Side ?? Kind.UsualSide) switch
    {
        Side.Top => 1,
        Side.Under => -1,
        _ => 0,
    };

    /// <summary>The stated mass, or an estimate that is then listed as assumed, kg.</summary>
    public double MassKg(Func<double> estimateKg, string why)
    {
        if (Spec.MassKg is { } statedKg) return statedKg;
        double massKg = estimateKg();
        Log.AddNumber("mass", massKg * 1e3, "g", why);
        return massKg;
    }

    /// <summary>The straight runs of a part round the shank that the water meets, as cylinders.</summary>
    public void AddSheathDrag(PartDraft draft, double outerM)
    {
        double lengthM = Dimensions.RearM - Dimensions.FrontM;
        Figure nose = Kind.NoseBluntness;
        Log.AddFigure("nose bluntness", nose);
        foreach ((double frontM, double rearM) in Sheaths.ExposedRuns(Index))
        {
            draft.AddStraightDrag(
                new(frontM, 0, 0), new(rearM, 0, 0), outerM, lengthM / outerM, Refinement,
                Of(nose) * Sheaths.ProudShare(frontM, outerM, Of(PartScale.ShelterReach)));
        }
    }
}
