using TyingClass.Balance.Geometry;
using TyingClass.Drawing.Flies;
using TyingClass.Drawing.Geometry;
using TyingClass.Drawing.Tests.Support;
using TyingClass.Recipes.Reports;
using Xunit;

namespace TyingClass.Drawing.Tests.Flies;

public sealed class StripArtTests
{
    // On the side of the point the strip has to pass the bend; there the hide is slit. On the other side it passes over.
    [Theory]
    [InlineData(-1, true)]
    [InlineData(1, false)]
    public void Slit_IsWhereTheStripMeetsTheBend(int side, bool slit)
    {
        SolvedFly fly = Samples.Named("Copper Loach");
        Anatomy anatomy = new(fly, new View(Pose.Vise, fly.Report.TowPointMm, Facing.Side), Vector3D.UnitX);
        double rear = 1e3 * anatomy.Hook.ShankM;
        Sweep strip = Straight(new Vector3D(rear - 8, 0, 0.6 * side), new Vector3D(rear + 25, 0, 6 * side));

        (double T, int Bend)? found = StripArt.Slit(anatomy.Limbs[0], strip);

        Assert.Equal(slit, found is not null);
        if (found is { } at)
            Assert.InRange((strip.At(at.T) - HookArt.Bend(anatomy.Hook).ElementAt(at.Bend)).Length, 0, 1.2 * anatomy.WireMm);
    }

    // A strip that ends before the bend covers nothing, and is not slit.
    [Fact]
    public void Slit_OfAShortStrip_IsNone()
    {
        SolvedFly fly = Samples.Named("Copper Loach");
        Anatomy anatomy = new(fly, new View(Pose.Vise, fly.Report.TowPointMm, Facing.Side), Vector3D.UnitX);

        Assert.Null(StripArt.Slit(anatomy.Limbs[0], Straight(new Vector3D(2, 0, -0.6), new Vector3D(6, 0, -1))));
    }

    private static Sweep Straight(Vector3D from, Vector3D to) => new(from, from + (1.0 / 3) * (to - from), from + (2.0 / 3) * (to - from), to);
}
