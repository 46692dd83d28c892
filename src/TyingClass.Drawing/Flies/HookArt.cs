using TyingClass.Balance.Geometry;
using TyingClass.Drawing.Geometry;
using TyingClass.Drawing.Svg;
using TyingClass.Recipes.Catalogue;
using TyingClass.Recipes.Model;

namespace TyingClass.Drawing.Flies;

/// <summary>
/// The hook to gauge: ring, eye leg, shank, bend, spear, point and barb, which is pressed flat as at our table: a low hump. The ring lies across the bend as on
/// most hooks, but is drawn turned a third of a right angle, so that its hole shows from the side.
/// </summary>
internal static class HookArt
{
    private const double RingTurnRad = 0.75;

    public static IEnumerable<Piece> Draw(Anatomy fly)
    {
        ResolvedHook hook = fly.Hook;
        Vector3D[] shank =
            [1e3 * hook.EyeLegM * hook.EyeDirection, 0.3 * 1e3 * hook.EyeLegM * hook.EyeDirection, new(0.25 * fly.WireMm, 0, 0), new(1e3 * hook.ShankM, 0, 0)];
        yield return Wire(fly, shank, shank.Min(fly.View.Depth), smooth: false);
        Vector3D[] bend = [.. Bend(hook)];
        yield return Wire(fly, bend, bend.Average(fly.View.Depth) - 0.01, smooth: false);
        yield return Spear(fly);
        yield return Ring(fly);
    }

    /// <summary>
    /// The wire's center line from the end of the shank round to the spear, mm: a semicircle, half an ellipse, or two quarter circles and a straight.
    /// </summary>
    public static IEnumerable<Vector3D> Bend(ResolvedHook hook)
    {
        double shank = 1e3 * hook.ShankM, gape = 1e3 * hook.GapeM, depth = 1e3 * hook.BendDepthM;
        for (int i = 0; i <= 28; i++)
        {
            (double sin, double cos) = Math.SinCos(Math.PI * i / 28);
            if (hook.Bend != BendKind.Square)
                yield return new(shank + depth * sin, 0, -gape / 2 + gape / 2 * cos);
            else
                yield return new(shank + depth * sin, 0, i <= 14 ? depth * (cos - 1) : -gape + depth * (cos + 1));
        }
    }

    private static Piece Wire(Anatomy fly, Vector3D[] line, double depth, bool smooth)
    {
        Point[] on = [.. line.Select(fly.View.At)];
        PathText path = smooth ? new PathText().Smooth(on) : new PathText().Polyline(on);
        Point shift = new(-0.1 * fly.WireMm, -0.18 * fly.WireMm);
        PathText gleam = new PathText().Polyline([.. on.Select(p => p + shift)]);
        return new Piece(depth, "hook", on, ink => ink.Wire(path, Tone.Steel, fly.WireMm, gleam));
    }

    private static Piece Spear(Anatomy fly)
    {
        ResolvedHook hook = fly.Hook;
        double rear = 1e3 * hook.ShankM, z = -1e3 * hook.GapeM, length = 1e3 * hook.SpearM, r = fly.WireMm / 2;
        double point = rear - length, taper = point + Math.Min(0.45 * length, 6 * fly.WireMm);
        double barb = point + Math.Min(0.4 * length, 5.2 * fly.WireMm);
        View view = fly.View;
        Point shift = new(-0.1 * fly.WireMm, -0.18 * fly.WireMm);
        Point[] run = [view.At(new(rear + 0.05, 0, z)), view.At(new(taper - 0.02, 0, z))];
        Point[] needle = Needle(view, taper, point, z, r);
        Point[] sliver =
            [view.At(new(barb - 2.4 * r, 0, z + 0.75 * r)), view.At(new(barb + 1.6 * r, 0, z + 1.35 * r)), view.At(new(barb + 2.2 * r, 0, z + 0.8 * r))];
        return new Piece(
            (view.Depth(new(rear, 0, z)) + view.Depth(new(point, 0, z))) / 2, "hook", [.. run, view.At(new(point, 0, z))],
            ink =>
            {
                ink.Solid(new PathText().Polyline(sliver, closed: true));
                ink.Wash(new PathText().Polyline(needle, closed: true), Tone.Steel);
                ink.Line(new PathText().Polyline(needle, closed: true), 0.8);
                ink.Wire(new PathText().Polyline(run), Tone.Steel, fly.WireMm, new PathText().Polyline([.. run.Select(p => p + shift)]));
            });
    }

    // From the wire's full width to nothing, the width lying across the page whichever way the spear points.
    private static Point[] Needle(View view, double from, double to, double z, double r)
    {
        Point a = view.At(new(from, 0, z)), b = view.At(new(to, 0, z));
        Point side = (b - a).Length > 1e-6 ? (b - a).Unit().Turned() * r : new Point(r, 0);
        Point middle = a + (b - a) * 0.55;
        return [a + side, middle + side * 0.75, b, middle - side * 0.75, a - side];
    }

    private static Piece Ring(Anatomy fly)
    {
        ResolvedHook hook = fly.Hook;
        Vector3D along = hook.EyeDirection, center = 1e3 * hook.TowPointM;
        Vector3D over = Math.Cos(RingTurnRad) * Vector3D.UnitY + Math.Sin(RingTurnRad) * Vector3D.Cross(along, Vector3D.UnitY);
        double r = 1e3 * hook.RingRadiusM;
        Point[] loop = [.. Enumerable.Range(0, 36).Select(i =>
        {
            (double sin, double cos) = Math.SinCos(i * Math.PI / 18);
            return fly.View.At(center + r * (cos * along + sin * over));
        })];
        PathText path = new PathText().Smooth([.. loop.Where((_, i) => i % 2 == 0)], closed: true);
        Point shift = new(-0.1 * fly.WireMm, -0.18 * fly.WireMm);
        PathText gleam = new PathText().Smooth([.. loop.Where((_, i) => i % 2 == 0).Select(p => p + shift)], closed: true);
        return new Piece(fly.View.Depth(center) + 0.02, "hook", loop, ink => ink.Wire(path, Tone.Steel, fly.WireMm, gleam));
    }
}
