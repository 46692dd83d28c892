using TyingClass.Balance.Geometry;
using TyingClass.Drawing.Geometry;
using TyingClass.Drawing.Svg;

namespace TyingClass.Drawing.Flies;

/// <summary>
/// A convex solid turned on an axis (bead, cone, barrel, body), seen from anywhere: outline, shadow, hatching and end faces come from its surface, not from a
/// picture of it.
/// </summary>
internal sealed class Lathe
{
    private const int Sides = 40;

    private readonly View _view;
    private readonly Vector3D _origin, _axis, _across, _upward;
    private readonly (double Along, double Radius)[] _profile;
    private readonly List<(Vector3D Place, Vector3D Normal)> _surface = [];

    /// <param name="profile">Radius along the axis from the origin, mm, front to rear.</param>
    public Lathe(View view, Vector3D origin, Vector3D axis, params (double Along, double Radius)[] profile)
    {
        _view = view;
        _origin = origin;
        _axis = axis;
        _profile = profile;
        _across = Vector3D.Cross(axis, Math.Abs(axis.Z) < 0.9 ? Vector3D.UnitZ : Vector3D.UnitX).Normalized();
        _upward = Vector3D.Cross(_across, axis);
        for (int i = 0; i < profile.Length; i++)
        {
            for (int k = 0; k < Sides; k++)
                _surface.Add(Surface(profile[i].Along, k * 2 * Math.PI / Sides));
        }

        Outline = Hull.Of(_surface.Select(s => view.At(s.Place)));
        NearMm = _surface.Max(s => view.Depth(s.Place));
    }

    public IReadOnlyList<Point> Outline { get; }

    /// <summary>Depth of the surface nearest the onlooker.</summary>
    public double NearMm { get; }

    public PathText OutlinePath() => new PathText().Polyline(Outline, closed: true);

    public static (double Along, double Radius)[] Ball(double diameterMm, double boreMm)
    {
        double r = diameterMm / 2, flat = Math.Sqrt(Math.Max(0, r * r - boreMm * boreMm / 4));
        return [.. Enumerable.Range(0, 19).Select(i => -flat + 2 * flat * (1 - Math.Cos(i * Math.PI / 18)) / 2)
            .Select(s => (s + flat, Math.Sqrt(Math.Max(0, r * r - s * s))))];
    }

    public (Vector3D Place, Vector3D Normal) Surface(double along, double angle)
    {
        (double radius, double slope) = At(along);
        Vector3D outward = Math.Sin(angle) * _across + Math.Cos(angle) * _upward;
        return (_origin + along * _axis + radius * outward, (outward - slope * _axis).Normalized());
    }

    /// <summary>Parts of the surface in view that face away from the lamp by more than a share (−1 to 1).</summary>
    public PathText Shadow(double turnedAway) =>
        new PathText().Polyline(
        Hull.Of(_surface.Where(s => Sees(s.Normal) && Vector3D.Dot(s.Normal, _view.Light) < -turnedAway).Select(s => _view.At(s.Place))), closed: true);

    /// <summary>Rings round the axis, drawn where they are in view and the light falls off.</summary>
    /// <param name="reach">Draw where the surface's lit share is under this; 2 draws whole rings.</param>
    public PathText Rings(double spacingMm, double reach, Seeded chance)
    {
        PathText path = new();
        double from = _profile[0].Along, to = _profile[^1].Along;
        // Seen end on, rings crowd together on the page.
        double spread = 1 + 1.6 * Math.Abs(Vector3D.Dot(_axis, _view.Toward));
        int count = Math.Max(1, (int)((to - from) / Math.Max(spacingMm * spread, 1e-3)));
        for (int i = 0; i < count; i++)
        {
            double along = from + (to - from) * (i + 0.5) / count;
            double limit = reach < 1.5 ? reach + chance.Between(-0.18, 0.18) : reach;
            Trace(path, k => Surface(along, k), s => Sees(s.Normal) && Vector3D.Dot(s.Normal, _view.Light) < limit);
        }

        return path;
    }

    /// <summary>Hatching for a ball: rings about the lamp's own direction, crescents on the dark side.</summary>
    public PathText Crescents(Vector3D center, double radiusMm, double spacingMm)
    {
        PathText path = new();
        Vector3D light = _view.Light, b = Vector3D.Cross(light, _view.Toward).Normalized(), c = Vector3D.Cross(light, b);
        double step = Math.Max(0.07, spacingMm / radiusMm);
        for (double polar = Math.PI * 0.4; polar < Math.PI * 0.9; polar += polar < Math.PI * 0.52 ? 1.6 * step : step)
        {
            (double sin, double cos) = Math.SinCos(polar);
            Trace(
                path,
                k =>
                {
                    Vector3D n = cos * light + sin * (Math.Cos(k) * b + Math.Sin(k) * c);
                    return (center + radiusMm * n, n);
                },
                s => Sees(s.Normal));
        }

        return path;
    }

