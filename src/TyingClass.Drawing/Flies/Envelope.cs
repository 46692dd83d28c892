using TyingClass.Balance.Geometry;
using TyingClass.Drawing.Geometry;
using TyingClass.Drawing.Svg;

namespace TyingClass.Drawing.Flies;

/// <summary>The soft shape that a bunch of strands fills on the page: what a brush would lay down before the pen draws hairs.</summary>
internal static class Envelope
{
    private const int Stations = 11;

    // Short of the tips, which are the pen's.
    private const double End = 0.84;

    /// <summary>Seen nearly end on, a bunch is a burst of strokes and has no such shape.</summary>
    public static bool Fits(View view, Sweep line) => (view.At(line.D) - view.At(line.A)).Length > 0.4 * (line.D - line.A).Length;

    /// <param name="strands">All rooted near the start of the line.</param>
    /// <param name="keep">Share of the strands, from the middle out, that the shape takes in.</param>
    public static PathText Of(View view, Sweep line, IReadOnlyList<Sweep> strands, double keep)
    {
        List<Point> over = [], under = [];
        for (int i = 0; i < Stations; i++)
        {
            double t = End * i / (Stations - 1);
            Point middle = view.At(line.At(t)), side = view.Along(line.Tangent(t)).Unit().Turned();
            double[] offsets = [.. strands.Select(s => Point.Dot(view.At(s.At(t)) - middle, side)).Order()];
            int cut = (int)((1 - keep) / 2 * offsets.Length);
            // Strands are of unequal length: the brush narrows where some have already ended.
            double taper = t < 0.6 ? 1 : Math.Sqrt(Math.Max(0, 1 - Math.Pow((t - 0.6) / (End - 0.6) * 0.96, 2)));
            over.Add(middle + side * (taper * offsets[cut]));
            under.Add(middle + side * (taper * offsets[^(cut + 1)]));
        }

        Vector3D tip = line.At(End + 0.01);
        return new PathText().Smooth([.. over, view.At(tip), .. Enumerable.Reverse(under)], closed: true);
    }
}
