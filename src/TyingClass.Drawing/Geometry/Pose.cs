using TyingClass.Balance.Bodies;
using TyingClass.Balance.Geometry;

namespace TyingClass.Drawing.Geometry;

/// <summary>How the hook frame lies in the water frame: X along the flow, Z up, Y completing a right-handed frame.</summary>
internal readonly record struct Pose(Vector3D AftAxis, Vector3D SideAxis, Vector3D TopAxis)
{
    public static readonly Pose Vise = new(Vector3D.UnitX, Vector3D.UnitY, Vector3D.UnitZ);

    /// <param name="pitchDeg">Positive nose up: the shank's rear is lower than its front.</param>
    /// <param name="leanDeg">From the intended way up, turned about the shank.</param>
    public static Pose Towed(double pitchDeg, double leanDeg, Intent intent)
    {
        double roll = double.DegreesToRadians(leanDeg + (intent == Intent.PointUp ? 180 : 0));
        double pitch = double.DegreesToRadians(pitchDeg);
        Vector3D Turn(Vector3D v) => v.RotatedAbout(Vector3D.UnitX, roll).RotatedAbout(Vector3D.UnitY, pitch);
        return new Pose(Turn(Vector3D.UnitX), Turn(Vector3D.UnitY), Turn(Vector3D.UnitZ));
    }

    /// <summary>Hung from the eye: the mass center plumb under the tow point.</summary>
    public static Pose Hung(Vector3D towPoint, Vector3D massCenter)
    {
        Vector3D down = massCenter - towPoint;
        // First within the plane of the hook, then the little that a lopsided fly tips out of it.
        double pitch = Math.Atan2(-down.X, -down.Z);
        double flat = Math.Sqrt(down.X * down.X + down.Z * down.Z);
        double tip = -Math.Atan2(down.Y, flat);
        Vector3D Turn(Vector3D v) => v.RotatedAbout(Vector3D.UnitY, -pitch).RotatedAbout(Vector3D.UnitX, tip);
        return new Pose(Turn(Vector3D.UnitX), Turn(Vector3D.UnitY), Turn(Vector3D.UnitZ));
    }

    public Vector3D ToWater(Vector3D hook) => hook.X * AftAxis + hook.Y * SideAxis + hook.Z * TopAxis;

    public Vector3D ToHook(Vector3D water) =>
        new(Vector3D.Dot(water, AftAxis), Vector3D.Dot(water, SideAxis), Vector3D.Dot(water, TopAxis));
}