    /// <summary>The part of a ball in view that lies farther than an angle from the lamp: a crescent between that ring and the limb.</summary>
    public PathText Crescent(Vector3D center, double radiusMm, double polarRad)
    {
        Vector3D light = _view.Light, b = Vector3D.Cross(light, _view.Toward).Normalized(), c = Vector3D.Cross(light, b);
        (double sin, double cos) = Math.SinCos(polarRad);
        // Symmetrical about the plane of lamp and onlooker, which the ring crosses at k = ±π/2; its seen half runs from limb to limb.
        IEnumerable<Vector3D> ring = Enumerable.Range(0, 49).Select(i => -Math.PI / 2 + (i - 24) * Math.PI / 24)
            .Select(k => cos * light + sin * (Math.Cos(k) * b + Math.Sin(k) * c)).Where(Sees);
        Vector3D dark = (-light + Vector3D.Dot(light, _view.Toward) * _view.Toward).Normalized();
        IEnumerable<Vector3D> limb = Enumerable.Range(0, 33).Select(i => Math.PI / 2 - i * Math.PI / 32)
            .Select(k => Math.Cos(k) * dark + Math.Sin(k) * b).Where(n => Vector3D.Dot(n, light) <= cos);
        Point[] inner = [.. ring.Select(n => _view.At(center + radiusMm * n))], outer = [.. limb.Select(n => _view.At(center + radiusMm * n))];
        if (inner.Length < 2 || outer.Length < 2)
            return new PathText();
        bool turned = (inner[^1] - outer[0]).Length > (inner[^1] - outer[^1]).Length;
        return new PathText().Polyline([.. inner, .. turned ? outer.Reverse() : outer], closed: true);
    }

    /// <summary>The disk at the front (true) or rear end, when it faces the onlooker: null when it does not.</summary>
    public PathText? Face(bool front, double radiusMm, double tuckMm = 0)
    {
        double facing = Vector3D.Dot(front ? -_axis : _axis, _view.Toward);
        return facing < 0.04 ? null : new PathText().Polyline(Disk(front, radiusMm, tuckMm), closed: true);
    }

    public bool Sees(Vector3D normal) => Vector3D.Dot(normal, _view.Toward) > 0;

    private IReadOnlyList<Point> Disk(bool front, double radiusMm, double tuckMm)
    {
        double along = front ? _profile[0].Along + tuckMm : _profile[^1].Along - tuckMm;
        return [.. Enumerable.Range(0, 32).Select(k =>
        {
            (double sin, double cos) = Math.SinCos(k * Math.PI / 16);
            return _view.At(_origin + along * _axis + radiusMm * (sin * _across + cos * _upward));
        })];
    }

    private void Trace(PathText path, Func<double, (Vector3D Place, Vector3D Normal)> at, Func<(Vector3D Place, Vector3D Normal), bool> keep)
    {
        const int steps = 48;
        List<Point> run = [];
        // Starts where the line is out of view, so that a run in view is not cut in two.
        int first = Enumerable.Range(0, steps).FirstOrDefault(i => !keep(at(i * 2 * Math.PI / steps)));
        for (int i = 0; i <= steps; i++)
        {
            (Vector3D Place, Vector3D Normal) s = at((first + i) * 2 * Math.PI / steps);
            if (keep(s))
            {
                run.Add(_view.At(s.Place));
                continue;
            }

            Flush();
        }

        Flush();

        void Flush()
        {
            if (run.Count > 2)
                path.Smooth([.. run.Where((_, i) => i % 3 == 0 || i == run.Count - 1)]);
            run.Clear();
        }
    }

    private (double Radius, double Slope) At(double along)
    {
        int i = Math.Clamp(Array.FindIndex(_profile, p => p.Along >= along - 1e-9), 1, _profile.Length - 1);
        (double Along, double Radius) a = _profile[i - 1], b = _profile[i];
        double run = Math.Max(b.Along - a.Along, 1e-9), t = Math.Clamp((along - a.Along) / run, 0, 1);
        return (a.Radius + t * (b.Radius - a.Radius), (b.Radius - a.Radius) / run);
    }
}
