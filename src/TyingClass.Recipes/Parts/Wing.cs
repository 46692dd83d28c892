using System.Collections.Immutable;
using TyingClass.Balance.Bodies;
using TyingClass.Recipes.Advice;
using TyingClass.Recipes.Catalogue;
using TyingClass.Recipes.Model;

namespace TyingClass.Recipes.Parts;

/// <summary>Hair, feather or strip over or under the body, tied down in front or at both ends.</summary>
internal sealed class Wing : Strand
{
    internal static readonly Figure AngleDeg =
        Figure.Guess("how steeply a wing leaves the shank", 10, "°", 5, 15, "dry it may stand steeper; the flow presses it down");

    private static readonly Figure Shanks = Figure.Guess("wing length", 1.5, "× shank", 1.2, 1.8, "what looks right on such a hook");

    public override PartKind Kind => PartKind.Wing;

    public override Side UsualSide => Side.Top;

    // On the point side of a fly that rides point up: there it hides the hook, and stands high.
    public override Side SideMeant(Intent intent) => intent == Intent.PointUp ? Side.Under : UsualSide;

    public override string? RoomForHead => "3 mm";

    public override string UsualMaterial => "bucktail";

    public override ImmutableArray<string> SuitedMaterials =>
    [
        "wool", "tinsel", "flash", "synthetic hair", "deer hair", "bucktail", "goat hair", "fur strip", "marabou", "feather", "rubber",
    ];

    public override IEnumerable<(string, Figure)> Figures => [Shanks.Named, AngleDeg.Named];

    protected override Figure LengthShanks => Shanks;

    protected override Figure? RiseDeg => AngleDeg;

    protected override bool IsFlat(Material material) => material.FlatWidth.Value > 0;

    internal override UsualPlace UsualPlace(TiedSoFar tied) => tied.BehindRing;

    internal override ImmutableArray<string> OwnKeys => ["length", "mass", "side", "tied", "to"];

    internal override string? EndComplaint(PartSpec part) => part.Tied == TieDown.BothEnds
        ? null
        : "“to” is where a wing's rear end is tied down. Add “tied: both ends”, or delete this line and say how long the wing is with “length”.";

    internal override void Advise(PartChange change) => change.Sides();
}
