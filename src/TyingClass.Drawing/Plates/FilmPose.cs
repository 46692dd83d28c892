using TyingClass.Balance.Retrieving;
using TyingClass.Drawing.Flies;
using TyingClass.Drawing.Geometry;

namespace TyingClass.Drawing.Plates;

/// <summary>A common scale and ruler of depth for film strips that lie side by side.</summary>
/// <param name="WidthMm">Of the page, mm of the water.</param>
/// <param name="Times">How many times its size a fly is drawn.</param>
/// <param name="TopMm">Depth where what is drawn begins, mm.</param>
/// <param name="BottomMm">Depth where it ends, mm.</param>
internal sealed record FilmScale(double WidthMm, int Times, double TopMm, double BottomMm);

/// <summary>One way a fly looks from the side, turned as it was when drawn.</summary>
/// <param name="Lean">Steps of lean.</param>
/// <param name="Stream">Steps of where its supple stuff streams to.</param>
internal sealed record FilmShape(int Index, int Lean, int Stream, double PitchDeg, Scene Scene);

/// <summary>The fly at one moment.</summary>
/// <param name="At">Its eye, mm on the page.</param>
/// <param name="Covered">Outlines of what it covers there.</param>
internal sealed record FilmPose(RetrievePoint Point, FilmShape Shape, Point At, IReadOnlyList<Point>[] Covered)
{
    public Box Frame { get; } = Covered.SelectMany(o => o).Aggregate(Box.Empty, (box, p) => box.With(p));
}
