using TyingClass.Drawing.Flies;
using TyingClass.Drawing.Geometry;
using TyingClass.Drawing.Svg;

namespace TyingClass.Drawing.Marks;

/// <summary>A ring round what a question turns on.</summary>
internal sealed record Ring(string Part, Box Box)
{
    private const double EyeLetters = 1.6;

    private double ReachMm => Math.Min(Box.Width, Box.Height) / 2;

    /// <returns>Null where the part is not to be seen.</returns>
    public static Ring? Of(TurnsOn on, Scene scene, double letterMm)
    {
        // The tow point is the origin of every page.
        if (on.Part == TurnsOn.Eye) return new Ring(on.Part, Box.Around(new Point(0, 0), EyeLetters * letterMm, EyeLetters * letterMm));
        Box box = scene.Pieces.Where(p => p.Part == on.Part).SelectMany(p => p.Outline).Aggregate(Box.Empty, (all, p) => all.With(p));
        return box.Width < 0 ? null : new Ring(on.Part, box.Grown(0.3 * letterMm));
    }

    /// <summary>Its dashes, which no words may lie on; within it they may.</summary>
    public IEnumerable<Box> Kept(double letterMm)
    {
        double half = 0.1 * letterMm;
        foreach (double y in (double[])[Box.Top, Box.Bottom]) yield return new Box(Box.Left, y - half, Box.Right, y + half);
        foreach (double x in (double[])[Box.Left, Box.Right]) yield return new Box(x - half, Box.Top, x + half, Box.Bottom);
    }

    public void Draw(Ink ink, double letterMm) => ink.Canvas.Element(
        "rect", ("class", "fly-ring"), ("data-mark", "turns on"), ("data-part", Part), ("x", E(Box.Left)), ("y", E(Box.Top)), ("width", E(Box.Width)),
        ("height", E(Box.Height)), ("rx", E(Math.Min(ReachMm, letterMm))), ("fill", "none"), ("stroke-width", E(1.6 * ink.PenMm)),
        ("stroke-dasharray", $"{E(0.5 * letterMm)} {E(0.25 * letterMm)}"));

    private static string E(double v) => SvgCanvas.Exact(v);
}
