using System.Collections.Immutable;
using System.Globalization;
using TyingClass.Balance.Bodies;
using TyingClass.Balance.Geometry;
using TyingClass.Balance.Shapes;
using TyingClass.Recipes.Advice;
using TyingClass.Recipes.Bodies;
using TyingClass.Recipes.Catalogue;
using TyingClass.Recipes.Model;
using TyingClass.Recipes.Supplies;
using TyingClass.Recipes.Text;

namespace TyingClass.Recipes.Parts;

/// <summary>A closed tube with air and a few balls in it, bound along the shank. Its air is sealed: no water ever takes its place.</summary>
internal sealed class Rattle : KindOfPart
{
    private static readonly Figure DiameterGapes = Figure.Guess("rattle diameter", 0.35, "× gape", 0.3, 0.42, "a size up or down on such a hook");
    private static readonly Figure LengthDiameters = Figure.Guess("rattle length", 3, "× diameter", 2.5, 4, "rattles are sold short and long");
    private static readonly Figure WallShare = Figure.Guess("wall of a rattle", 0.12, "× diameter", 0.08, 0.16, "thin glass to thick plastic");
    private static readonly Figure BallShare = Figure.Guess("ball of a rattle", 0.65, "× bore", 0.5, 0.8, "they must roll, and be heard");
    private static readonly Figure UsualBalls = new(3, "balls", Figure.Estimate);
    private static readonly Figure Bluntness = Figure.Guess("bluntness of a rattle", 0.5, "1", 0.3, 0.7, "rounded ends");

    private static readonly Limit Diameters = new(Dimension.Length, "1 mm", "12 mm", "3 mm");
    private static readonly Limit Lengths = new(Dimension.Length, "3 mm", "40 mm", "10 mm");

    public override PartKind Kind => PartKind.Rattle;

    public override ImmutableArray<Side> Sides => [Side.Top, Side.Under, Side.Beside];

    public override Side UsualSide => Side.Under;

    public override string UsualMaterial => "glass";

    public override ImmutableArray<string> SuitedMaterials => ["glass", "plastic"];

    public override Figure NoseBluntness => Bluntness;

    public override IEnumerable<(string, Figure)> Figures =>
    [
        DiameterGapes.Named, LengthDiameters.Named, WallShare.Named,
        BallShare.Named, ("balls in a rattle", UsualBalls), Bluntness.Named,
    ];

    internal override string SideAdvice => "A rattle is tied on top of the shank, under it or beside it. Write top, under or beside.";

    internal override ImmutableArray<string> OwnKeys => ["diameter", "length", "balls", "mass", "side"];

    internal override Limit LimitOf(string key) => key switch
    {
        "diameter" => Diameters,
        "length" => Lengths,
        _ => base.LimitOf(key),
    };

    internal override string Instead(string key) => key switch
    {
        "size" => "Write “diameter” and “length” instead.",
        "to" => "Say how long it is with “length” instead.",
        _ => base.Instead(key),
    };

    internal override bool Uses(string figure) => figure == "density";

    /// <summary>Bore of the tube and size of one of its balls, in the unit of the diameter: as large as usual, or as the length leaves room for.</summary>
    internal static (double Bore, double Ball) Inside(double diameter, double length, int balls, ResolvedHook hook)
    {
        double wall = Wall(diameter, length, hook), bore = diameter - 2 * wall;
        return (bore, Math.Min(hook.Guesses.Of(BallShare) * bore, (length - 2 * wall) / balls));
    }

    // A stubby tube on a large hook must still have an inside.
    private static double Wall(double diameter, double length, ResolvedHook hook) => Math.Min(hook.Guesses.Of(WallShare) * diameter, length / 4);

    internal static int Balls(PartSpec part) => part.Balls ?? (int)UsualBalls.Value;

    internal override bool IsInRow => true;

    internal override PartDimensions Measure(PartSpec part, ResolvedHook hook, AssumptionLog? log)
    {
        double diameterM = Run.DiameterM(part, hook, log, DiameterGapes, hook.GapeM);
        double lengthM = part.LengthM ?? hook.Guesses.Of(LengthDiameters) * diameterM;
        if (part.LengthM is null) log?.AddLength("length", lengthM, "generic rattle", LengthDiameters);
        return new PartDimensions(part.AtM, part.AtM + lengthM, diameterM, lengthM, 0);
    }

