using System.Collections.Immutable;
using TyingClass.Balance.Geometry;
using TyingClass.Balance.Shapes;
using TyingClass.Recipes.Advice;
using TyingClass.Recipes.Bodies;
using TyingClass.Recipes.Catalogue;
using TyingClass.Recipes.Model;
using TyingClass.Recipes.Supplies;
using TyingClass.Recipes.Text;

namespace TyingClass.Recipes.Parts;

/// <summary>Wire wound round the shank, or over earlier wraps, in layers when its turns do not fit side by side in the stated run.</summary>
internal sealed class Wraps : Weight
{
    internal const string OfferOfWire = "Wire may be said as on its spool, in inches: say .015, or 0.38 mm.";

    private static readonly Figure UsualTurns = new(12, "turns", Figure.Estimate);
    private static readonly Figure Bluntness = Figure.Guess("bluntness of wraps", 1, "1", 0.8, 1, "a flat step, or one that thread has ramped");

    public override PartKind Kind => PartKind.Wraps;

    internal override ImmutableArray<string> OtherNames => ["wrap", "wire", "lead wire", "lead", "underbody wire", "weight"];

    public override bool IsPlural => true;

    public override string UsualMaterial => "lead";

    public override ImmutableArray<string> SuitedMaterials => [.. MaterialNames.Metals, "lead-free wire", "nylon wire"];

    public override Figure NoseBluntness => Bluntness;

    public override IEnumerable<(string, Figure)> Figures => [("wraps", UsualTurns), Bluntness.Named];

    internal override ImmutableArray<string> OwnKeys => ["diameter", "turns", "mass", "to"];

    internal override ShankHold Hold => ShankHold.Wound;

    internal override UsualPlace UsualPlace(TiedSoFar tied) => tied.Next(coversWire: false);

    internal override bool IsInInches(string key, string text) => key == "diameter" && TradeText.IsWire(text);

    internal override string? OfferFor(string key) => key == "diameter" ? OfferOfWire : base.OfferFor(key);

    internal override Limit LimitOf(string key) => key == "diameter" ? Limits.WireOfWraps : base.LimitOf(key);

    internal override string Instead(string key) => Sleeve.InsteadOf(key) ?? base.Instead(key);

    public override FieldWording? FieldFor(string key) => key == "diameter" ? new FieldWording("Wire", "0.025 in") : null;

    internal override bool MustHaveLength(PartSpec part) => false;

    internal override PartDimensions Measure(PartSpec part, ResolvedHook hook, AssumptionLog? log)
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
            ({ } massKg, _) => (massKg / TurnKg(part, hook, wireM), "from its mass"),
            (_, { } m) => (m / wireM, "close wound over its length"),
            _ => (UsualTurns.Value, "usual number, " + UsualTurns.Source),
        };
        int whole = Math.Max(1, (int)Math.Round(turns));
        log?.AddNumber("turns", whole, "", why);
        return whole;
    }

    private static double TurnKg(PartSpec part, ResolvedHook hook, double wireM) =>
        PartSubstance.DensityKgM3(part, hook.Guesses) * Cylinders.SectionM2(wireM) * Helix.TurnLengthM((hook.WireM + wireM) / 2, wireM);

    internal override Sheath? SheathOf(int owner, PartSpec part, PartDimensions dimensions, Sheaths under)
    {
        double coreM = under.CoreDiameterM(owner, dimensions.FrontM, dimensions.RearM);
        return new Sheath(owner, dimensions.FrontM, dimensions.RearM, WrapLayer.OuterDiameterM(dimensions, coreM), IsSeat: true, IsWound: true);
    }

    internal override void Build(PartContext part, PartDraft draft)
    {
        double coreM = part.Sheaths.CoreDiameterM(part.Index, part.Dimensions.FrontM, part.Dimensions.RearM);
        WrapLayer[] layers = [.. WrapLayer.Of(part.Dimensions, coreM)];
        double wireM = part.Dimensions.SizeM, woundM = layers.Sum(layer => layer.WireLengthM);
        double massKg = part.MassKg(() => part.DensityKgM3 * Cylinders.SectionM2(wireM) * woundM, "from its wire, turns and density");
        foreach (WrapLayer layer in layers)
        {
            double layerKg = massKg * layer.WireLengthM / woundM;
            draft.AddSolid(
                layerKg, layerKg / part.DensityKgM3, new(part.Dimensions.FrontM + layer.RunM / 2, 0, 0), Vector3D.UnitX,
                Helix.SpreadOf(layer.RadiusM, layer.RunM, wireM / 2));
        }

        part.AddSheathDrag(draft, WrapLayer.OuterDiameterM(part.Dimensions, coreM));
    }

    internal override void AddSideForce(PartContext part, PartDraft draft) => draft.AddSideForce(part.Sheaths.Round(part.Hook).Steps(part.Index));

    internal override void Advise(PartChange change)
    {
        if (change.Part is not { Turns: not null, ToM: null, MassKg: null }) return;
        change.Turns(change.Part.DiameterM ?? change.Hook.WireM);
        change.Places();
    }

    public override IEnumerable<Dial> Dials(PartSpec part, ResolvedHook hook)
    {
        if (part is not { Turns: { } turns, ToM: null }) return [];
        double wireM = part.DiameterM ?? hook.WireM;
        int most = Math.Max(turns, (int)Math.Floor((hook.ShankM - PartExtents.Of(part, hook).FrontM) / wireM));
        return [new Dial("turns", "Turns", null, 1, most, turns)];
    }

    internal override Supply Supply(PartSpec part, PartDimensions dimensions, double massKg) =>
        SupplyList.Wire(this, part, dimensions, massKg);
}
