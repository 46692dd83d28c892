using TyingClass.Balance.Geometry;
using TyingClass.Drawing.Geometry;
using TyingClass.Drawing.Svg;
using TyingClass.Recipes.Model;

namespace TyingClass.Drawing.Flies;

/// <summary>Fine wire in open turns over the body, slanting the other way than wraps do.</summary>
internal sealed class RibArt : PartArt
{
    private const int Steps = 10;

    public override PartKind Kind => PartKind.Rib;

    public override bool LeavesRoomForHead => true;

    public override IEnumerable<Piece> Draw(Limb limb)
    {
        double over = Enumerable.Range(0, 9).Max(i => limb.Fly.SeatMm(limb.Index, limb.FrontMm + limb.LengthMm * i / 8)), pitch = limb.LengthMm / limb.Turns;
        Point[][] near = [.. Enumerable.Range(0, limb.Turns).Select(turn => Turn(limb, turn, pitch, over))];
        // In front of the body's own spindle.
        double depth = limb.View.Depth(limb.Place((limb.FrontMm + limb.RearMm) / 2, 0, 0)) + 0.23, gauge = limb.SizeMm;
        Tone tone = Tone.Of(limb.Material);
        yield return new Piece(depth, limb.Name, [.. near.SelectMany(r => r)], ink =>
        {
            PathText wire = new(), gleam = new();
            foreach (Point[] run in near)
            {
                wire.Smooth(run);
                gleam.Smooth([.. run.Take(run.Length * 3 / 5).Select(p => p + new Point(-0.12 * gauge, -0.12 * gauge))]);
            }

            // Never thinner than a line that can be seen with its edges.
            ink.Wire(wire, tone, Math.Max(gauge, 3 * ink.PenMm), gleam, "round");
        });
    }

    // The half of a turn on the onlooker's side. It narrows with the body at both ends, as the spindle does.
    private static Point[] Turn(Limb rib, int turn, double pitch, double over)
    {
        Vector3D toward = rib.View.Toward;
        double facing = Math.Abs(toward.X) > 0.999 ? 0 : Math.Atan2(toward.Y, toward.Z);
        return [.. Enumerable.Range(0, Steps + 1).Select(k =>
        {
            double share = (double)k / Steps, x = rib.FrontMm + pitch * (turn + 0.5 - 0.5 * (share - 0.5));
            (double sin, double cos) = Math.SinCos(facing + Math.PI * (0.5 - share));
            double radius = over * Waist((x - rib.FrontMm) / rib.LengthMm) + rib.SizeMm / 2;
            return rib.View.At(rib.Place(x, radius * sin, radius * cos));
        })];
    }

    private static double Waist(double along)
    {
        double away = Math.Abs(along - 0.45) / 0.55;
        return 1 - 0.45 * Math.Pow(Math.Min(1, away), 2.4);
    }
}
