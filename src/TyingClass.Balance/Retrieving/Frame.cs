using TyingClass.Balance.Geometry;

namespace TyingClass.Balance.Retrieving;

/// <summary>Where the hook frame's axes point in the world.</summary>
internal readonly record struct Frame(Vector3D X, Vector3D Y, Vector3D Z)
{
    public static readonly Frame World = new(Vector3D.UnitX, Vector3D.UnitY, Vector3D.UnitZ);

    /// <summary>The world's up in the hook frame.</summary>
    public Vector3D Up => new(X.Z, Y.Z, Z.Z);

    public Vector3D ToWorld(Vector3D v) => v.X * X + v.Y * Y + v.Z * Z;

    public Vector3D ToHook(Vector3D v) => new(Vector3D.Dot(X, v), Vector3D.Dot(Y, v), Vector3D.Dot(Z, v));

    /// <summary>After a further turn.</summary>
    /// <param name="turn">Rotation vector in the hook frame, rad.</param>
    public Frame Turned(Vector3D turn)
    {
        double angle = turn.Length;
        if (angle < 1e-15) return this;
        Vector3D axis = turn / angle;
        (double sin, double cos) = Math.SinCos(angle);
        Vector3D x = Column(Vector3D.UnitX), y = Column(Vector3D.UnitY);
        Vector3D worldX = ToWorld(x).Normalized(), worldY = ToWorld(y);
        worldY = (worldY - Vector3D.Dot(worldY, worldX) * worldX).Normalized();
        return new Frame(worldX, worldY, Vector3D.Cross(worldX, worldY));

        Vector3D Column(Vector3D e) => cos * e + sin * Vector3D.Cross(axis, e) + (1 - cos) * Vector3D.Dot(axis, e) * axis;
    }
}
