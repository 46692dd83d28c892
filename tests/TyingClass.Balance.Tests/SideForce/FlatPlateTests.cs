using TyingClass.Balance.Bodies;
using TyingClass.Balance.Fluid;
using TyingClass.Balance.Geometry;
using TyingClass.Balance.Towing;
using Xunit;

namespace TyingClass.Balance.Tests.SideForce;

public sealed class FlatPlateTests
{
    private const double Speed = 0.8;
    private static readonly Water Fresh = new(998.2041, 1001.57e-6);

    [Theory]
    [InlineData(0.3)]
    [InlineData(1)]
    [InlineData(3)]
    public void At_AlongTheFlow_HasNoForceSquareToIt(double aspect) => Assert.Equal(0, Normal(aspect, 0), 1e-12);

    // Jones, NACA Rep. 835 (1946): slope πA/2 as the plate gets narrow.
    [Theory]
    [InlineData(0.05)]
    [InlineData(0.2)]
    public void At_NarrowPlate_LiftsAsJonesSays(double aspect) =>
        Assert.Equal(Math.PI * aspect / 2, Normal(aspect, 0.001) / (0.001 * Math.PI / 180), 0.01 * aspect);

    // At the edge of a narrow plate (Jones 1946), where it is stated on a square one, a quarter back on a wide one (thin airfoils); 1/4.25 by hand.
    [Theory]
    [InlineData(0, 0.15, 0)]
    [InlineData(1, 0.15, 0.15)]
    [InlineData(1, 0.2, 0.2)]
    [InlineData(4, 0.2, 1 / 4.25)]
    [InlineData(1e9, 0.15, 0.25)]
    public void PotentialCenter_NarrowSquareAndWide_IsAsTheoryHasIt(double aspect, double square, double center) =>
        Assert.Equal(center, FlatPlate.PotentialCenter(aspect, square), 1e-8);

    // Below stall between the potential part alone (Helmbold) and Polhamus's whole, edges with π (NASA TN D-3767, 1966).
    [Theory]
    [InlineData(0.5)]
    [InlineData(1)]
    [InlineData(2)]
    [InlineData(3)]
    public void At_BelowStall_LiesBetweenTheoryWithoutAndWithAllEdges(double aspect)
    {
        double slope = 2 * Math.PI * aspect / (2 + Math.Sqrt(4 + aspect * aspect));
        foreach (double deg in new[] { 5.0, 10, 15, 20, 25 })
        {
            (double sin, double cos) = Math.SinCos(deg * Math.PI / 180);
            Assert.InRange(Normal(aspect, deg), slope * sin * cos, slope * sin * cos + Math.PI * sin * sin);
        }
    }

    // A square plate: largest at 35° to 40°, there 1.4 to 1.5 of its value broadside (Eiffel 1910, quoted in books of wind loads; from memory).
    [Fact]
    public void At_SquarePlate_PushesHardestWellBeforeBroadside()
    {
        double[] degrees = [.. Enumerable.Range(0, 91).Select(d => (double)d)];
        double most = degrees.Max(d => Normal(1, d)), at = degrees.MaxBy(d => Normal(1, d));
        Assert.InRange(at, 33, 45);
        Assert.InRange(most / Normal(1, 90), 1.2, 1.5);
        // Past it never far from broadside.
        Assert.All(degrees.Where(d => d >= 60), d => Assert.InRange(Normal(1, d) / Normal(1, 90), 0.8, 1.1));
    }

    // Hoerner, Fluid-Dynamic Drag (1965), ch. 3: plates of aspect ratio 1 to 5 broadside, 1.17 to 1.20 (from memory).
    [Theory]
    [InlineData(1)]
    [InlineData(3)]
    public void At_Broadside_HasTheDragOfAPlate(double aspect)
    {
        Assert.InRange(Normal(aspect, 90), 1.16, 1.21);
        Wrench at = Field(aspect).At(new Vector3D(0, 0, Speed));
        Assert.Equal(0, at.MomentNM.Length, 1e-12);
    }

    // A weathercock: held at the edge that leads, a plate turns back into the flow; held at the other, it turns round.
    [Theory]
    [InlineData(0.5)]
    [InlineData(2)]
    public void Linearize_HeldAtAnEdge_IsStableInFrontOnly(double aspect)
    {
        Assert.True(Turning(aspect, front: true) < 0);
        Assert.True(Turning(aspect, front: false) > 0);
    }

    // About y, of a plate that lies flat in x-y: nose-up moment as it is turned nose up.
    private static double Turning(double aspect, bool front)
    {
        const double width = 5e-3;
        double length = width / aspect;
        BodyPart plate = new("plate") { SideForces = [SideForceElement.Plate(default, Vector3D.UnitX, Vector3D.UnitZ, length, width, PlateLaw.Usual)] };
        DragField field = new([plate], Fresh, new Vector3D(front ? -length / 2 : length / 2, 0, 0));
        TowedFly fly = new(field, 1e-6, default, 0, length);
        // Yaw keeps weight out of it: none here. A turn about y and the moment about y.
        return Vector3D.Dot(Vector3D.UnitY, fly.Linearize(Attitude.Symmetric(Intent.PointDown, 0.02), Speed).Turning * Vector3D.UnitY);
    }

    private static DragField Field(double aspect)
    {
        const double width = 5e-3;
        return new DragField(
            [new BodyPart("plate") { SideForces = [SideForceElement.Plate(default, Vector3D.UnitX, Vector3D.UnitZ, width / aspect, width, PlateLaw.Usual)] }],
            Fresh, default);
    }

    // Coefficient of the force square to the plate, on its area.
    private static double Normal(double aspect, double deg)
    {
        const double width = 5e-3;
        (double sin, double cos) = Math.SinCos(deg * Math.PI / 180);
        return Field(aspect).At(Speed * new Vector3D(cos, 0, sin)).ForceN.Z / (0.5 * Fresh.DensityKgM3 * Speed * Speed * width * width / aspect);
    }
}
