using TyingClass.Balance.Bodies;
using TyingClass.Balance.Fluid;
using TyingClass.Balance.Geometry;
using TyingClass.Balance.Retrieving;
using Xunit;

namespace TyingClass.Balance.Tests.Retrieving;

/// <summary>Bodies and lines to try the motion on, a meter and more under the surface.</summary>
internal static class Rig
{
    public static readonly Water Fresh = new(998.2041, 1001.57e-6);

    public static FishingConditions Conditions { get; } = new(Fresh, new Leader(0.2e-3, 2.5e9, 1140), Knot.Loop, 0.4);

    /// <summary>Rods of a straight line of pieces, front end at the origin, along +x.</summary>
    public static FlyBody Rod(double lengthM, double diameterM, double densityKgM3, int pieces)
    {
        double piece = lengthM / pieces, volume = Math.PI / 4 * diameterM * diameterM * piece;
        Vector3D[] middles = [.. Enumerable.Range(0, pieces).Select(i => new Vector3D((i + 0.5) * piece, 0, 0))];
        BodyPart rod = new("rod")
        {
            Masses = [.. middles.Select(m => new MassElement(densityKgM3 * volume, m))],
            Solids = [.. middles.Select(m => new VolumeElement(volume, m))],
            Drag = [.. middles.Select(m => DragElement.Cylinder(m, Vector3D.UnitX, piece, diameterM))],
        };
        return new FlyBody([rod], default, lengthM, Intent.PointDown);
    }

    public static FlyBody Ball(double diameterM, double densityKgM3)
    {
        double volume = Math.PI / 6 * Math.Pow(diameterM, 3);
        Vector3D middle = new(diameterM / 2, 0, 0);
        BodyPart ball = new("ball")
        {
            Masses = [new(densityKgM3 * volume, middle)],
            Solids = [new(volume, middle)],
            Drag = [DragElement.Sphere(middle, diameterM)],
        };
        return new FlyBody([ball], default, diameterM, Intent.PointDown);
    }

    /// <summary>On one piece of line from a rod tip that is held still.</summary>
    public static FishingMotion Hung(RigidFly fly, FlyPose pose, Vector3D tipM, double lineM)
    {
        LineChain line = new([new LinePiece(lineM, 1e-4, 1e-4, 1e4) { FrictionNSM2 = 0 }], Fresh, null);
        (line.PositionM[0], line.PositionM[1]) = (tipM, pose.EyeM);
        return new FishingMotion(line, fly, pose) { TipM = _ => tipM, DrawnM = _ => 0 };
    }

    public static void Run(FishingMotion motion, double seconds, double stepS, Action<double>? after = null)
    {
        int steps = (int)Math.Round(seconds / stepS);
        for (int i = 0; i < steps; i++)
        {
            Step(i * stepS, stepS, 6);
            after?.Invoke((i + 1) * stepS);
        }

        void Step(double fromS, double lengthS, int halvings)
        {
            if (motion.TryStep(fromS, lengthS, new StepTolerance(1, 1), force: true)) return;
            Assert.True(halvings > 0, $"no step from {fromS} s could be solved");
            Step(fromS, lengthS / 2, halvings - 1);
            Step(fromS + lengthS / 2, lengthS / 2, halvings - 1);
        }
    }
}
