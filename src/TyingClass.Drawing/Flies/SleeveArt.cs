using TyingClass.Balance.Geometry;
using TyingClass.Drawing.Geometry;
using TyingClass.Drawing.Svg;

namespace TyingClass.Drawing.Flies;

/// <summary>Bodies, foam and resin: a spindle along the shank, finished as its material is.</summary>
internal abstract class SleeveArt : PartArt
{
    /// <summary>Share of the full width at the front and the rear end, and how suddenly it narrows there.</summary>
    protected abstract (double Front, double Rear, double Power) Ends(string material);

    /// <summary>Seen through, whatever its material.</summary>
    protected virtual bool IsClear => false;

    public override double? GirthMm(Limb limb) => Covers(limb) ? limb.SizeMm : null;

    public override bool Covers(Limb limb) => limb.SideSign() == 0;

    public override IEnumerable<Piece> Draw(Limb sleeve)
    {
        int side = sleeve.SideSign();
        double radius = Math.Max(sleeve.SizeMm / 2, 0.55 * sleeve.Fly.WireMm);
        double z = side * (sleeve.Fly.SeatMm(sleeve.Index, (sleeve.FrontMm + sleeve.RearMm) / 2) + radius);
        Lathe shape = new(sleeve.View, sleeve.Place(sleeve.FrontMm, 0, z), Vector3D.UnitX, [.. Profile(sleeve, radius)]);
        (Tone tone, Action<Ink> finish) = Finish(sleeve, shape, radius);
        bool clear = IsClear || tone == Tone.Resin;
        // A body lies round what it was wound on: nearer the onlooker than the shank, farther than a wing tied in over it.
        double depth = sleeve.View.Depth(sleeve.Place((sleeve.FrontMm + sleeve.RearMm) / 2, 0, z)) + 0.21;
        yield return new Piece(depth, sleeve.Name, shape.Outline, ink =>
        {
            ink.Wash(shape.OutlinePath(), tone, clear ? 0.55 : 1);
            ink.Wash(shape.Shadow(-0.15), Tone.Shade, clear ? 0.06 : 0.1);
            ink.Wash(shape.Shadow(0.2), Tone.Shade, clear ? 0.08 : 0.14);
            finish(ink);
        });
    }

    private IEnumerable<(double, double)> Profile(Limb sleeve, double radius)
    {
        (double front, double rear, double power) = Ends(sleeve.Material);
        for (int i = 0; i <= 16; i++)
        {
            double t = i / 16.0, end = t < 0.42 ? front : rear, away = t < 0.42 ? (0.42 - t) / 0.42 : (t - 0.42) / 0.58;
            yield return (t * sleeve.LengthMm, radius * (1 - (1 - end) * Math.Pow(away, power)));
        }
    }

    private (Tone, Action<Ink>) Finish(Limb sleeve, Lathe shape, double radius)
    {
        Seeded chance = sleeve.Chance("finish");
        if (IsClear || Tone.Of(sleeve.Material) == Tone.Resin)
        {
            return (Tone.Resin, ink =>
            {
                ink.Wash(Streak(sleeve, shape), Tone.Gleam, 0.9);
                ink.Line(shape.OutlinePath(), 0.9);
            }
            );
        }

        switch (sleeve.Material)
        {
            case "closed-cell foam" or "cork" or "balsa":
                return (Tone.Of(sleeve.Material), ink =>
                {
                    ink.Hatch(Pores(sleeve, shape, chance), 0.55, 0.7);
                    ink.Hatch(shape.Rings(3 * ink.PenMm, -0.25, chance), 0.45);
                    ink.Line(shape.OutlinePath(), 1);
                }
                );
            case "floss" or "tinsel" or "nylon wire" or "plastic":
                Tone smooth = sleeve.Material == "floss" ? sleeve.Fly.Dye(0) : Tone.Of(sleeve.Material);
                return (smooth, ink =>
                {
                    ink.Hatch(shape.Rings(Math.Max(2.6 * ink.PenMm, sleeve.Material == "tinsel" ? 0.8 : 0.45), 2, chance), 0.5, 0.55);
                    ink.Hatch(shape.Rings(2.2 * ink.PenMm, -0.2, chance), 0.5);
                    ink.Wash(Streak(sleeve, shape), Tone.Gleam, sleeve.Material == "floss" ? 0.35 : 0.75);
                    ink.Line(shape.OutlinePath(), 0.9);
                }
                );
            default:
                return (sleeve.Fly.Dye(0), ink => Fuzz(ink, sleeve, shape, radius, chance));
        }
    }

