using TyingClass.Balance.Geometry;
using TyingClass.Drawing.Geometry;
using TyingClass.Drawing.Svg;
using TyingClass.Recipes.Model;

namespace TyingClass.Drawing.Flies;

/// <summary>Hackle wound round the shank: fibers standing off a spiral, swept aft by the water as far as they are supple.</summary>
internal sealed class HackleArt : PartArt
{
    public override PartKind Kind => PartKind.Hackle;

    public override IEnumerable<Piece> Draw(Limb hackle)
    {
        Seeded chance = hackle.Chance("hackle");
        double reach = hackle.SizeMm / 2;
        int side = hackle.SideSign(), count = (int)Math.Clamp(hackle.LengthMm * 13, 56, 190);
        List<Sweep> near = [], far = [];
        for (int i = 0; i < count; i++)
        {
            double t = (i + chance.Next()) / count, x = hackle.FrontMm + t * hackle.LengthMm, seat = hackle.Fly.SeatMm(hackle.Index, x);
            // Successive fibers a golden angle apart: even all round, never in rows.
            double turn = side == 0 ? i * 2.39996 : (side > 0 ? 0 : Math.PI) + chance.Between(-1, 1);
            Vector3D off = new(0, Math.Sin(turn), Math.Cos(turn)), root = hackle.Place(x, seat * off.Y, seat * off.Z);
            double length = Math.Max(0.5, (reach - seat) * chance.Between(0.82, 1.05)), sweep = 0.3 + chance.Between(-0.08, 0.12);
            Vector3D own = (hackle.Direct(off) + sweep * Vector3D.UnitX).Normalized();
            Sweep fiber = Sweep.Trailing(root, own, (hackle.Fly.Trail + 0.4 * Vector3D.UnitX).Normalized(), length, 0.45 * hackle.Suppleness);
            (Vector3D.Dot(hackle.Direct(off), hackle.View.Toward) >= 0 ? near : far).Add(fiber);
        }

        double middle = hackle.View.Depth(hackle.Place((hackle.FrontMm + hackle.RearMm) / 2, 0, 0));
        yield return Half(hackle, far, middle - 0.1, false);
        yield return Half(hackle, near, middle + 0.24, true);
    }

    private static Piece Half(Limb hackle, List<Sweep> fibers, double depth, bool near)
    {
        Point[] outline = [.. fibers.SelectMany(f => (Point[])[hackle.View.At(f.A), hackle.View.At(f.At(0.5)), hackle.View.At(f.D)])];
        return new Piece(depth, hackle.Name, outline, ink =>
        {
            PathText wash = new(), fine = new(), light = new();
            for (int i = 0; i < fibers.Count; i++)
            {
                if (i % 2 == 0)
                    fibers[i].Cut(0.85).DrawOn(wash, hackle.View);
                fibers[i].DrawOn(near && i % 5 == 0 ? light : fine, hackle.View);
            }

            ink.Brush(wash, hackle.Fly.Dye(1), 1.5 * ink.PenMm, near ? 0.9 : 0.6);
            ink.Line(fine, near ? 0.5 : 0.4, near ? 0.9 : 0.55);
            ink.Brush(light, Tone.Gleam, 0.55 * ink.PenMm, 0.7);
        });
    }
}