    internal override void Build(PartContext part, PartDraft draft)
    {
        double diameterM = part.Dimensions.SizeM, lengthM = part.Dimensions.LengthM;
        int balls = Balls(part.Spec);
        part.SideSign();
        (double boreM, double ballM) = Inside(diameterM, lengthM, balls, part.Hook);
        LogInside(part, Wall(diameterM, lengthM, part.Hook), ballM);

        double insideM3 = Cylinders.VolumeM3(boreM, lengthM - (diameterM - boreM));
        double wallM3 = Cylinders.VolumeM3(diameterM, lengthM) - insideM3, ballsM3 = balls * Math.PI / 6 * Math.Pow(ballM, 3);
        double wallKg = part.DensityKgM3 * wallM3, ballsKg = Materials.Find(part.Spec.BallMaterial ?? "steel").DensityKgM3 * ballsM3;
        double scale = part.MassKg(() => wallKg + ballsKg, "from its wall and its balls, estimate") / (wallKg + ballsKg);

        Vector3D centerM = CenterM(part), half = new(lengthM / 2, 0, 0);
        draft.AddSolid(scale * wallKg, wallM3, centerM, Vector3D.UnitX, Cylinders.SpreadOf(diameterM, lengthM, boreM));
        draft.AddSolid(scale * ballsKg, ballsM3, centerM, Vector3D.UnitX, Cylinders.SpreadOf(ballM, balls * ballM));
        draft.AddSealedAir(insideM3 - ballsM3, centerM);
        draft.AddStraightDrag(centerM - half, centerM + half, diameterM, lengthM / diameterM, part.Refinement, part.Of(Bluntness));
    }

    internal override void AddSideForce(PartContext part, PartDraft draft)
    {
        double diameterM = part.Dimensions.SizeM, lengthM = part.Dimensions.LengthM;
        Vector3D centerM = CenterM(part), half = new(lengthM / 2, 0, 0);
        draft.AddSideForce(SideForceElement.Rod(centerM - half, centerM + half, diameterM, lengthM / diameterM, 1, part.Of(PartScale.RearShare)));
    }

    private static void LogInside(PartContext part, double wallM, double ballM)
    {
        part.Log.AddLength("wall", wallM, "generic rattle", WallShare);
        if (part.Spec.Balls is null) part.Log.AddFigure("balls", UsualBalls);
        if (part.Spec.BallMaterial is null) part.Log.Add("material of the balls", "steel", "usual for such a part, estimate");
        part.Log.AddLength("ball", ballM, "generic rattle", BallShare);
        part.Log.Add("place of the balls", "the middle", "they roll to whichever end lies lower, estimate");
        part.Log.AddFigure("nose bluntness", Bluntness);
    }

    private static Vector3D CenterM(PartContext part)
    {
        double offM = part.Sheaths.SeatRadiusM(part.Index, part.Dimensions.FrontM, part.Dimensions.RearM) + part.Dimensions.SizeM / 2;
        int side = part.SideOnShank();
        return side == 0 ? new(part.MiddleM, offM, 0) : new(part.MiddleM, 0, side * offM);
    }

    internal override void Advise(PartChange change)
    {
        change.Places();
        change.Sides();
    }

    public override IEnumerable<Dial> Dials(PartSpec part, ResolvedHook hook)
    {
        (double frontM, double rearM) = PartExtents.Of(part, hook);
        return [Dial.Length("at", "Place", 0, hook.ShankM - (rearM - frontM), frontM)];
    }

    internal override Supply Supply(PartSpec part, PartDimensions dimensions, double massKg)
    {
        string balls = string.Create(CultureInfo.InvariantCulture, $"{Balls(part)} {part.BallMaterial ?? "steel"}");
        SupplyItem tube = SupplyList.Substance(Word, part) with
        {
            SizeM = SupplyList.OnPacketM(dimensions.SizeM),
            LengthM = SupplyList.OnPacketM(dimensions.LengthM),
            With = $"balls {balls}",
        };
        return new Supply(SupplyKind.Bead, tube, 1, 0, 0, 0);
    }

    internal override IEnumerable<string> CautionCodes(PartSpec part) =>
        PartSubstance.Of(part).Name == "glass" ? [.. base.CautionCodes(part), "glass"] : base.CautionCodes(part);
}
