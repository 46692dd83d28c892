using System.Collections.Immutable;
using TyingClass.Drawing.Geometry;
using TyingClass.Recipes.Model;

namespace TyingClass.Drawing.Flies;

/// <summary>All the pieces of a fly, far to near.</summary>
internal sealed class Scene
{
    public Scene(Anatomy fly)
    {
        IEnumerable<Piece> all = [.. HookArt.Draw(fly), .. fly.Limbs.SelectMany(Part), .. fly.Limbs.SelectMany(ThreadArt.Bindings), .. ThreadArt.Head(fly)];
        Pieces = [.. all.OrderBy(p => p.DepthMm)];
        Frame = Pieces.SelectMany(p => p.Outline).Aggregate(Box.Empty, (box, p) => box.With(p));
    }

    public ImmutableArray<Piece> Pieces { get; }

    /// <summary>The rectangle round the fly, mm from the tow point.</summary>
    public Box Frame { get; }

    public void Draw(Ink ink)
    {
        foreach (Piece piece in Pieces)
        {
            ink.Canvas.Open("g", ("class", "fly-part"), ("data-part", piece.Part));
            piece.Draw(ink);
            ink.Canvas.Close();
        }
    }

    private static IEnumerable<Piece> Part(Limb limb) => limb.Spec.Kind switch
    {
        PartKind.Bead => WeightArt.Bead(limb),
        PartKind.Cone => WeightArt.Cone(limb),
        PartKind.DumbbellEyes => WeightArt.Dumbbell(limb),
        PartKind.Wraps => WrapsArt.Draw(limb).Concat(WrapsArt.Hidden(limb)),
        PartKind.Hackle => HackleArt.Draw(limb),
        PartKind.Legs => LegArt.Draw(limb),
        PartKind.Wing or PartKind.Tail => StrandArt.Draw(limb),
        _ => SleeveArt.Draw(limb),
    };
}
