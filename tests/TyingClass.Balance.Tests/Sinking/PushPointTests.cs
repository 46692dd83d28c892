using TyingClass.Balance.Bodies;
using TyingClass.Balance.Geometry;
using TyingClass.Balance.Sinking;
using Xunit;

namespace TyingClass.Balance.Tests.Sinking;

public sealed class PushPointTests
{
    private const double LengthM = 0.02;

    // Two like balls far apart, one of lead and one of glass: the water pushes on both alike, so its push acts halfway.
    [Theory]
    [InlineData(Intent.PointDown)]
    [InlineData(Intent.PointUp)]
    public void BehindFront_TwoLikeBalls_IsHalfwayWhateverTheyWeigh(Intent intent)
    {
        double? push = PushPoint.BehindFrontM(Body(Ball(0, 11_340), Ball(LengthM, 2500)), Conditions, intent);

        Assert.Equal(LengthM / 2, push!.Value, 1e-9);
    }

    // A thin rod of steel lies broadside: by symmetry the push acts at its middle.
    [Fact]
    public void BehindFront_RodWithItsWeightAtOneEnd_IsItsMiddle()
    {
        BodyPart rod = new("rod")
        {
            Masses = [new(2e-4, new Vector3D(0.003, 0, 0))],
            Drag = [DragElement.Cylinder(new Vector3D(LengthM / 2, 0, 0), Vector3D.UnitX, LengthM, 1e-3, 0)],
        };

        Assert.Equal(LengthM / 2, PushPoint.BehindFrontM(Body(rod), Conditions, Intent.PointDown)!.Value, 1e-9);
    }

    // Arms in balance about the middle: a ball twice as wide has at first four times the area, so the push lies on its side of the middle.
    [Fact]
    public void BehindFront_AWiderBallBehind_MovesItBack() =>
        Assert.InRange(PushPoint.BehindFrontM(Body(Ball(0, 9000), Ball(LengthM, 9000, 6e-3)), Conditions, Intent.PointDown)!.Value, 0.7 * LengthM, LengthM);

    [Fact]
    public void BehindFront_AFlyThatFloats_HasNone() => Assert.Null(PushPoint.BehindFrontM(Body(Ball(0, 300)), Conditions, Intent.PointDown));

    private static FishingConditions Conditions => new(new(998.2041, 1001.57e-6), new(0.2e-3, 2.5e9, 1140), Knot.Loop, 0.5);

    private static FlyBody Body(params BodyPart[] parts) => new([.. parts], default, LengthM, Intent.PointDown);

    private static BodyPart Ball(double atM, double densityKgM3, double diameterM = 3e-3)
    {
        double volume = Math.PI / 6 * diameterM * diameterM * diameterM;
        Vector3D at = new(atM, 0, 0);
        return new BodyPart("ball")
        {
            Masses = [new(densityKgM3 * volume, at)],
            Solids = [new(volume, at)],
            Drag = [DragElement.Sphere(at, diameterM)],
        };
    }
}
