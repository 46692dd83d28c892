using TyingClass.Balance.Bodies;
using TyingClass.Balance.Geometry;

namespace TyingClass.Balance.Tests.Flies;

/// <summary>Whole flies carried, mirrored and scaled.</summary>
internal static class Motions
{
    public static FlyBody Moved(this FlyBody body, Func<Vector3D, Vector3D> point, Func<Vector3D, Vector3D> direction) => body with
    {
        TowPointM = point(body.TowPointM),
        Parts = [.. body.Parts.Select(p => Moved(p, point, direction))],
    };

    public static FlyBody Shifted(this FlyBody body, Vector3D by) => body.Moved(p => p + by, d => d);

    public static FlyBody Mirrored(this FlyBody body) => Swapped(body.Moved(Mirror, Mirror));

    private static FlyBody Swapped(FlyBody body) =>
        body with { Parts = [.. body.Parts.Select(p => p with { Room = new SideRoom(-p.Room.HighM, -p.Room.LowM) })] };

    public static FlyBody HeavierBy(this FlyBody body, double factor) => body with { Parts = [.. body.Parts.Select(p => HeavierBy(p, factor))] };

    public static Vector3D Mirror(Vector3D v) => new(v.X, -v.Y, v.Z);

    private static BodyPart Moved(BodyPart p, Func<Vector3D, Vector3D> point, Func<Vector3D, Vector3D> direction) => p with
    {
        Masses = [.. p.Masses.Select(m => m with { PositionM = point(m.PositionM) })],
        Solids = [.. p.Solids.Select(v => v with { PositionM = point(v.PositionM) })],
        Air = [.. p.Air.Select(a => a with { PositionM = point(a.PositionM) })],
        Drag = [.. p.Drag.Select(d => d.Moved(point, direction))],
        SideForces = [.. p.SideForces.Select(e => e.Moved(point, direction))],
        Pieces = [.. p.Pieces.Select(piece => Moved(piece, point, direction))],
    };

    private static BodyPart HeavierBy(BodyPart p, double factor) => p with
    {
        Masses = [.. p.Masses.Select(m => m with { MassKg = factor * m.MassKg })],
        HeldWaterKg = factor * p.HeldWaterKg,
        Pieces = [.. p.Pieces.Select(piece => HeavierBy(piece, factor))],
    };
}
