using TyingClass.Balance.Bodies;
using TyingClass.Balance.Geometry;
using TyingClass.Balance.Tests.Flies;
using TyingClass.Balance.Towing;
using Xunit;

namespace TyingClass.Balance.Tests.Properties;

/// <summary>The moment's derivatives, worked out by hand in the engine, against differences of the moment itself.</summary>
public sealed class DerivativeTests
{
    [Fact]
    public void Linearize_RandomFlies_IsTheSlopeOfTheMoment()
    {
        Random random = new(11);
        for (int seed = 70_000; seed < 70_150; seed++)
        {
            (FlyBody body, FishingConditions conditions) = RandomBodies.Fly(seed);
            TowedFly fly = TowedFly.From(body, conditions, 0);
            Attitude attitude = Attitude.Symmetric(body.Intent, 2 * random.NextDouble() - 1)
                .Turned(new Vector3D(random.NextDouble(), random.NextDouble(), random.NextDouble()));
            Linearized loads = fly.Linearize(attitude, conditions.SpeedMS);
            Wrench here = fly.At(attitude, conditions.SpeedMS);
            double size = loads.MomentNM.Length + loads.DragN.Length * body.ShankLengthM;
            Assert.Equal(0, (here.MomentNM - loads.MomentNM).Length, 1e-13 * size);
            Assert.Equal(0, (here.ForceN - loads.DragN).Length, 1e-13 * loads.DragN.Length);
            foreach (Vector3D turn in new[] { Vector3D.UnitX, Vector3D.UnitY, Vector3D.UnitZ })
            {
                const double h = 1e-4;
                Vector3D slope = (fly.At(attitude.Turned(h * turn), conditions.SpeedMS).MomentNM
                    - fly.At(attitude.Turned(-h * turn), conditions.SpeedMS).MomentNM) / (2 * h);
                Assert.True((slope - loads.Turning * turn).Length < 1e-4 * size, $"body {seed}: {slope} against {loads.Turning * turn}");
            }
        }
    }

    // Straight along a wire nothing crosses it: the slope must still be a number.
    [Fact]
    public void Linearize_FlowAlongEveryWire_IsFinite()
    {
        BodyPart rod = new("hook") { Masses = [new(1e-4, default)], Drag = [DragElement.Cylinder(new Vector3D(0.01, 0, 0), Vector3D.UnitX, 0.02, 1e-3, 0.5)] };
        TowedFly fly = TowedFly.From(new FlyBody([rod], default, 0.02, Intent.PointDown),
            new FishingConditions(new(998.2041, 1001.57e-6), new(0.2e-3, 2.5e9, 1140), Knot.Loop, 0.5), 0);
        Linearized loads = fly.Linearize(Attitude.Symmetric(Intent.PointDown, 0), 0.5);
        Assert.True(double.IsFinite(loads.Turning.Determinant) && double.IsFinite(loads.Turning.Trace));
    }
}
