using TyingClass.Balance.Geometry;

namespace TyingClass.Balance.Tests.Oracle;

/// <summary>The oracle's own vector, so that a slip in the engine's cannot hide in both.</summary>
internal readonly record struct OracleVector(double X, double Y, double Z)
{
    public double Length => Math.Sqrt(X * X + Y * Y + Z * Z);

    public static OracleVector operator +(OracleVector a, OracleVector b) => new(a.X + b.X, a.Y + b.Y, a.Z + b.Z);

    public static OracleVector operator -(OracleVector a, OracleVector b) => new(a.X - b.X, a.Y - b.Y, a.Z - b.Z);

    public static OracleVector operator *(double s, OracleVector a) => new(s * a.X, s * a.Y, s * a.Z);

    public static double Dot(OracleVector a, OracleVector b) => a.X * b.X + a.Y * b.Y + a.Z * b.Z;

    public static OracleVector Cross(OracleVector a, OracleVector b) =>
        new(a.Y * b.Z - a.Z * b.Y, a.Z * b.X - a.X * b.Z, a.X * b.Y - a.Y * b.X);

    public static OracleVector Of(Vector3D v) => new(v.X, v.Y, v.Z);
}
