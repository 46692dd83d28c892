using TyingClass.Balance.Geometry;
using TyingClass.Recipes.Model;

namespace TyingClass.Recipes.Catalogue;

/// <summary>A hook with every dimension known, m, measured along the wire's center line.</summary>
/// <param name="ShankM">Straight shank, from just behind the eye to the start of the bend.</param>
/// <param name="GapeM">Shank to spear, center to center.</param>
/// <param name="WireM">Wire diameter.</param>
/// <param name="EyeAngleRad">The eye leg above the shank's line: positive up, negative toward the point side (down eyes and jig eyes).</param>
/// <param name="EyeLegM">Wire between the shank's front end and the ring.</param>
/// <param name="RingOuterM">Outer diameter of the eye's ring.</param>
/// <param name="SpearM">Straight run from the end of the bend forward to the point.</param>
/// <param name="BendDepthM">How far the bend reaches behind the shank's end.</param>
public sealed record ResolvedHook(
    double ShankM, double GapeM, double WireM, double EyeAngleRad, double EyeLegM, double RingOuterM,
    double SpearM, double BendDepthM, EyeKind Eye, BendKind Bend)
{
    /// <summary>What the estimates were taken to be: whatever is tied on this hook takes the same.</summary>
    internal Guesses Guesses { get; init; } = Guesses.Usual;

    /// <summary>Radius of the ring's center line, m.</summary>
    public double RingRadiusM => (RingOuterM - WireM) / 2;

    /// <summary>Unit vector along the eye leg, away from the shank.</summary>
    public Vector3D EyeDirection => new(-Math.Cos(EyeAngleRad), 0, Math.Sin(EyeAngleRad));

    /// <summary>Center of the eye's ring, m.</summary>
    public Vector3D TowPointM => (EyeLegM + RingRadiusM) * EyeDirection;

    /// <summary>Where the point stands, m.</summary>
    public Vector3D PointM => new(ShankM - SpearM, 0, -GapeM);
}
