using System.Collections.Immutable;

namespace TyingClass.Balance.Casting;

/// <summary>One class of the fly-line weight standard.</summary>
/// <param name="Number">1 to 15.</param>
/// <param name="Grains">Nominal mass of the first 30 ft (9.14 m), grains.</param>
public readonly record struct FlyLine(int Number, double Grains)
{
    /// <summary>One grain in kg, exact (international avoirdupois).</summary>
    public const double GrainKg = 64.79891e-6;

    public double MassKg => Grains * GrainKg;

    /// <summary>The fly-line weight standard, grains in the first 30 ft.</summary>
    public static ImmutableArray<FlyLine> All { get; } =
    [
        new(1, 60), new(2, 80), new(3, 100), new(4, 120), new(5, 140),
        new(6, 160), new(7, 185), new(8, 210), new(9, 240), new(10, 280),
        new(11, 330), new(12, 380), new(13, 450), new(14, 500), new(15, 550),
    ];
}
