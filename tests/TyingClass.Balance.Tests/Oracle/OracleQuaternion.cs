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

    /// <summary>From what the hook frame sees of the world's x and z axes.</summary>
    public static OracleQuaternion Seeing(OracleVector x, OracleVector z)
    {
        OracleVector y = OracleVector.Cross(z, x);
        // Rows of the rotation matrix; the largest of four squares keeps the division safe (Shepperd 1978).
        double w2 = 1 + x.X + y.Y + z.Z, x2 = 1 + x.X - y.Y - z.Z, y2 = 1 - x.X + y.Y - z.Z, z2 = 1 - x.X - y.Y + z.Z;
        double most = Math.Max(Math.Max(w2, x2), Math.Max(y2, z2)), d = 2 * Math.Sqrt(most);
        OracleQuaternion q =
            most == w2 ? new(d / 4, (z.Y - y.Z) / d, (x.Z - z.X) / d, (y.X - x.Y) / d)
            : most == x2 ? new((z.Y - y.Z) / d, d / 4, (y.X + x.Y) / d, (x.Z + z.X) / d)
            : most == y2 ? new((x.Z - z.X) / d, (y.X + x.Y) / d, d / 4, (z.Y + y.Z) / d)
            : new((y.X - x.Y) / d, (x.Z + z.X) / d, (z.Y + y.Z) / d, d / 4);
        return q.Unit();
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
