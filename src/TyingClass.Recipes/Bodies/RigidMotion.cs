using TyingClass.Balance.Bodies;
using TyingClass.Balance.Geometry;

namespace TyingClass.Recipes.Bodies;

/// <summary>A tying error: the part turned about the shank, then set over to one side.</summary>
internal static class RigidMotion
{
    public static BodyPart Apply(BodyPart part, double sideM, double clockedRad)
    {
        if (sideM == 0 && clockedRad == 0) return part;
        return part with
        {
            Masses = [.. part.Masses.Select(e => e with { PositionM = Point(e.PositionM) })],
            Solids = [.. part.Solids.Select(e => e with { PositionM = Point(e.PositionM) })],
            Air = [.. part.Air.Select(e => e with { PositionM = Point(e.PositionM) })],
            Drag = [.. part.Drag.Select(e => e.Moved(Point, Direction))],
            SideForces = [.. part.SideForces.Select(e => e.Moved(Point, Direction))],
        };

        Vector3D Direction(Vector3D v) => v.RotatedAbout(Vector3D.UnitX, clockedRad);
        Vector3D Point(Vector3D p) => Direction(p) + sideM * Vector3D.UnitY;
    }
}
