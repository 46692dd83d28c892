using TyingClass.Recipes.Reports;
using TyingClass.Drawing.Plates;

namespace TyingClass.Drawing;

/// <summary>Pictures of a solved fly as SVG, to scale: the viewBox is in millimeters with the tow point at its origin. Nothing is computed here that a report could say.</summary>
public static class FlyDrawing
{
    /// <summary>From the side, in the attitude it settles in when towed.</summary>
    public static string Side(SolvedFly fly, DrawingOptions options) => new SidePlate(fly, options).ToSvg();
}
