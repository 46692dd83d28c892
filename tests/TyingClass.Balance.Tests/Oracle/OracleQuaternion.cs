namespace TyingClass.Balance.Tests.Oracle;

/// <summary>Unit quaternion that carries the hook frame to the world (Hamilton's product, scalar first).</summary>
internal readonly record struct OracleQuaternion(double W, double X, double Y, double Z)
{
    public static OracleQuaternion Turn(OracleVector axis, double angleRad)
    {
        double share = Math.Sin(angleRad / 2) / axis.Length;
        return new(Math.Cos(angleRad / 2), share * axis.X, share * axis.Y, share * axis.Z);
    }

    /// <summary>Evenly over all attitudes (Shoemake 1992).</summary>
    public static OracleQuaternion Random(Random random)
    {
        double u = random.NextDouble(), a = 2 * Math.PI * random.NextDouble(), b = 2 * Math.PI * random.NextDouble();
        return new(Math.Sqrt(1 - u) * Math.Sin(a), Math.Sqrt(1 - u) * Math.Cos(a), Math.Sqrt(u) * Math.Sin(b), Math.Sqrt(u) * Math.Cos(b));
    }

    public static OracleQuaternion operator *(OracleQuaternion p, OracleQuaternion q) => new(
        p.W * q.W - p.X * q.X - p.Y * q.Y - p.Z * q.Z,
        p.W * q.X + p.X * q.W + p.Y * q.Z - p.Z * q.Y,
        p.W * q.Y - p.X * q.Z + p.Y * q.W + p.Z * q.X,
        p.W * q.Z + p.X * q.Y - p.Y * q.X + p.Z * q.W);

    public OracleQuaternion Unit()
    {
        double n = Math.Sqrt(W * W + X * X + Y * Y + Z * Z);
        return new(W / n, X / n, Y / n, Z / n);
    }

    public OracleVector ToWorld(OracleVector v)
    {
        OracleQuaternion r = this * new OracleQuaternion(0, v.X, v.Y, v.Z) * new OracleQuaternion(W, -X, -Y, -Z);
        return new(r.X, r.Y, r.Z);
    }

    public OracleVector ToHook(OracleVector v) => new OracleQuaternion(W, -X, -Y, -Z).ToWorld(v);
}
