using TyingClass.Balance.Bodies;
using TyingClass.Balance.Fluid;
using TyingClass.Balance.Geometry;

namespace TyingClass.Balance.Tests.Flies;

/// <summary>Flies thrown together from elements, with no regard for the recipe builders.</summary>
internal static class RandomBodies
{
    // Fresh by Kell 1975 and IAPWS, then sea water, 35 g/kg, by EOS-80 and Sharqawy 2010.
    private static readonly Water[] Waters =
    [
        new(999.9638, 1518.20e-6), new(999.0996, 1137.55e-6), new(998.2041, 1001.57e-6), new(995.6473, 797.21e-6),
        new(1027.67547, 1619.30e-6), new(1024.76300, 1076.63e-6),
    ];

    public static (FlyBody Body, FishingConditions Conditions) Fly(int seed, bool mirrored = false)
    {
        Random r = new(seed);
        double shank = Between(r, 8e-3, 36e-3), gape = Between(r, 4e-3, 12e-3), wire = Between(r, 0.4e-3, 1.1e-3);
        Vector3D tow = new(Between(r, -3e-3, -0.5e-3), 0, Between(r, -4e-3, 2e-3));
        List<BodyPart> parts = [Hook(shank, gape, wire, tow) with { IsTied = false }];
        double aside() => mirrored || r.NextDouble() < 0.6 ? 0 : Between(r, -1.5e-3, 1.5e-3);
        if (r.NextDouble() < 0.6) parts.Add(Bead(r, shank, aside()));
        if (r.NextDouble() < 0.5) parts.Add(Eyes(r, shank, aside()));
        if (r.NextDouble() < 0.7) parts.Add(Sleeve(r, shank));
        if (r.NextDouble() < 0.9) parts.Add(Wing(r, shank, aside()));
        parts = [.. parts.Select(p => Askew(p, seed))];
        Knot knot = r.NextDouble() < 0.5 ? Knot.Loop : Knot.Cinched;
        Leader leader = new(Between(r, 0.12e-3, 0.45e-3), Between(r, 2e9, 3.5e9), Between(r, 1140, 1780));
        Intent intent = r.NextDouble() < 0.5 ? Intent.PointDown : Intent.PointUp;
        return (
            new FlyBody([.. parts], tow, shank, intent),
            new FishingConditions(Waters[r.Next(Waters.Length)], leader, knot, Between(r, 0.1, 1.5)));
    }

    // Half of the sleeves and wings push water aside, each with a share of its own; a quarter of the wings are plates. A stream of its own, so that the
    // flies stay
    // what they were before there were side forces.
    private static BodyPart Askew(BodyPart part, int seed)
    {
        if (part.Name is not ("body" or "wing") || part.Drag.All(d => d.Shape != DragShape.Cylinder || d.LengthM == 0)) return part;
        Random r = new(seed ^ part.Name.Length << 20);
        DragElement[] rods = [.. part.Drag.Where(d => d.Shape == DragShape.Cylinder)];
        Vector3D axis = rods[0].Axis, from = rods[0].PositionM - rods[0].LengthM / 2 * axis, to = rods[^1].PositionM + rods[^1].LengthM / 2 * axis;
        double length = (to - from).Length, kind = r.NextDouble();
        if (kind < 0.4 || length == 0) return part;
        if (part.Name == "wing" && kind < 0.6)
        {
            Vector3D normal = r.NextDouble() < 0.5 ? Vector3D.UnitY : Vector3D.Cross(axis, Vector3D.UnitY);
            return part with { SideForces = [SideForceElement.Plate((from + to) / 2, axis, normal, length, Between(r, 1e-3, 8e-3), PlateLaw.Usual)] };
        }

        return part with
        {
            SideForces = [.. SideForceElement.Rod(from, to, rods[0].DiameterM, length / rods[0].DiameterM, Between(r, 0.3, 1), Between(r, 0, 1))],
        };
    }

    private static double Between(Random r, double low, double high) => low + (high - low) * r.NextDouble();

    private static Vector3D At(double x, double y, double z) => new(x, y, z);

    private static BodyPart Hook(double shank, double gape, double wire, Vector3D tow)
    {
        List<Vector3D> path = [tow, Vector3D.Zero, At(shank / 2, 0, 0), At(shank, 0, 0)];
        for (int i = 1; i <= 6; i++)
        {
            double t = Math.PI * i / 6;
            path.Add(At(shank + gape / 2 * Math.Sin(t), 0, -gape / 2 * (1 - Math.Cos(t))));
        }

        path.Add(At(shank * 0.6, 0, -gape));
        return Rod("hook", path, wire, 7850);
    }

