using TyingClass.Balance.Bodies;
using TyingClass.Balance.Geometry;
using TyingClass.Drawing.Flies;
using TyingClass.Drawing.Geometry;
using Xunit;

namespace TyingClass.Drawing.Tests.Geometry;

public sealed class LatheTests
{
    [Theory, InlineData(0, 0), InlineData(40, 10), InlineData(-80, 170)]
    public void Outline_Ball_IsItsDiameterFromAnywhere(double pitchDeg, double leanDeg)
    {
        View view = new(Pose.Towed(pitchDeg, leanDeg, Intent.PointDown), Vector3D.Zero, Facing.Side);
        Lathe ball = new(view, new Vector3D(3, 0, 0), Vector3D.UnitX, Lathe.Ball(4, 0));
        Point center = view.At(new Vector3D(5, 0, 0));
        Assert.All(ball.Outline, p => Assert.Equal(2, (p - center).Length, 0.06));
        Assert.True(ball.Outline.Max(p => p.X) - ball.Outline.Min(p => p.X) > 3.9);
    }

    [Fact]
    public void Outline_ConeSeenSquareOn_IsItsSideView()
    {
        View view = new(Pose.Vise, Vector3D.Zero, Facing.Side);
        Lathe cone = new(view, Vector3D.Zero, Vector3D.UnitX, (0, 1), (4, 3));
        Assert.Equal(4, cone.Outline.Max(p => p.X), 1e-6);
        Assert.Equal(3, cone.Outline.Max(p => p.Y), 0.02);
        Assert.Equal(1, cone.Outline.Where(p => p.X < 1e-6).Max(p => p.Y), 0.02);
    }

    [Fact]
    public void Face_OnlyTheEndTowardTheOnlooker_IsSeen()
    {
        View ahead = new(Pose.Vise, Vector3D.Zero, Facing.Front);
        Lathe cone = new(ahead, Vector3D.Zero, Vector3D.UnitX, (0, 1), (4, 3));
        Assert.NotNull(cone.Face(front: true, 1));
        Assert.Null(cone.Face(front: false, 3));
    }
}
