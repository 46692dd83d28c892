using System.Collections.Immutable;
using TyingClass.Balance.Geometry;
using TyingClass.Drawing.Geometry;
using TyingClass.Drawing.Svg;
using TyingClass.Recipes.Bodies;
using TyingClass.Recipes.Catalogue;
using TyingClass.Recipes.Model;
using TyingClass.Recipes.Parts;
using TyingClass.Recipes.Reports;

namespace TyingClass.Drawing.Flies;

/// <summary>One part as the artist sees it, mm in the hook frame.</summary>
internal sealed class Limb(Anatomy fly, int index, PartSpec spec, string name, PartDimensions dimensions)
{
    public Anatomy Fly => fly;

    public View View => fly.View;

    public int Index => index;

    public PartSpec Spec => spec;

    public string Name => name;

    public PartDimensions Dimensions => dimensions;

    public PartArt Art { get; } = PartArt.Of(spec.Kind);

    public double FrontMm { get; } = dimensions.FrontM * 1e3;

    public double RearMm { get; } = dimensions.RearM * 1e3;

    public double SizeMm { get; } = dimensions.SizeM * 1e3;

    public double LengthMm { get; } = dimensions.LengthM * 1e3;

    public int Turns => dimensions.Turns;

    public string Material { get; } = spec.Material?.Trim().ToLowerInvariant() ?? KindsOfPart.Of(spec).UsualMaterial;

    public double Suppleness { get; } = Materials.TryFind(spec.Material ?? KindsOfPart.Of(spec).UsualMaterial, out Material? m) ? m.Suppleness.Value : 0;

    /// <summary>+1 on top of the shank as clamped, -1 under it, 0 around it.</summary>
    public int SideSign() => (spec.Side ?? KindsOfPart.Of(spec).UsualSide) switch { Side.Top => 1, Side.Under => -1, _ => 0 };

    /// <summary>Where a point of the part stands once its tying errors are put in.</summary>
    public Vector3D Place(double x, double y, double z) =>
        new Vector3D(x, y, z).RotatedAbout(Vector3D.UnitX, spec.ClockedRad) + new Vector3D(0, PartExtents.SideOffsetM(spec, fly.Hook) * 1e3, 0);

    public Vector3D Direct(Vector3D direction) => direction.RotatedAbout(Vector3D.UnitX, spec.ClockedRad);

    public Seeded Chance(string what) => new($"{fly.Seed}/{index}/{what}");
}

/// <summary>A fly measured for drawing, seen from one place.</summary>
internal sealed class Anatomy
{
    public Anatomy(SolvedFly fly, View view, Vector3D trail)
    {
        (View, Trail) = (view, view.Pose.ToHook(trail));
        Hook = fly.Built.Hook;
        Seed = fly.Recipe.Name;
        ImmutableArray<string> names = FlyBuilder.Names(fly.Recipe.Parts);
        Limbs = [.. fly.Recipe.Parts.Select((p, i) => new Limb(this, i, p, names[i], PartDimensions.Of(p, fly.Built.Hook)))];
    }

    public View View { get; }

    /// <summary>Where supple stuff streams to, unit vector in the hook frame.</summary>
    public Vector3D Trail { get; }

    public ResolvedHook Hook { get; }

    public string Seed { get; }

    public ImmutableArray<Limb> Limbs { get; }

    public double WireMm => Hook.WireM * 1e3;

    /// <summary>Two of the dyes, the same for every picture of a recipe.</summary>
    public Tone Dye(int number)
    {
        int start = (int)(new Seeded(Seed + "/dye").Next() * 1000);
        return Tone.Dye(start + number * 2);
    }

    /// <summary>Radius of what is already on the shank at a place, for a part tied on after it.</summary>
    public double SeatMm(int before, double x) => Limbs.Take(before).Where(l => x >= l.FrontMm - 0.01 && x <= l.RearMm + 0.01)
        .Select(OuterMm).OfType<double>().Append(WireMm).Max() / 2;

    /// <summary>Radius of all that surrounds the shank at a place.</summary>
    public double GirthMm(double x) => SeatMm(Limbs.Length, x);

    /// <summary>Diameter of what wraps are wound on: the shank, or earlier wraps.</summary>
    public double CoreMm(Limb wraps) => Limbs.Take(wraps.Index).Where(l => l.Art.IsWound && l.FrontMm < wraps.RearMm - 1e-6 && l.RearMm > wraps.FrontMm + 1e-6)
        .Select(OuterMm).OfType<double>().Append(WireMm).Max();

    private static double? OuterMm(Limb l) => l.Art.GirthMm(l);
}
