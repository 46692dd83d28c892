using TyingClass.Balance.Geometry;
using TyingClass.Drawing.Geometry;
using TyingClass.Drawing.Svg;
using TyingClass.Recipes.Model;
using TyingClass.Recipes.Parts;

namespace TyingClass.Drawing.Flies;

/// <summary>Legs splayed to both sides: two strands a hand.</summary>
internal sealed class LegsArt : PartArt
{
    public override PartKind Kind => PartKind.Legs;

    public override double? ThreadMm => 0.55;

    public override IEnumerable<Piece> Draw(Limb legs)
    {
        double splay = double.DegreesToRadians(Legs.AngleDeg.Value), seat = legs.Fly.SeatMm(legs.Index, legs.FrontMm);
        int side = legs.SideSign();
        foreach (int hand in (int[])[1, -1])
        {
            Vector3D tie = legs.Place(legs.FrontMm, side == 0 ? hand * seat : 0, side * seat);
            Sweep Leg(double up) => Sweep.Trailing(
                tie, legs.Direct(new Vector3D(Math.Cos(splay), hand * Math.Sin(splay), up)).Normalized(), legs.Fly.Trail, legs.LengthMm,
                0.55 * legs.Suppleness);
            Sweep[] pair = [Leg(0.22), Leg(-0.3)];
            foreach (Piece piece in legs.Material is "rubber" or "silicone rubber" ? Rubber(legs, pair) : Soft(legs, pair))
                yield return piece;
        }
    }

    public static IEnumerable<Piece> Rubber(Limb limb, Sweep[] strands)
    {
        double gauge = Math.Clamp(0.04 * limb.LengthMm, 0.22, 0.65);
        foreach (Sweep strand in strands)
        {
            Point[] outline = [.. Enumerable.Range(0, 7).Select(i => limb.View.At(strand.At(i / 6.0)))];
            PathText path = new(), gleam = new();
            strand.DrawOn(path, limb.View);
            Vector3D lift = 0.12 * limb.View.Light;
            strand.Shifted(lift, lift, lift, lift).Cut(0.95).DrawOn(gleam, limb.View);
            yield return new Piece(limb.View.Depth(strand.At(0.5)) + 0.22, limb.Name, outline,
                ink => ink.Wire(path, limb.Fly.Dye(1), Math.Max(gauge, 2.2 * ink.PenMm), gleam, "round"));
        }
    }

    private static IEnumerable<Piece> Soft(Limb limb, Sweep[] strands) =>
        strands.SelectMany(s => HairArt.Draw(limb, s, limb.View.Pose.ToHook(Vector3D.UnitZ), new Bunch(9, 0.06, limb.Fly.Dye(1))));
}
