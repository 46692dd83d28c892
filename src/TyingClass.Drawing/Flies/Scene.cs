using System.Collections.Immutable;
using TyingClass.Drawing.Geometry;

namespace TyingClass.Drawing.Flies;

/// <summary>All the pieces of a fly, far to near.</summary>
internal sealed class Scene
{
    public Scene(Anatomy fly)
    {
        IEnumerable<Piece> all =
        [
            .. HookArt.Draw(fly), .. fly.Limbs.SelectMany(l => l.Art.Draw(l)), .. fly.Limbs.SelectMany(ThreadArt.Bindings), .. ThreadArt.Head(fly),
            .. ThreadArt.Collars(fly),
        ];
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
}
