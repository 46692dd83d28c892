using System.Collections.Immutable;
using TyingClass.Balance.Bodies;
using TyingClass.Balance.Geometry;
using TyingClass.Balance.Shapes;
using TyingClass.Recipes.Advice;
using TyingClass.Recipes.Bodies;
using TyingClass.Recipes.Catalogue;
using TyingClass.Recipes.Model;
using TyingClass.Recipes.Text;

namespace TyingClass.Recipes.Parts;

/// <summary>A lump of soft tungsten putty rolled round the shank or pressed on one side of it, or a drop of solder: a ball of a given mass.</summary>
internal sealed class Putty : Weight
{
    private static readonly Figure SizeGapes = Figure.Guess("lump of putty", 0.45, "× gape", 0.38, 0.52, "what looks right on such a hook");

    // Common practice, no source: lumps one weighs out.
    private static readonly ImmutableArray<double> LumpsKg = [0.05e-3, 0.1e-3, 0.15e-3, 0.2e-3, 0.25e-3, 0.3e-3, 0.4e-3, 0.5e-3, 0.6e-3, 0.8e-3, 1e-3];

    public override PartKind Kind => PartKind.Putty;

    internal override ImmutableArray<string> OtherNames => ["solder", "solder bead", "lump"];

    public override string WithArticle => Word;

    public override string UsualMaterial => "tungsten putty";

    public override ImmutableArray<string> SuitedMaterials => ["tungsten putty", "lead-free solder", "tin-lead solder"];

    public override IEnumerable<(string, Figure)> Figures => [SizeGapes.Named];

    internal override ImmutableArray<string> OwnKeys => ["mass", "side"];

    internal override string Instead(string key) => key is "size" or "diameter" ? "Say how heavy it is with “mass” instead." : base.Instead(key);

    internal override bool IsInRow => true;

    internal override PartDimensions Measure(PartSpec part, ResolvedHook hook, AssumptionLog? log)
    {
        double boreM = IsRound(part) ? hook.WireM : 0;
        double sizeM = part.MassKg is { } massKg
            ? FromVolumeM(massKg / PartSubstance.DensityKgM3(part, hook.Guesses), boreM)
            : Math.Max(hook.Guesses.Of(SizeGapes) * hook.GapeM, 1.2 * boreM);
        if (part.MassKg is null) log?.AddLength("size", sizeM, "usual on such a hook", SizeGapes);
        double lengthM = BoredSphere.LengthM(sizeM, boreM);
        return new PartDimensions(part.AtM, part.AtM + lengthM, sizeM, lengthM, 0);
    }

    // A ball of diameter D with a bore b is π/6 (D² - b²)^3/2 large.
    private static double FromVolumeM(double volumeM3, double boreM) => Math.Sqrt(Math.Pow(6 * volumeM3 / Math.PI, 2.0 / 3) + boreM * boreM);

    private static bool IsRound(PartSpec part) => part.Side is null or Side.Around;

    internal override Sheath? SheathOf(int owner, PartSpec part, PartDimensions dimensions, Sheaths under) =>
        IsRound(part) ? new Sheath(owner, dimensions.FrontM, dimensions.RearM, dimensions.SizeM, IsSeat: false) { Outline = Outline.Ball } : null;

    internal override void Build(PartContext part, PartDraft draft)
    {
        double sizeM = part.Dimensions.SizeM, boreM = IsRound(part.Spec) ? part.Hook.WireM : 0;
        double massKg = part.MassKg(() => part.DensityKgM3 * BoredSphere.VolumeM3(sizeM, boreM), FromOutline);
        if (part.Spec.MassKg is not null) part.Log.AddLength("size", sizeM, "from its mass and the density of its material, rolled to a ball");
        double seatM = part.Sheaths.SeatRadiusM(part.Index, part.Dimensions.FrontM, part.Dimensions.RearM) + sizeM / 2;
        Vector3D centerM = new(part.MiddleM, 0, part.SideSign() * seatM);
        draft.AddSolid(massKg, massKg / part.DensityKgM3, centerM, Vector3D.UnitX, BoredSphere.SpreadOf(sizeM, boreM));
        draft.AddDrag(DragElement.Sphere(centerM, sizeM));
    }

    // As a bead's; pressed on one side it is a ball of its own.
    internal override void AddSideForce(PartContext part, PartDraft draft) => draft.AddSideForce(part.Sheaths.Round(part.Hook).Steps(part.Index));

    internal override void Advise(PartChange change)
    {
        PartDimensions now = PartDimensions.Of(change.Part, change.Hook);
        double nowKg = change.Part.MassKg
            ?? PartSubstance.DensityKgM3(change.Part) * BoredSphere.VolumeM3(now.SizeM, IsRound(change.Part) ? change.Hook.WireM : 0);
        change.Choose("mass", BoughtBy.LumpMass, nowKg, LumpsKg, kg => change.Part with { MassKg = Adjustables.TwelveDigits(kg) });
        change.Places();
        change.Sides();
    }

    public override IEnumerable<Dial> Dials(PartSpec part, ResolvedHook hook)
    {
        (double frontM, double rearM) = PartExtents.Of(part, hook);
        Dial place = Dial.Length("at", "Place", 0, hook.ShankM - (rearM - frontM), frontM);
        return part.MassKg is { } massKg ? [new Dial("mass", "Mass", Dimension.Mass, 0.02e-3, Math.Max(1e-3, massKg), massKg), place] : [place];
    }

    internal override IEnumerable<string> CautionCodes(PartSpec part) =>
        PartSubstance.Of(part).Name.EndsWith("solder", StringComparison.Ordinal) ? [.. base.CautionCodes(part), "hot"] : base.CautionCodes(part);
}
