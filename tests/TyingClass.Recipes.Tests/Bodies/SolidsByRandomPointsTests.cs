using TyingClass.Balance.Bodies;
using TyingClass.Balance.Geometry;
using TyingClass.Recipes.Model;
using Xunit;
using static TyingClass.Recipes.Tests.Bodies.TestFly;

namespace TyingClass.Recipes.Tests.Bodies;

/// <summary>
/// Volume, mass center and second moments of whole parts against points thrown at random (seeded) into the outline the catalogue describes, written out here
/// afresh. In mm.
/// </summary>
public sealed class SolidsByRandomPointsTests
{
    private const int Throws = 500_000;

    [Fact]
    public void Bead_RandomPoints_Agree() => AssertAgrees(
        new PartSpec(PartKind.Bead) { SizeM = 4 * Mm },
        new(0, -2, -2), new(4, 2, 2),
        p => Sq(p.X - Math.Sqrt(16 - 1.96) / 2) + Sq(p.Y) + Sq(p.Z) < 4 && Sq(p.Y) + Sq(p.Z) > Sq(0.7));

    [Fact]
    public void Cone_RandomPoints_Agree() => AssertAgrees(
        new PartSpec(PartKind.Cone) { SizeM = 6 * Mm, LengthM = 5 * Mm, AtM = 1 * Mm },
        new(1, -3, -3), new(6, 3, 3),
        p => Sq(p.Y) + Sq(p.Z) < Sq(1.5 + 1.5 * (p.X - 1) / 5) && Sq(p.Y) + Sq(p.Z) > Sq(p.X > 6 - 0.45 * 5 ? 1.65 : 1.05));

    [Fact]
    public void DumbbellEyes_RandomPoints_Agree() => AssertAgrees(
        new PartSpec(PartKind.DumbbellEyes) { SizeM = 5 * Mm, AtM = 2 * Mm },
        new(2, -3.9, 1.375 - 2.5), new(7, 3.9, 1.375 + 2.5),
        p =>
        {
            double r = Math.Sqrt(Sq(p.X - 4.5) + Sq(p.Z - 1.375)), y = Math.Abs(p.Y);
            return y is > 2.1 and < 3.9 ? r < 2.5 : y <= 2.1 && r < 0.875;
        });

    [Fact]
    public void Body_RandomPoints_Agree() => AssertAgrees(
        new PartSpec(PartKind.Body) { Material = "uv resin", AtM = 4 * Mm, ToM = 14 * Mm, DiameterM = 6 * Mm },
        new(4, -3, -3), new(14, 3, 3),
        p => Sq(p.Y) + Sq(p.Z) < 9 && Sq(p.Y) + Sq(p.Z) > 0.25);

    // Turns along a true helix: a point is in the wire when it is within its radius of the nearest point of the helix, near enough of the turns in its own
    // half-plane.
    [Fact]
    public void Wraps_RandomPointsAlongTheHelix_Agree()
    {
        Random random = new(7);
        const double wire = 0.6, radius = 0.8;
        const int turns = 12;
        Vector3D sum = default, squares = default;
        for (int i = 0; i < Throws; i++)
        {
            double turn = turns * random.NextDouble(), phase = 2 * Math.PI * turn;
            double r = wire / 2 * Math.Sqrt(random.NextDouble()), around = 2 * Math.PI * random.NextDouble();
            // A wire wound on itself has more metal outside its center line than inside; weigh each point by its radius.
            double out1 = radius + r * Math.Cos(around), weight = out1 / radius;
            Vector3D p = new(wire * turn + r * Math.Sin(around), out1 * Math.Cos(phase), out1 * Math.Sin(phase));
            sum += weight * p;
            squares += weight * new Vector3D(p.X * p.X, p.Y * p.Y, p.Z * p.Z);
        }

        BodyPart wraps = Part(new PartSpec(PartKind.Wraps) { DiameterM = wire * Mm, Turns = turns });

        Vector3D mean = sum / Throws;
        AssertNear(mean, wraps.MassCenterMm(), 0.01);
        Vector3D spread = wraps.SpreadMm2();
        Assert.Equal(squares.X / Throws - Sq(mean.X), spread.X, 0.01 * spread.X);
        Assert.Equal(squares.Y / Throws, spread.Y, 0.01 * spread.Y);
        Assert.Equal(squares.Z / Throws, spread.Z, 0.01 * spread.Z);
    }

    private static void AssertAgrees(PartSpec spec, Vector3D low, Vector3D high, Func<Vector3D, bool> isInside)
    {
        Random random = new(41);
        Vector3D size = high - low, sum = default, squares = default;
        int inside = 0;
        for (int i = 0; i < Throws; i++)
        {
            Vector3D p = new(low.X + size.X * random.NextDouble(), low.Y + size.Y * random.NextDouble(), low.Z + size.Z * random.NextDouble());
            if (!isInside(p)) continue;
            inside++;
            sum += p;
            squares += new Vector3D(p.X * p.X, p.Y * p.Y, p.Z * p.Z);
        }

        BodyPart part = Part(spec);

        double volume = size.X * size.Y * size.Z * inside / Throws;
        Vector3D mean = sum / inside, spread = part.SpreadMm2();
        Assert.Equal(volume, part.SolidMm3(), 0.01 * volume);
        AssertNear(mean, part.MassCenterMm(), 0.02);
        AssertNear(mean, part.BuoyancyCenterMm(), 0.02);
        Assert.Equal(squares.X / inside - Sq(mean.X), spread.X, 0.01 * spread.X);
        Assert.Equal(squares.Y / inside - Sq(mean.Y), spread.Y, 0.01 * spread.Y);
        Assert.Equal(squares.Z / inside - Sq(mean.Z), spread.Z, 0.01 * spread.Z);
    }

    private static double Sq(double value) => value * value;
}
