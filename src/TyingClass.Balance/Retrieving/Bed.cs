using TyingClass.Balance.Bodies;
using TyingClass.Balance.Geometry;

namespace TyingClass.Balance.Retrieving;

/// <summary>The bottom: a firm, level bed that holds back what is drawn over it.</summary>
/// <param name="LevelM">Its height, m: under 0.</param>
/// <param name="VelocityMS">Of the bed past the water, m/s.</param>
internal sealed record Bed(double LevelM, Vector3D VelocityMS)
{
    /// <summary>Friction over load. Estimate: wet gravel and metal.</summary>
    private const double Friction = 0.4;

    // The bed gives way this much under its load, and friction takes hold over this speed: numerical softness, not physics.
    private const double GivesM = 5e-4, SlipMS = 0.01;

    /// <summary>Force on a point mass below the level, and how it resists being moved on, per m/s over a stage.</summary>
    public (Vector3D ForceN, Symmetric3 Resistance) On(double massKg, double heightM, Vector3D velocityMS, double stageS)
    {
        double stiffness = massKg * Standard.GravityMS2 / GivesM, damping = 2 * Math.Sqrt(stiffness * massKg);
        (Vector3D force, double held) = Push(stiffness, damping, heightM, velocityMS);
        return (force, new Symmetric3(held, held, damping + stageS * stiffness, 0, 0, 0));
    }

    /// <summary>Force on a point below the level.</summary>
    /// <param name="stiffnessNM">N/m of depth below it.</param>
    /// <param name="dampingNSM">N·s/m of coming down.</param>
    public (Vector3D ForceN, double HeldNSM) Push(double stiffnessNM, double dampingNSM, double heightM, Vector3D velocityMS)
    {
        double load = Math.Max(0, stiffnessNM * (LevelM - heightM) - dampingNSM * velocityMS.Z);
        Vector3D slip = velocityMS - VelocityMS;
        slip -= slip.Z * Vector3D.UnitZ;
        double held = Friction * load / (slip.Length + SlipMS);
        return (load * Vector3D.UnitZ - held * slip, held);
    }

    /// <summary>How far a load of so many N sinks in, as a stiffness, N/m.</summary>
    public static double StiffnessFor(double loadN) => loadN / GivesM;
}