    // Short curling strokes over the surface, combed aft; those at the rim stand clear of it and make the outline.
    private static void Fuzz(Ink ink, Limb sleeve, Lathe shape, double radius, Seeded chance)
    {
        bool tufted = sleeve.Material is "chenille" or "deer hair";
        double reach = (sleeve.Material switch { "chenille" => 0.3, "deer hair" => 0.26, "wool" => 0.24, _ => 0.4 }) * radius;
        double comb = tufted ? 0.25 : 0.95;
        int count = (int)Math.Clamp(sleeve.LengthMm * radius / (ink.PenMm * ink.PenMm) / 9, 260, 620);
        PathText dark = new(), tinted = new(), light = new();
        for (int i = 0; i < count; i++)
        {
            (Vector3D place, Vector3D normal) = shape.Surface(chance.Next() * sleeve.LengthMm, chance.Next() * 2 * Math.PI);
            double length = reach * chance.Between(0.4, 1.3), swirl = chance.Between(-0.6, 0.6), lift = chance.Between(0.2, 1), pick = chance.Next();
            double seen = Vector3D.Dot(normal, sleeve.View.Toward);
            if (seen < -0.2)
                continue;
            Vector3D over = Vector3D.Cross(Vector3D.UnitX, normal);
            Vector3D tip = place + length * (comb * Vector3D.UnitX + lift * normal + swirl * over).Normalized();
            Vector3D mid = place + 0.55 * length * (0.3 * comb * Vector3D.UnitX + normal).Normalized();
            double lit = Vector3D.Dot(normal, sleeve.View.Light);
            // The rim stands out in ink and tint alike; on the surface the lamp decides.
            PathText into = seen < 0.3 ? (pick < 0.6 ? dark : tinted) : pick < 0.25 + 0.55 * (0.45 - lit) ? dark : pick < 0.8 ? tinted : light;
            into.Move(sleeve.View.At(place)).Cubic(sleeve.View.At(mid), sleeve.View.At(mid), sleeve.View.At(tip));
        }

        ink.Brush(tinted, sleeve.Fly.Dye(0), 0.9 * ink.PenMm);
        ink.Brush(light, Tone.Gleam, 0.45 * ink.PenMm, 0.55);
        ink.Line(dark, 0.42, 0.85);
    }

    private static PathText Pores(Limb sleeve, Lathe shape, Seeded chance)
    {
        PathText path = new();
        int count = (int)Math.Clamp(sleeve.LengthMm * sleeve.SizeMm * 1.6, 20, 120);
        bool grain = sleeve.Material == "balsa";
        for (int i = 0; i < count; i++)
        {
            (Vector3D place, Vector3D normal) = shape.Surface(chance.Between(0.03, 0.97) * sleeve.LengthMm, chance.Next() * 2 * Math.PI);
            if (Vector3D.Dot(normal, sleeve.View.Toward) < 0.2)
                continue;
            double half = grain ? chance.Between(0.3, 0.9) : chance.Between(0.03, 0.12);
            Point at = sleeve.View.At(place), along = sleeve.View.Along(half * Vector3D.UnitX);
            if (grain)
                path.Move(at - along).Line(at + along);
            else
                path.Move(at + new Point(-half, 0)).Cubic(at + new Point(-half, half * 1.3), at + new Point(half, half * 1.3), at + new Point(half, 0));
        }

        return path;
    }

    private static PathText Streak(Limb sleeve, Lathe shape)
    {
        Vector3D half = (sleeve.View.Light + sleeve.View.Toward).Normalized(), outward = new(0, half.Y, half.Z);
        if (outward.Length < 0.3)
            return new PathText();
        outward = outward.Normalized();
        Point At(double share, double turn)
        {
            Vector3D o = outward.RotatedAbout(Vector3D.UnitX, turn);
            Vector3D middle = (shape.Surface(share * sleeve.LengthMm, 0).Place + shape.Surface(share * sleeve.LengthMm, Math.PI).Place) / 2;
            double r = (shape.Surface(share * sleeve.LengthMm, 0).Place - middle).Length;
            return sleeve.View.At(middle + r * o);
        }

        return new PathText().Smooth([At(0.18, 0), At(0.45, 0.09), At(0.8, 0.02), At(0.45, -0.07)], closed: true);
    }
}
