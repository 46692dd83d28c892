using System.Collections.Immutable;
using TyingClass.Balance.Geometry;
using TyingClass.Recipes.Bodies;
using TyingClass.Recipes.Catalogue;
using TyingClass.Recipes.Model;

namespace TyingClass.Recipes.Parts;

/// <summary>Rubber or feather splayed to both sides, as many to the left as to the right.</summary>
internal sealed class Legs : Strand
{
    internal static readonly Figure AngleDeg = Figure.Guess("how far legs splay", 45, "°", 30, 60, "nobody measures it");

    private static readonly Figure Shanks = Figure.Guess("leg length", 0.8, "× shank", 0.6, 1.1, "what looks right on such a hook");

    public override PartKind Kind => PartKind.Legs;

    public override bool IsPlural => true;

    public override string UsualMaterial => "rubber";

    public override ImmutableArray<string> SuitedMaterials => ["marabou", "feather", "rubber", "silicone rubber"];

    public override IEnumerable<(string, Figure)> Figures => [Shanks.Named, AngleDeg.Named];

    protected override Figure LengthShanks => Shanks;

    internal override bool Uses(string figure) => figure is not ("side force share" or "width when flat");

    internal override UsualPlace UsualPlace(TiedSoFar tied) => tied.BehindRing;

    internal override void Build(PartContext part, PartDraft draft)
    {
        PartDimensions d = part.Dimensions;
        double massKg = StrandBuilder.MassKg(part), splayRad = part.Of(AngleDeg) * Math.PI / 180;
        part.Log.AddFigure("splay to each side", AngleDeg);
        double seatM = part.Sheaths.SeatRadiusM(part.Index, d.FrontM, d.RearM);
        int side = part.SideSign();
        foreach (int hand in (ReadOnlySpan<int>)[1, -1])
        {
            Vector3D tieM = new(d.FrontM, side == 0 ? hand * seatM : 0, side * seatM);
            StrandBuilder.AddStrand(part, draft, new(massKg / 2, d.LengthM, tieM, StrandBuilder.Toward(0, hand * splayRad), IsBound: false));
        }
    }

    // None: thin, and bent along the flow.
    internal override void AddSideForce(PartContext part, PartDraft draft)
    {
    }
}
