using TyingClass.Balance.Geometry;
using TyingClass.Drawing.Geometry;
using TyingClass.Drawing.Svg;
using TyingClass.Recipes.Model;
using TyingClass.Recipes.Parts;

namespace TyingClass.Drawing.Flies;

/// <summary>A clear loop from the bend round the point to the eye, bound down at both ends.</summary>
internal sealed class WeedGuardArt : PartArt
{
    private const int Steps = 20;

    public override PartKind Kind => PartKind.WeedGuard;

    public override bool LeavesRoomForHead => true;

    public override IEnumerable<Piece> Draw(Limb limb)
    {
        foreach (GuardArc[] loop in WeedGuard.Arcs(limb.Spec, limb.Dimensions, limb.Fly.Hook).Chunk(2))
        {
            Vector3D[] line = [.. loop.SelectMany(arc => Enumerable.Range(0, Steps + 1).Select(k =>
            {
                (double sin, double cos) = Math.SinCos(arc.FromRad + (arc.ToRad - arc.FromRad) * k / Steps);
                Vector3D at = 1e3 * (arc.CenterM + cos * arc.U + sin * arc.V);
                return limb.Place(at.X, at.Y, at.Z);
            }))];
            Point[] on = [.. line.Select(limb.View.At)];
            Point shift = new(-0.12 * limb.SizeMm, -0.16 * limb.SizeMm);
            PathText path = new PathText().Polyline(on), gleam = new PathText().Polyline([.. on.Select(p => p + shift)]);
            // Its lowest run counts: beside the hook's bend it stands before or behind as its loop does.
            double depth = line.Skip(Steps / 2).Take(Steps).Average(limb.View.Depth) - 0.02;
            yield return new Piece(depth, limb.Name, on, ink => ink.Wire(path, Tone.Glass, Math.Max(limb.SizeMm, 3 * ink.PenMm), gleam, "round"))
            {
                IsOpen = true,
            };
        }
    }
}
