using TyingClass.Balance.Geometry;
using Xunit;

namespace TyingClass.Balance.Tests.Geometry;

public sealed class Matrix3Tests
{
    // Eigenvalues -1, -2, -3 and others, worked by hand on triangular and block matrices.
    [Fact]
    public void LeavingRate_AllStable_IsNothing()
    {
        Matrix3 m = new(new Vector3D(-1, 4, 2), new Vector3D(0, -2, 5), new Vector3D(0, 0, -3));
        Assert.True(m.IsStable);
        Assert.Equal(0, m.LeavingRate);
    }

    [Fact]
    public void LeavingRate_RealUnstable_IsTwiceIt()
    {
        Matrix3 m = new(new Vector3D(-1, 4, 2), new Vector3D(0, 0.5, 5), new Vector3D(0, 0, -3));
        Assert.Equal(1.0, m.LeavingRate, 1e-9);
    }

    // Block with 0.1 ± 3i: |λ|² = 9.01, rate 2 · 9.01 / 0.1 = 180.2. Twice the real part, 0.2, would make a step of implicit Euler shrink: |1 - λ/0.2| = 15.01.
    [Fact]
    public void LeavingRate_UnstableSpiral_LetsTheStepsSpiralOut()
    {
        Matrix3 m = new(new Vector3D(0.1, 3, 0), new Vector3D(-3, 0.1, 0), new Vector3D(0, 0, -2));
        double rate = m.LeavingRate;
        Assert.Equal(180.2, rate, 1e-6);
        double re = 1 - 0.1 / rate, im = 3 / rate;
        Assert.True(re * re + im * im < 1, "an implicit step must grow");
        double tooSlow = 0.2;
        Assert.False(Math.Pow(1 - 0.1 / tooSlow, 2) + Math.Pow(3 / tooSlow, 2) < 1);
    }
}
