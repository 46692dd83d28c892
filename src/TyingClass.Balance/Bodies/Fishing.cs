using TyingClass.Balance.Fluid;

namespace TyingClass.Balance.Bodies;

/// <summary>How the leader is tied to the eye.</summary>
public enum Knot
{
    /// <summary>A loop: a free hinge.</summary>
    Loop,

    /// <summary>Drawn tight on the eye: the leader leaves along the shank's line and its stiffness turns the fly.</summary>
    Cinched,
}

/// <summary>The last stretch of leader.</summary>
/// <param name="DiameterM">m.</param>
/// <param name="YoungsModulusPa">E, Pa.</param>
/// <param name="DensityKgM3">kg/m³.</param>
public readonly record struct Leader(double DiameterM, double YoungsModulusPa, double DensityKgM3)
{
    /// <summary>Friction along it over that of a smooth wire in laminar flow.</summary>
    public double FrictionFactor { get; init; } = 1;

    /// <summary>Bending stiffness EI with I = π d⁴/64, N·m².</summary>
    public double BendingStiffnessNM2 => YoungsModulusPa * Math.PI * Math.Pow(DiameterM, 4) / 64;
}

/// <summary>The water, the leader, the knot and the speed the fly is fished at.</summary>
/// <param name="SpeedMS">Speed through the water, m/s.</param>
public readonly record struct FishingConditions(Water Water, Leader Leader, Knot Knot, double SpeedMS);
