using TyingClass.Balance.Geometry;
using TyingClass.Drawing.Geometry;
using TyingClass.Drawing.Svg;
using TyingClass.Recipes.Model;

namespace TyingClass.Drawing.Flies;

/// <summary>Wire wound turn by turn, in layers when the turns do not fit side by side.</summary>
internal sealed class WrapsArt : PartArt
{
    private const int Steps = 10;

    public override PartKind Kind => PartKind.Wraps;

    public override bool LeavesRoomForHead => true;

    public override bool IsWound => true;

    public override double? GirthMm(Limb limb) => limb.Fly.CoreMm(limb) + 2 * limb.SizeMm * Layers(limb);

    public override IEnumerable<Piece> Draw(Limb limb) => Wound(limb).Concat(Hidden(limb));

    private static int Layers(Limb wraps)
    {
        int perLayer = PerLayer(wraps);
        return Math.Max(1, (wraps.Turns + perLayer - 1) / perLayer);
    }

    private static IEnumerable<Piece> Wound(Limb wraps)
    {
        int layers = Layers(wraps), perLayer = PerLayer(wraps);
        double gauge = wraps.SizeMm;
        Tone tone = Tone.Of(wraps.Material);
        for (int layer = 0; layer < layers; layer++)
        {
            int turns = Math.Min(perLayer, wraps.Turns - layer * perLayer);
            double pitch = layers == 1 ? wraps.LengthMm / turns : gauge, radius = wraps.Fly.CoreMm(wraps) / 2 + (layer + 0.5) * gauge;
            List<Point[]> near = [], far = [];
            for (int turn = 0; turn < turns; turn++)
            {
                near.AddRange(Turn(wraps, turn, pitch, radius, nearSide: true));
                far.AddRange(Turn(wraps, turn, pitch, radius, nearSide: false));
            }

            double depth = wraps.View.Depth(wraps.Place((wraps.FrontMm + wraps.RearMm) / 2, 0, 0)) + 0.01 * layer;
            yield return Coil(wraps, far, depth - radius, gauge, tone);
            yield return Coil(wraps, near, depth + 0.2, gauge, tone);
        }
    }

    // Weight that a body covers, shown through it in broken lines as on engineering drawings: it is what the lesson is about.
    private static IEnumerable<Piece> Hidden(Limb wraps)
    {
        Limb? cover = wraps.Fly.Limbs.Skip(wraps.Index + 1).FirstOrDefault(l => l.Art.Covers(l)
            && Math.Min(l.RearMm, wraps.RearMm) - Math.Max(l.FrontMm, wraps.FrontMm) > 0.5 * wraps.LengthMm);
        if (cover is null)
            yield break;
        double radius = wraps.Fly.CoreMm(wraps) / 2 + Layers(wraps) * wraps.SizeMm,
            depth = wraps.View.Depth(wraps.Place((cover.FrontMm + cover.RearMm) / 2, 0, 0)) + 0.215;
        Lathe shape = new(wraps.View, wraps.Place(wraps.FrontMm, 0, 0), Vector3D.UnitX, (0, radius), (wraps.LengthMm, radius));
        yield return new Piece(depth, wraps.Name, shape.Outline, ink =>
        {
            ink.Hidden(shape.OutlinePath());
            ink.Hidden(shape.Rings(wraps.SizeMm, 2, wraps.Chance("hidden")));
        });
    }

    private static int PerLayer(Limb wraps) => Math.Max(1, (int)Math.Floor(wraps.LengthMm / wraps.SizeMm + 1e-6));

    private static Piece Coil(Limb wraps, List<Point[]> runs, double depth, double gauge, Tone tone)
    {
        PathText wire = new(), gleam = new();
        Point shift = new(-0.12 * gauge, -0.12 * gauge);
        foreach (Point[] run in runs)
        {
            wire.Smooth(run);
            gleam.Smooth([.. run.Take((run.Length * 3) / 5).Select(p => p + shift)]);
        }

        Point[] outline = [.. runs.SelectMany(r => r)];
        return new Piece(depth, wraps.Name, outline, ink => ink.Wire(wire, tone, gauge, gleam, "round"));
    }

    // The half of a turn on the onlooker's side, or the other; ends where the coil rounds out of sight.
    private static IEnumerable<Point[]> Turn(Limb wraps, int turn, double pitch, double radius, bool nearSide)
    {
        Vector3D toward = wraps.View.Toward;
        double facing = Math.Atan2(toward.Y, toward.Z) + (nearSide ? 0 : Math.PI);
        if (Math.Abs(toward.X) > 0.999)
            facing = nearSide ? 0 : Math.PI;
        Point[] run = [.. Enumerable.Range(0, Steps + 1).Select(k =>
        {
            double angle = facing + Math.PI * (0.5 - (double)k / Steps);
            (double sin, double cos) = Math.SinCos(angle);
            double x = wraps.FrontMm + pitch * (turn + 0.5 + 0.5 * ((double)k / Steps - 0.5) * (nearSide ? 1 : -1));
            return wraps.View.At(wraps.Place(x, radius * sin, radius * cos));
        })];
        // Starts at the top of the page, where the light falls.
        yield return run[0].Y <= run[^1].Y ? run : [.. run.Reverse()];
    }
}
