using System.Collections.Immutable;
using TyingClass.Balance.Geometry;
using TyingClass.Balance.Shapes;
using TyingClass.Recipes.Bodies;
using TyingClass.Recipes.Catalogue;
using TyingClass.Recipes.Model;
using TyingClass.Recipes.Supplies;
using TyingClass.Recipes.Text;

namespace TyingClass.Recipes.Parts;

/// <summary>Wire wound over a body in open turns, against the turns of the body so that it binds them.</summary>
internal sealed class Rib : KindOfPart
{
    private static readonly Figure WireMm = Figure.Guess("wire of a rib", 0.18, "mm", 0.12, 0.25, "wires in use");
    private static readonly Figure UsualTurns = new(5, "turns", Figure.Estimate + ", common practice");

    public override PartKind Kind => PartKind.Rib;

    internal override ImmutableArray<string> OtherNames => ["ribbing", "counter rib"];

    public override string UsualMaterial => "copper";

    public override ImmutableArray<string> SuitedMaterials => ["copper", "brass", "steel", "aluminum", "tinsel", "nylon"];

    public override IEnumerable<(string, Figure)> Figures => [WireMm.Named, ("turns of a rib", UsualTurns)];

    internal override ImmutableArray<string> OwnKeys => ["diameter", "turns", "mass", "to"];

    internal override Limit LimitOf(string key) => key == "diameter" ? Limits.WireOfWraps : base.LimitOf(key);

    internal override string Instead(string key) => Sleeve.InsteadOf(key) ?? base.Instead(key);

    internal override UsualPlace UsualPlace(TiedSoFar tied) => tied.OverBody();

    internal override bool IsInInches(string key, string text) => key == "diameter" && TradeText.IsWire(text);

    internal override string? OfferFor(string key) => key == "diameter" ? Wraps.OfferOfWire : base.OfferFor(key);

    internal override bool Uses(string figure) => figure == "density";

    public override FieldWording? FieldFor(string key) => key == "diameter" ? new FieldWording("Wire", "0.18 mm") : null;

    internal override PartDimensions Measure(PartSpec part, ResolvedHook hook, AssumptionLog? log)
    {
        double wireM = part.DiameterM ?? 1e-3 * hook.Guesses.Of(WireMm);
        if (part.DiameterM is null) log?.AddFigure("wire diameter", WireMm);
        int turns = part.Turns ?? (int)UsualTurns.Value;
        if (part.Turns is null) log?.AddFigure("turns", UsualTurns);
        PartDimensions run = Run.Of(part, hook, log, wireM);
        return run with { Turns = turns };
    }

    internal override void Build(PartContext part, PartDraft draft)
    {
        PartDimensions d = part.Dimensions;
        double overM = 2 * part.Sheaths.SeatRadiusM(part.Index, d.FrontM, d.RearM), radiusM = (overM + d.SizeM) / 2;
        part.Log.AddLength("wound over", overM, "the thickest of what lies under it");
        double woundM = d.Turns * Helix.TurnLengthM(radiusM, d.LengthM / d.Turns);
        double massKg = part.MassKg(() => part.DensityKgM3 * Cylinders.SectionM2(d.SizeM) * woundM, "from its wire, turns and density");
        draft.AddSolid(massKg, massKg / part.DensityKgM3, new(part.MiddleM, 0, 0), Vector3D.UnitX, Helix.SpreadOf(radiusM, d.LengthM, d.SizeM / 2));
        part.Log.Add("drag", "none of its own", "it lies in the body it binds, estimate");
    }

    // None of its own: it lies in the body it binds.
    internal override void AddSideForce(PartContext part, PartDraft draft)
    {
    }

    public override IEnumerable<Dial> Dials(PartSpec part, ResolvedHook hook)
    {
        int turns = PartDimensions.Of(part, hook).Turns;
        return [new Dial("turns", "Turns", null, 1, Math.Max(12, turns), turns)];
    }

    internal override Supply Supply(PartSpec part, PartDimensions dimensions, double massKg) => SupplyList.Wire(this, part, dimensions, massKg);
}
