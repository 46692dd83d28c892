using System.Collections.Immutable;
using TyingClass.Balance.Bodies;
using TyingClass.Balance.Geometry;
using TyingClass.Balance.Shapes;
using TyingClass.Recipes.Advice;
using TyingClass.Recipes.Bodies;
using TyingClass.Recipes.Catalogue;
using TyingClass.Recipes.Model;
using TyingClass.Recipes.Supplies;

namespace TyingClass.Recipes.Parts;

/// <summary>Two barrels side by side and the waist between them, lashed on top of the shank unless said otherwise.</summary>
internal sealed class DumbbellEyes : Weight
{
    private static readonly Figure SizeGapes = Figure.Guess("size of each dumbbell eye", 0.5, "× gape", 0.42, 0.58, "a size up or down on such a hook");

    // Each eye is a barrel this long across the shank.
    private static readonly Figure BarrelShare = Figure.Guess("length of an eye's barrel", 0.36, "× size", 0.3, 0.45, "makes differ");
    private static readonly Figure ReachShare = Figure.Guess("middle of the eyes to a barrel's middle", 0.6, "× size", 0.52, 0.7, "makes differ");
    private static readonly Figure WaistShare = Figure.Guess("waist between the eyes", 0.35, "× size", 0.25, 0.45, "makes differ");

    // The eyes shelter each other from a flow across the fly: together they show it one blunt face.
    private static readonly Figure FaceBluntness =
        Figure.Guess("bluntness of a pair of eyes", 0.5, "1", 0.3, 0.8, "they shelter each other, nobody knows how much");

    private static readonly double OunceKg = Text.Units.ToSi(1, Text.Dimension.Mass, "oz");

    // Common practice: the pairs shops sell (docs/recipes.md).
    private static readonly ImmutableArray<int> PairsPerOunce = [100, 80, 60, 50, 40, 36, 30, 24, 20, 18];

    // Volume of eyes of size 1.
    private static double VolumeRatio(ResolvedHook hook)
    {
        (double barrel, double reach, double waist) = Shape(1, hook);
        return 2 * Cylinders.VolumeM3(1, barrel) + Cylinders.VolumeM3(waist, 2 * reach - barrel);
    }

    public override PartKind Kind => PartKind.DumbbellEyes;

    public override string Word => "dumbbell eyes";

    internal override ImmutableArray<string> OtherNames => ["barbell", "barbell eyes", "barbells", "dumbbell", "dumbbells", "eyes", "lead eyes", "bead chain"];

    public override bool IsPlural => true;

    public override ImmutableArray<Side> Sides => [Side.Top, Side.Under];

    public override Side UsualSide => Side.Top;

    public override string? RoomForHead => "2 mm";

    public override string UsualMaterial => "lead";

    public override ImmutableArray<string> SuitedMaterials => [.. MaterialNames.Metals, "bismuth", "plastic"];

    public override IEnumerable<(string, Figure)> Figures =>
    [
        SizeGapes.Named, BarrelShare.Named, ReachShare.Named,
        WaistShare.Named, FaceBluntness.Named,
    ];

    internal override string SideAdvice => "Eyes are lashed on top of the shank or under it. Write top or under.";

    internal override ImmutableArray<string> OwnKeys => ["size", "mass", "side"];

    internal override ShankHold Hold => ShankHold.Lashed;

    internal override UsualPlace UsualPlace(TiedSoFar tied) => tied.BehindRing;

    internal override ImmutableArray<string> SizeWords => ["extra small", "small", "medium", "large", "extra large"];

    // Common practice, no source: how packets name 3/32, 1/8, 5/32, 3/16 and 7/32 in.
    internal override double? SizeNamed(string word) => word switch
    {
        "extra small" => 2.38125e-3,
        "small" => 3.175e-3,
        "medium" => 3.96875e-3,
        "large" => 4.7625e-3,
        "extra large" => 5.55625e-3,
        _ => null,
    };

