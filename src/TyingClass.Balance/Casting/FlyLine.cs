using System.Collections.Immutable;

namespace TyingClass.Balance.Casting;

/// <summary>One class of the fly-line weight standard.</summary>
/// <param name="Number">1 to 15.</param>
/// <param name="Grains">Nominal mass of the first 30 ft (9.14 m), grains.</param>
/// <param name="ToleranceGrains">Allowed either way, grains.</param>
public readonly record struct FlyLine(int Number, double Grains, double ToleranceGrains)
{
    /// <summary>One grain in kg, exact (international avoirdupois).</summary>
    public const double GrainKg = 64.79891e-6;

    public double MassKg => Grains * GrainKg;

    /// <summary>The fly-line weight standard, grains in the first 30 ft.</summary>
    public static ImmutableArray<FlyLine> All { get; } =
    [
        new(1, 60, 6), new(2, 80, 6), new(3, 100, 6), new(4, 120, 6), new(5, 140, 6),
        new(6, 160, 8), new(7, 185, 8), new(8, 210, 8), new(9, 240, 10), new(10, 280, 10),
        new(11, 330, 12), new(12, 380, 12), new(13, 450, 15), new(14, 500, 15), new(15, 550, 15),
    ];
}
