using TyingClass.Balance.Bodies;
using TyingClass.Balance.Geometry;
using TyingClass.Balance.Retrieving;
using TyingClass.Balance.Sinking;
using TyingClass.Balance.Tests.Flies;
using TyingClass.Recipes.Bodies;
using Xunit;

namespace TyingClass.Balance.Tests.Retrieving;

/// <summary>A body in motion against closed forms, published terminal speeds and the steady solvers.</summary>
public sealed class MotionTests(ITestOutputHelper output)
{
    // (ρs - ρ) g = (ρs + ρ/2) dv/dt: a ball moves half of its water (Lamb, Hydrodynamics, art. 92; any text). 5.9 % slower than without.
    [Fact]
    public void Motion_BallLetGo_SpeedsUpWithHalfItsWater()
    {
        const double density = 8500;
        FishingMotion ball = Fall(Rig.Ball(3e-3, density), 0.004, 0.0005);
        double expected = 0.004 * (density - 998.2041) * 9.80665 / (density + 998.2041 / 2);
        Assert.Equal(1, -Down(ball) / expected, 0.01);
    }

    // Brass, 3 mm, 20 °C: 0.863 m/s by Brown and Lawler's drag of a sphere, J. Environ. Eng. 129 (2003) 222 (check values).
    [Fact]
    public void Motion_BallFallingOn_ReachesItsTerminalSpeed()
    {
        Assert.Equal(0.863, -Down(Fall(Rig.Ball(3e-3, 8500), 1.5, 0.01)), 0.005);
    }

    // A rod hung by its end: I = (ρs + ρ) A ℓ³/3, moment (ρs - ρ) g A ℓ²/2, so T = 2π √(2ℓ (ρs + ρ)/(3 g (ρs - ρ))); without moved water ρs alone.
    [Theory]
    [InlineData(true)]
    [InlineData(false)]
    public void Motion_RodHungInWater_SwingsInItsPeriod(bool movesWater)
    {
        const double length = 0.06, density = 3000, water = 998.2041;
        double moved = movesWater ? water : 0, period = 2 * Math.PI * Math.Sqrt(2 * length * (density + moved) / (3 * 9.80665 * (density - water)));
        RigidFly rod = new(Rig.Rod(length, 4e-3, density, 24), Rig.Conditions, null, movesWater);
        Frame hanging = new(-Vector3D.UnitZ, Vector3D.UnitY, Vector3D.UnitX);
        FishingMotion motion = Rig.Hung(rod, new FlyPose(new Vector3D(0, 0, -2.0002), hanging.Turned(new Vector3D(0, 0.03, 0))), new Vector3D(0, 0, -2), 2e-4);
        List<double> crossings = [];
        double last = motion.Pose.Frame.X.X, at = 0;
        Rig.Run(motion, 3 * period, 1e-3, time =>
        {
            double now = motion.Pose.Frame.X.X;
            if (now * last < 0) crossings.Add(at + (time - at) * last / (last - now));
            (last, at) = (now, time);
        });
        double measured = 2 * (crossings[^1] - crossings[0]) / (crossings.Count - 1);
        output.WriteLine($"{measured:F4} s, closed form {period:F4} s");
        Assert.Equal(1, measured / period, 0.01);
    }

    // The sinking fly of the reports is solved for its balance, never stepped: rate within 1 %, pitch within 1°. It leaves out the slow spin of a lopsided fly,
    // so those that come to spin are no match for it.
    [Fact]
    public void Motion_SlackForEver_SinksAsTheSinkingFly()
    {
        int settled = 0;
        for (int seed = 1; seed <= 60; seed++)
        {
            BuiltFly fly = FlyBuilder.Build(RandomRecipes.Fly(seed));
            FishingConditions loop = fly.Conditions with { Knot = Knot.Loop };
            SinkingFly steady = new(fly.Body, loop, double.PositiveInfinity);
            if (steady.Hovers || steady.Ways() is not [(var way, > 0.95)] || way.RateMS < 0.05) continue;
            RigidFly body = new(fly.Body, loop, null);
            FlyPose start = new(new Vector3D(0, 0, -10), Frame.World);
            FishingMotion motion = Rig.Hung(body, start, new Vector3D(0, 0, -9), 100);
            Rig.Run(motion, 12, 0.01);
            double pitch = Math.Asin(-motion.Pose.Frame.Up.X) * 180 / Math.PI;
            double spin = motion.Motion.Turn.Length;
            if (spin > 0.02) continue;
            output.WriteLine($"{seed}: {-Down(motion):F4} and {way.RateMS:F4} m/s, {pitch:F2} and {way.PitchRad * 180 / Math.PI:F2}°");
            Assert.Equal(1, -Down(motion) / way.RateMS, 0.01);
            Assert.Equal(way.PitchRad * 180 / Math.PI, pitch, 1.0);
            settled++;
        }

        Assert.True(settled >= 8, $"only {settled} compared");
    }

    [Fact]
    public void Motion_StillWater_MakesNoEnergy()
    {
        for (int seed = 1; seed <= 16; seed++)
        {
            BuiltFly fly = FlyBuilder.Build(RandomRecipes.Fly(seed));
            RigidFly body = new(fly.Body, fly.Conditions with { Knot = Knot.Loop }, null);
            FishingMotion motion = Rig.Hung(body, new FlyPose(new Vector3D(0, 0, -10), Frame.World.Turned(new Vector3D(seed, 0.7, 0.4))), new(0, 0, -9), 100);
            double before = double.PositiveInfinity, scale = 0;
            Rig.Run(motion, 1.5, 0.002, _ =>
            {
                double energy = body.EnergyJ(motion.Pose, motion.Motion);
                scale = Math.Max(scale, Math.Abs(energy - body.EnergyJ(motion.Pose, default)));
                Assert.True(energy <= before + 1e-3 * scale + 1e-12, $"fly {seed}: {energy - before} J more, kinetic {scale}");
                before = energy;
            });
        }
    }

    private static FishingMotion Fall(FlyBody body, double seconds, double stepS)
    {
        FishingMotion motion = Rig.Hung(new RigidFly(body, Rig.Conditions, null), new FlyPose(new Vector3D(0, 0, -10), Frame.World), new(0, 0, -9), 100);
        Rig.Run(motion, seconds, stepS);
        return motion;
    }

    private static double Down(FishingMotion motion) => motion.Pose.Frame.ToWorld(motion.Motion.Eye).Z;
}
