using TyingClass.Balance.Geometry;
using TyingClass.Balance.Shapes;

namespace TyingClass.Recipes.Bodies;

/// <summary>A short stretch of a wire's center line: its centroid, its true length, and the direction of its chord.</summary>
internal readonly record struct WirePiece(Vector3D CentroidM, Vector3D Direction, double LengthM)
{
    // Abramowitz and Stegun, Handbook of Mathematical Functions (1964), table 25.4, n = 4.
    private static readonly (double Place, double Weight)[] Gauss4 =
    [
        (-0.861136311594053, 0.347854845137454), (-0.339981043584856, 0.652145154862546),
        (0.339981043584856, 0.652145154862546), (0.861136311594053, 0.347854845137454),
    ];

    /// <summary>
    /// Cuts the arc center + cos t · U + sin t · V into pieces of equal t. A piece keeps the arc's exact length and centroid, so sums over pieces are exact
    /// too.
    /// </summary>
    /// <param name="semiU">Semi-axis U, m; perpendicular to <paramref name="semiV"/>.</param>
    public static IEnumerable<WirePiece> Arc(Vector3D centerM, Vector3D semiU, Vector3D semiV, double fromRad, double toRad, int pieces)
    {
        double step = (toRad - fromRad) / pieces;
        for (int i = 0; i < pieces; i++)
        {
            double startRad = fromRad + i * step;
            (double sin0, double cos0) = Math.SinCos(startRad);
            (double sin1, double cos1) = Math.SinCos(startRad + step);
            Vector3D chord = (cos1 - cos0) * semiU + (sin1 - sin0) * semiV;
            (double lengthM, double alongU, double alongV) = Centroid(semiU.Length, semiV.Length, startRad, step);
            yield return new WirePiece(
                centerM + alongU * semiU.Normalized() + alongV * semiV.Normalized(), chord.Normalized(), lengthM);
        }
    }

    /// <summary>
    /// The same arc as seen by the water: places and directions of Gauss's rule of four points, panel by panel, so that sums of drag, which bends with the
    /// angle, come out as the integrals along the wire. Eight pieces of equal t moved a fly soft in roll by degrees.
    /// </summary>
    public static IEnumerable<WirePiece> ArcForDrag(Vector3D centerM, Vector3D semiU, Vector3D semiV, double fromRad, double toRad, int panels)
    {
        double halfRad = (toRad - fromRad) / panels / 2;
        WirePiece[] pieces =
        [
            .. from panel in Enumerable.Range(0, panels)
               from point in Gauss4
               select At(fromRad + halfRad * (2 * panel + 1 + point.Place), point.Weight * Math.Abs(halfRad)),
        ];
        // Gauss's rule has an ellipse's length only to some parts in ten million; the wire's own is known.
        double scale = Centroid(semiU.Length, semiV.Length, fromRad, toRad - fromRad).LengthM / pieces.Sum(piece => piece.LengthM);
        return pieces.Select(piece => piece with { LengthM = scale * piece.LengthM });

        WirePiece At(double angleRad, double shareRad)
        {
            (double sin, double cos) = Math.SinCos(angleRad);
            Vector3D slope = cos * semiV - sin * semiU;
            return new WirePiece(centerM + cos * semiU + sin * semiV, slope.Normalized(), shareRad * slope.Length);
        }
    }

    private static (double LengthM, double AlongU, double AlongV) Centroid(double uM, double vM, double startRad, double stepRad)
    {
        if (Math.Abs(uM - vM) > 1e-12 * uM)
        {
            EllipticArc arc = new(uM, vM, startRad, startRad + stepRad);
            return (arc.LengthM, arc.CentroidXM, arc.CentroidYM);
        }

        double halfRad = Math.Abs(stepRad) / 2, fromCenterM = Arcs.CentroidM(uM, halfRad);
        (double sin, double cos) = Math.SinCos(startRad + stepRad / 2);
        return (Arcs.LengthM(uM, halfRad), fromCenterM * cos, fromCenterM * sin);
    }
}
