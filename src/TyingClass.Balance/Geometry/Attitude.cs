using TyingClass.Balance.Bodies;

namespace TyingClass.Balance.Geometry;

/// <summary>
/// How the fly stands in the water, as the hook sees it: where the flow goes and where up is, both unit vectors in the hook frame and square to each other.
/// They are two rows of the rotation matrix that carries the hook frame to the world (x with the flow, z up).
/// </summary>
public readonly record struct Attitude(Vector3D Flow, Vector3D Up)
{
    /// <summary>The third row: the world's y in the hook frame.</summary>
    public Vector3D Across => Vector3D.Cross(Up, Flow);

    /// <summary>Angle of the shank above the horizontal, positive nose up, -π/2 to π/2.</summary>
    public double PitchRad => Math.Asin(Math.Clamp(-Up.X, -1, 1));

    /// <summary>Turn about the shank, 0 riding as clamped, ±π turned over.</summary>
    public double RollRad => Math.Atan2(Up.Y, Up.Z);

    /// <summary>Within the plane of bend, flow and plumb line (the symmetric attitude).</summary>
    /// <param name="pitchRad">Positive nose up, any angle.</param>
    public static Attitude Symmetric(Intent intent, double pitchRad)
    {
        (double sin, double cos) = Math.SinCos(pitchRad);
        return intent == Intent.PointDown
            ? new Attitude(new Vector3D(cos, 0, sin), new Vector3D(-sin, 0, cos))
            : new Attitude(new Vector3D(cos, 0, -sin), new Vector3D(-sin, 0, -cos));
    }

    /// <summary>0 riding exactly as intended, π flipped.</summary>
    public double LeanRad(Intent intent) =>
        intent == Intent.PointDown ? Math.Abs(RollRad) : Math.PI - Math.Abs(RollRad);

    /// <summary>The attitude after a further turn of the fly.</summary>
    /// <param name="turn">Rotation vector in the hook frame, rad.</param>
    public Attitude Turned(Vector3D turn)
    {
        double angle = turn.Length;
        if (angle == 0)
        {
            return this;
        }

        // Rodrigues's formula by minus the angle, one sine for both directions.
        Vector3D axis = turn / angle;
        (double sin, double cos) = Math.SinCos(-angle);
        Vector3D flow = cos * Flow + sin * Vector3D.Cross(axis, Flow) + (1 - cos) * Vector3D.Dot(axis, Flow) * axis;
        Vector3D up = cos * Up + sin * Vector3D.Cross(axis, Up) + (1 - cos) * Vector3D.Dot(axis, Up) * axis;
        flow /= flow.Length;
        up -= Vector3D.Dot(up, flow) * flow;
        return new Attitude(flow, up / up.Length);
    }

    /// <summary>The angle of the single turn that leads from one attitude to another, 0 to π.</summary>
    public double AngleTo(Attitude other)
    {
        double trace = Vector3D.Dot(Flow, other.Flow) + Vector3D.Dot(Up, other.Up) + Vector3D.Dot(Across, other.Across);
        return Math.Acos(Math.Clamp((trace - 1) / 2, -1, 1));
    }
}
