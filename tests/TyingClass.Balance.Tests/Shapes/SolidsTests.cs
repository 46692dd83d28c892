using TyingClass.Balance.Shapes;
using Xunit;

namespace TyingClass.Balance.Tests.Shapes;

/// <summary>Against the volumes, centroids and moments of inertia of engineering handbooks.</summary>
public sealed class SolidsTests
{
    // 4/3 π 1.5³ = 14.13717.
    [Fact]
    public void SphereVolume_DiameterThree_MatchesHandbook() => Assert.Equal(14.13717, Spheres.VolumeM3(3), 1e-5);

    // The napkin ring: any ball bored to a length of 6 keeps the volume of a ball 6 across, 36 π = 113.0973.
    [Theory]
    [InlineData(6, 0)]
    [InlineData(10, 8)]
    [InlineData(6.5, 2.5)]
    public void BoredSphereVolume_BoredToLengthSix_IsThatOfBallSixAcross(double diameterM, double boreM)
    {
        Assert.Equal(6, BoredSphere.LengthM(diameterM, boreM), 1e-9);
        Assert.Equal(113.0973, BoredSphere.VolumeM3(diameterM, boreM), 1e-4);
    }

    // Solid ball: inertia 2/5 m r², so each axis carries r²/5.
    [Fact]
    public void BoredSphereSpread_NoBore_IsSolidBalls()
    {
        Spread spread = BoredSphere.SpreadOf(2, 0);

        Assert.Equal(0.2, spread.AlongM2, 1e-12);
        Assert.Equal(0.2, spread.AcrossM2, 1e-12);
    }

    // Cone, apex forward: volume π R² h/3, centroid h/4 from the base, inertia 3/10 m R² about its axis (3R²/20 on each axis across)
    // and 3/80 m h² along, about the centroid. R = 1, h = 4: 4.18879, 3 from the apex, 0.15, 0.6.
    [Fact]
    public void BoredFrustum_SharpCone_MatchesHandbook()
    {
        BoredFrustum cone = new(0, 2, 4, 0);

        Assert.Equal(4.18879, cone.VolumeM3, 1e-5);
        Assert.Equal(3, cone.CentroidM, 1e-12);
        Assert.Equal(0.15, cone.SpreadM2.AcrossM2, 1e-12);
        Assert.Equal(0.6, cone.SpreadM2.AlongM2, 1e-12);
    }

    // Handbook frustum, R = 2 and 1, h = 3: volume 7 π = 21.99115; centroid from the wide base h (R² + 2Rr + 3r²)/(4 (R² + Rr + r²)) = 3 · 11/28 = 1.178571.
    [Fact]
    public void BoredFrustum_Frustum_MatchesHandbook()
    {
        BoredFrustum frustum = new(2, 4, 3, 0);

        Assert.Equal(21.99115, frustum.VolumeM3, 1e-5);
        Assert.Equal(3 - 1.178571, frustum.CentroidM, 1e-6);
    }

    // Side view: a trapezoid; its centroid from the wide side h (a + 2 b)/(3 (a + b)), a = 4, b = 2, h = 3: 1.333333.
    [Fact]
    public void SideCentroid_Frustum_IsTrapezoids() => Assert.Equal(3 - 1.333333, new BoredFrustum(2, 4, 3, 0).SideCentroidM, 1e-6);

    // A frustum with equal ends is a tube: π (4 - 1) · 5 = 47.12389; inertia of a tube m (R² + r²)/2 about its axis, so (4 + 1)/4 across; m l²/12 along.
    [Fact]
    public void BoredFrustum_EqualEnds_IsTube()
    {
        BoredFrustum tube = new(4, 4, 5, 2);
        Spread spread = Cylinders.SpreadOf(4, 5, 2);

        Assert.Equal(47.12389, tube.VolumeM3, 1e-5);
        Assert.Equal(47.12389, Cylinders.VolumeM3(4, 5, 2), 1e-5);
        Assert.Equal(2.5, tube.CentroidM, 1e-12);
        Assert.Equal(1.25, tube.SpreadM2.AcrossM2, 1e-12);
        Assert.Equal(1.25, spread.AcrossM2, 1e-12);
        Assert.Equal(25.0 / 12, spread.AlongM2, 1e-12);
        Assert.Equal(25.0 / 12, tube.SpreadM2.AlongM2, 1e-12);
    }

    // Inertia m (R² + 3r²/4) about its axis (from memory, any engineering handbook): R = 3, r = 1.
    [Fact]
    public void Torus_RadiusThree_MatchesHandbook()
    {
        Assert.Equal(9.75, 2 * Torus.SpreadOf(3, 1).AcrossM2, 1e-12);
    }

    // One turn of radius 2 rising 3: √((4π)² + 9) = √166.9137 = 12.91951.
    [Fact]
    public void HelixTurnLength_RadiusTwoPitchThree_IsPythagoras() => Assert.Equal(12.91951, Helix.TurnLengthM(2, 3), 1e-5);

    // Drawn out evenly along its axis by a length of 12, whatever its rings: 12²/12 more along, nothing more across.
    [Fact]
    public void HelixSpread_DrawnOut_AddsThatOfARod()
    {
        Spread flat = Helix.SpreadOf(3, 0, 1), drawn = Helix.SpreadOf(3, 12, 1);
        Assert.Equal(12, drawn.AlongM2 - flat.AlongM2, 1e-12);
        Assert.Equal(flat.AcrossM2, drawn.AcrossM2, 1e-12);
    }

    [Fact]
    public void BoredFrustum_Bore_IsItsDiameter() => Assert.Equal(2, new BoredFrustum(4, 4, 5, 2).BoreM, 1e-12);

    [Fact]
    public void BoredFrustum_BoreWiderThanNose_Throws() =>
        Assert.Throws<ArgumentOutOfRangeException>(() => new BoredFrustum(1, 2, 3, 1.5));
}
