using TyingClass.Balance.Geometry;

namespace TyingClass.Drawing.Geometry;

/// <summary>Where the onlooker stands.</summary>
internal enum Facing
{
    /// <summary>Beside the fly, the flow passing from left to right.</summary>
    Side,

    /// <summary>Upstream, looking the fly in the eye.</summary>
    Front,
}

/// <summary>
/// A parallel projection of the hook frame (mm) onto the page (mm): true to scale, and straight lines and Bézier curves stay what they are. The tow point lands
/// on the origin.
/// </summary>
internal sealed class View(Pose attitude, Vector3D towPointMm, Facing facing)
{
    public Pose Pose => attitude;

    /// <summary>Unit vector from the fly to the onlooker, hook frame.</summary>
    public Vector3D Toward { get; } = attitude.ToHook(facing == Facing.Side ? -Vector3D.UnitY : -Vector3D.UnitX);

    /// <summary>Unit vector to the lamp, over the onlooker's left shoulder, hook frame.</summary>
    public Vector3D Light { get; } = attitude.ToHook(
        (facing == Facing.Side ? new Vector3D(-0.45, -0.6, 0.66) : new Vector3D(-0.6, 0.45, 0.66)).Normalized());

    public Point At(Vector3D hookMm) => Along(hookMm - towPointMm);

    /// <summary>A direction, or an offset, without the shift of the origin.</summary>
    public Point Along(Vector3D offset)
    {
        Vector3D w = attitude.ToWater(offset);
        return facing == Facing.Side ? new Point(w.X, -w.Z) : new Point(-w.Y, -w.Z);
    }

    /// <summary>Larger is nearer the onlooker, mm.</summary>
    public double Depth(Vector3D hookMm) => Vector3D.Dot(hookMm - towPointMm, Toward);
}
