using TyingClass.Balance.Bodies;
using TyingClass.Balance.Fluid;
using TyingClass.Balance.Geometry;
using TyingClass.Balance.Towing;
using Xunit;

namespace TyingClass.Balance.Tests.SideForce;

/// <summary>Round bodies in an ideal fluid, where the answer is known without slices.</summary>
public sealed class RoundBodyTests
{
    private static readonly Water Fresh = new(998.2041, 1001.57e-6);

    // Kirchhoff: the water's impulse is A w, A = ρV diag(k₁, k₂, k₂), and the moment on the body (A w) × w, whatever its slices do. The engine's law carries
    // Allen and Perkins's cos(α/2) for real bodies, 1 - α²/8: hence the tolerance.
    [Theory]
    [InlineData(1.2)]
    [InlineData(2)]
    [InlineData(5)]
    [InlineData(0.4)]
    public void At_SealedEllipsoid_TurnsAsKirchhoffSays(double slenderness)
    {
        const double radius = 2e-3, speed = 0.7;
        double volume = 4.0 / 3 * Math.PI * radius * radius * radius * slenderness;
        (double endOn, double broadside) = Ellipsoid.Inertia(slenderness);
        BodyPart body = Revolved(slenderness * 2 * radius, 2 * radius, x => radius * Math.Sqrt(Math.Max(0, 1 - x * x)), 1);
        foreach (double deg in new[] { 0.5, 5, 12, 20, 160, 179.5, 185 })
        {
            double alpha = deg * Math.PI / 180, nearest = Math.Min(alpha % Math.PI, Math.PI - alpha % Math.PI);
            Vector3D w = speed * new Vector3D(Math.Cos(alpha), 0.6 * Math.Sin(alpha), 0.8 * Math.Sin(alpha));
            Vector3D impulse = Fresh.DensityKgM3 * volume * new Vector3D(endOn * w.X, broadside * w.Y, broadside * w.Z);
            Vector3D expected = Vector3D.Cross(impulse, w);
            Wrench at = new DragField([body], Fresh, default).At(w);
            Assert.True((expected - at.MomentNM).Length < (1e-3 + nearest * nearest / 7.9) * expected.Length, $"{deg}°: {at.MomentNM} against {expected}");
            // D'Alembert: a couple and no force, as long as nothing parts from the rear.
            Assert.True(at.ForceN.Length * radius < 1e-9 * expected.Length / Math.Max(1e-3, nearest));
        }
    }

    [Fact]
    public void At_Ball_HasNone()
    {
        BodyPart ball = Revolved(4e-3, 4e-3, x => 2e-3 * Math.Sqrt(Math.Max(0, 1 - x * x)), 0.4);
        Wrench at = new DragField([ball], Fresh, default).At(new Vector3D(0.3, 0.2, 0.4));
        Assert.Equal(0, at.ForceN.Length, 1e-15);
        Assert.Equal(0, at.MomentNM.Length, 1e-15);
    }

    // Slender pointed nose: normal force 2 per radian on its base area (Munk, NACA Rep. 184, 1924). 40 widths long it is slender to 1 %.
    [Theory]
    [InlineData(0.5)]
    [InlineData(2)]
    public void At_SlenderNose_HasSlopeTwoOnItsBase(double deg)
    {
        const double length = 0.08, width = 2e-3, speed = 1;
        BodyPart nose = Revolved(length, width, x => (1 + x) / 2 * width / 2, 0.4);
        double alpha = deg * Math.PI / 180;
        double force = new DragField([nose], Fresh, default).At(speed * new Vector3D(Math.Cos(alpha), 0, Math.Sin(alpha))).ForceN.Z;
        double baseM2 = Math.PI / 4 * width * width, coefficient = force / (0.5 * Fresh.DensityKgM3 * speed * speed * baseM2);
        Assert.Equal(2, coefficient / alpha, 0.04);
    }

    // In still water nothing pushes a body along: whatever the water does to it takes energy from it.
    [Fact]
    public void At_ClosedBodies_NeverGiveEnergy()
    {
        Random random = new(5);
        for (int i = 0; i < 500; i++)
        {
            double width = 1e-3 + 5e-3 * random.NextDouble(), length = width * (0.2 + 8 * random.NextDouble() * random.NextDouble());
            BodyPart rod = new("rod")
            {
                SideForces = [.. SideForceElement.Rod(default, new Vector3D(length, 0, 0), width, length / width, random.NextDouble(), random.NextDouble())],
            };
            Vector3D w = new(random.NextDouble() - 0.5, random.NextDouble() - 0.5, random.NextDouble() - 0.5);
            Assert.True(Vector3D.Dot(new DragField([rod], Fresh, default).At(w).ForceN, w) >= -1e-15);
        }
    }

    // A solid of revolution from -1 to 1 along its axis, cut fine; the steps of its section, scaled as the ellipsoid's of its length and width.
    private static BodyPart Revolved(double lengthM, double widthM, Func<double, double> radiusM, double rearShare)
    {
        const int cuts = 2_000;
        double share = LambInertia.SideShare(lengthM / widthM);
        List<SideForceElement> steps = [];
        for (int i = 0; i < cuts; i++)
        {
            double from = -1 + 2.0 * i / cuts, to = -1 + 2.0 * (i + 1) / cuts;
            double section = Math.PI * (Math.Pow(radiusM(to), 2) - Math.Pow(radiusM(from), 2));
            steps.Add(SideForceElement.Round(new Vector3D((from + to) / 2 * lengthM / 2, 0, 0), Vector3D.UnitX, share * section, rearShare));
        }

        return new BodyPart("body") { SideForces = [.. steps] };
    }
}