    private static BodyPart Rod(string name, List<Vector3D> path, double diameter, double density)
    {
        double total = path.Zip(path.Skip(1), (a, b) => (b - a).Length).Sum();
        BodyPart part = new(name);
        foreach ((Vector3D a, Vector3D b) in path.Zip(path.Skip(1)))
        {
            double length = (b - a).Length, volume = Math.PI / 4 * diameter * diameter * length;
            Vector3D mid = 0.5 * (a + b), half = 0.25 * (b - a);
            part = part with
            {
                Masses = part.Masses.AddRange(new MassElement(density * volume / 2, mid - half), new MassElement(density * volume / 2, mid + half)),
                Solids = part.Solids.Add(new VolumeElement(volume, mid)),
                Drag = part.Drag.Add(DragElement.Cylinder(mid, b - a, length, diameter, 0, total / diameter)),
            };
        }

        return part;
    }

    private static BodyPart Bead(Random r, double shank, double y) =>
        Ball("bead", At(Between(r, 0, 0.3) * shank, y, Between(r, -1e-3, 1e-3)), Between(r, 2e-3, 4.8e-3), r.NextDouble() < 0.5 ? 8520 : 17800);

    private static BodyPart Ball(string name, Vector3D at, double d, double density)
    {
        double volume = Math.PI / 6 * d * d * d;
        return new BodyPart(name)
        {
            Masses = [new(density * volume, at)],
            Solids = [new(volume, at)],
            Drag = [DragElement.Sphere(at, d)],
        };
    }

    private static BodyPart Eyes(Random r, double shank, double y)
    {
        double d = Between(r, 2e-3, 6e-3), x = Between(r, 0.1, 0.4) * shank, z = Between(r, 0, 3e-3), half = d / 2 + 1e-3;
        BodyPart right = Ball("eyes", At(x, y + half, z), d, 11340), left = Ball("eyes", At(x, y - half, z), d, 11340);
        return right with { Masses = right.Masses.AddRange(left.Masses), Solids = right.Solids.AddRange(left.Solids), Drag = right.Drag.AddRange(left.Drag) };
    }

    private static BodyPart Sleeve(Random r, double shank)
    {
        double d = Between(r, 1.5e-3, 6e-3), from = 0.2 * shank, to = 0.95 * shank, voids = Between(r, 0.5, 0.9);
        List<Vector3D> path = [At(from, 0, 0), At(0.5 * (from + to), 0, 0), At(to, 0, 0)];
        BodyPart rod = Rod("body", path, d, 1310);
        double blunt = r.NextDouble();
        DragElement front = rod.Drag[0];
        return rod with
        {
            Masses = [.. rod.Masses.Select(m => m with { MassKg = (1 - voids) * m.MassKg })],
            Solids = [.. rod.Solids.Select(v => v with { VolumeM3 = (1 - voids) * v.VolumeM3 })],
            Air = [.. rod.Solids.Select(v => new AirElement(0.3 * r.NextDouble() * voids * v.VolumeM3, Between(r, 5, 60), v.PositionM))],
            Drag = rod.Drag.SetItem(0, DragElement.Cylinder(front.PositionM, front.Axis, front.LengthM, d, blunt, front.SlendernessRatio)),
        };
    }

    private static BodyPart Wing(Random r, double shank, double y)
    {
        double side = r.NextDouble() < 0.5 ? 1 : -1, length = Between(r, 0.8, 2.2) * shank, mass = Between(r, 5e-6, 60e-6), supple = r.NextDouble();
        Vector3D tie = At(Between(r, 0.05, 0.3) * shank, y, side * 1e-3);
        Vector3D axis = At(1, 0, side * Between(r, 0, 0.3)).Normalized();
        BodyPart part = new("wing") { Drag = [DragElement.Streamer(tie, supple * Between(r, 1e-5, 1.5e-4))] };
        for (int i = 0; i < 4; i++)
        {
            Vector3D at = tie + (1 - supple) * length * (i + 0.5) / 4 * axis;
            part = part with
            {
                Masses = part.Masses.Add(new(mass / 4, at)),
                Solids = part.Solids.Add(new(mass / 4 / 1310, at)),
                Air = part.Air.Add(new(0.8e-3 * Between(r, 0, 1) * mass / 4, r.NextDouble() < 0.1 ? double.PositiveInfinity : Between(r, 10, 120), at)),
                Drag = part.Drag.Add(DragElement.Cylinder(at, axis, (1 - supple) * length / 4, Between(r, 0.5e-3, 2.5e-3), 0, 20)),
            };
        }

        return part;
    }
}
