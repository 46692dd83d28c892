using TyingClass.Drawing.Plates;
using TyingClass.Recipes.Reports;

namespace TyingClass.Drawing;

/// <summary>Pictures of a solved fly as SVG, to scale: the viewBox is in millimeters with the tow point at its origin. Nothing is computed here that the report could say.</summary>
public static class FlyDrawing
{
    /// <summary>From the side, in the attitude it settles in when towed.</summary>
    /// <exception cref="ArgumentException">An option out of range.</exception>
    public static string Side(SolvedFly fly, DrawingOptions options) => new SidePlate(fly, options).ToSvg();

    /// <summary>From ahead along the shank, at the lean it settles in.</summary>
    /// <exception cref="ArgumentException">An option out of range.</exception>
    public static string Front(SolvedFly fly, DrawingOptions options) => new FrontPlate(fly, options).ToSvg();

    /// <summary>Hung dry from its eye against a plumb line.</summary>
    /// <exception cref="ArgumentException">An option out of range.</exception>
    public static string Hang(SolvedFly fly, DrawingOptions options) => new HangPlate(fly, options).ToSvg();

    /// <summary>As it sits in the vise, shank level, without any mark of how it swims.</summary>
    /// <exception cref="ArgumentException">An option out of range.</exception>
    public static string Vise(SolvedFly fly, DrawingOptions options) => new VisePlate(fly, options).ToSvg();

    /// <summary>Two side views to one scale, the first above the second.</summary>
    /// <exception cref="ArgumentException">An option out of range.</exception>
    public static string BeforeAfter(SolvedFly before, SolvedFly after, DrawingOptions options) => new PairPlate(before, after, options).ToSvg();
}