    internal override string? OfferFor(string key) => key == "size"
        ? "Eyes may also be said as extra small, small, medium, large or extra large; a bare fraction is taken in inches: say 5/32, or 4 mm."
        : base.OfferFor(key);

    internal override string Instead(string key) => key == "diameter" ? "Write its widest diameter as “size” instead." : base.Instead(key);

    public override FieldWording? FieldFor(string key) => key == "size" ? new FieldWording("Size of one eye", "medium or 4 mm") : null;

    /// <summary>Length of a barrel, middle of the pair to the middle of a barrel, and thickness of the waist, of eyes of a size.</summary>
    internal static (double Barrel, double Reach, double Waist) Shape(double size, ResolvedHook hook) =>
        (hook.Guesses.Of(BarrelShare) * size, hook.Guesses.Of(ReachShare) * size, hook.Guesses.Of(WaistShare) * size);

    internal override PartDimensions Measure(PartSpec part, ResolvedHook hook, AssumptionLog? log)
    {
        double sizeM = SizeM(part, log, SizeGapes, hook, VolumeRatio(hook));
        return new PartDimensions(part.AtM, part.AtM + sizeM, sizeM, sizeM, 0);
    }

    internal override void Build(PartContext part, PartDraft draft)
    {
        double sizeM = part.Dimensions.SizeM, outlineM3 = VolumeRatio(part.Hook) * Math.Pow(sizeM, 3);
        (double barrelM, double reachM, double waistM) = Shape(sizeM, part.Hook);
        double massKg = part.MassKg(() => part.DensityKgM3 * outlineM3, FromOutline);
        Vector3D middleM = new(part.MiddleM, 0, part.SideSign() * (part.Hook.WireM + waistM) / 2);

        part.Log.AddLength("barrel", barrelM, "generic eyes", BarrelShare);
        part.Log.AddLength("reach", reachM, "generic eyes, middle to middle of each barrel", ReachShare);
        part.Log.AddLength("waist", waistM, "generic eyes", WaistShare);
        AddRod(middleM - reachM * Vector3D.UnitY, sizeM, barrelM, part.Of(FaceBluntness));
        AddRod(middleM, waistM, 2 * reachM - barrelM, 0);
        AddRod(middleM + reachM * Vector3D.UnitY, sizeM, barrelM, part.Of(FaceBluntness));

        void AddRod(Vector3D centerM, double diameterM, double lengthM, double bluntShare)
        {
            double shareKg = massKg * Cylinders.VolumeM3(diameterM, lengthM) / outlineM3;
            draft.AddSolid(shareKg, shareKg / part.DensityKgM3, centerM, Vector3D.UnitY, Cylinders.SpreadOf(diameterM, lengthM));
            draft.AddDrag(DragElement.Cylinder(centerM, Vector3D.UnitY, lengthM, diameterM, bluntShare, lengthM / diameterM));
        }
    }

    // None: two sharp-edged barrels side by side and the gap between them. Which way such a thing turns in the tests of bluff bodies is not known; drag is all.
    internal override void AddSideForce(PartContext part, PartDraft draft)
    {
    }

    internal override void Advise(PartChange change)
    {
        PartSpec part = change.Part;
        if (part.MassKg is { } massKg)
        {
            change.Choose(
                "mass", BoughtBy.PairWeight, massKg, [.. PairsPerOunce.Select(n => OunceKg / n)],
                kg => part with { MassKg = Adjustables.TwelveDigits(kg), SizeM = null, Said = part.Said.Without("size") });
            change.Materials();
        }
        else
        {
            change.Sizes();
        }

        change.Places();
        change.Sides();
    }

    public override IEnumerable<Dial> Dials(PartSpec part, ResolvedHook hook)
    {
        Dial size = SizeDial(part, hook);
        return [size, Dial.Length("at", "Place", 0, hook.ShankM - size.ValueSi, PartExtents.Of(part, hook).FrontM)];
    }

    internal override Supply Supply(PartSpec part, PartDimensions dimensions, double massKg) =>
        SupplyList.Piece(SupplyKind.Eyes, this, part, dimensions.SizeM);
}
