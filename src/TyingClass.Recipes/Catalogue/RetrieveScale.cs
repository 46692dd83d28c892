using System.Collections.Immutable;
using TyingClass.Balance.Bodies;
using TyingClass.Balance.Casting;
using TyingClass.Balance.Fluid;
using TyingClass.Balance.Retrieving;

namespace TyingClass.Recipes.Catalogue;

/// <summary>How a fly is retrieved when the recipe does not say, the retrieves that have a name, and what fly lines are made of.</summary>
public static class RetrieveScale
{
    public static readonly Figure Repeat = new(8, "1", Figure.Estimate);
    public static readonly Figure CountDown = new(5, "s", Figure.Estimate);
    public static readonly Figure LineOut = new(12, "m", Figure.Estimate);
    public static readonly Figure LeaderLength = new(2.7, "m", "estimate, nine feet, common practice");
    public static readonly Figure RodTip = new(0.1, "m", Figure.Estimate);
    public static readonly Figure LineNumber = new(6, "1", Figure.Estimate);

    /// <summary>Of a floating line.</summary>
    public static readonly Figure FloatingDensity = new(870, "kg/m³", "estimate, a coat with tiny hollow balls in it");
    public static readonly Figure LineStiffness = new(300, "N", "estimate, an arm's length of line gives a few millimeters to a hard pull");
    public static readonly Figure LineFriction = new(
        2, "× laminar", "estimate, two to three times a smooth plate's in tow tests, ASME FEDSM2002-31298; coat, loops and ripples");

    /// <summary>The mass of a line is that of its number; the first 30 ft of the fly-line weight standard.</summary>
    private const double StandardLengthM = 9.144;

    /// <summary>Named by what the hand does.</summary>
    public static ImmutableArray<(string Name, ImmutableArray<RetrieveStep> Round)> Named { get; } =
    [
        ("strip and pause", [new(0.3, 0.5), new(0, 1.5)]),
        ("short strips, long pauses", [new(0.1, 0.3), new(0, 2)]),
        ("short strips, short pauses", [new(0.1, 0.3), new(0, 0.6)]),
        ("long strips, long pauses", [new(0.45, 0.7), new(0, 2.5)]),
        ("long strips, short pauses", [new(0.45, 0.7), new(0, 0.8)]),
        ("two quick strips, one pause", [new(0.15, 0.2), new(0, 0.2), new(0.15, 0.2), new(0, 2)]),
        ("twitches", [new(0.05, 0.1), new(0, 0.8)]),
        ("slow creep", [new(0.08, 2), new(0, 1)]),
        ("steady draw", [new(0.6, 3)]),
        ("hand over hand", [new(0.3, 0.5)]),
        ("lift and drop", [new(0.8, 1.5), new(0, 3)]),
        ("fast darts", [new(0.4, 0.25), new(0, 0.5)]),
        ("uneven strips", [new(0.1, 0.3), new(0, 0.5), new(0.3, 0.4), new(0, 2), new(0.15, 0.3), new(0, 1)]),
    ];

    public static ImmutableArray<RetrieveStep>? Find(string name) =>
        Named.FirstOrDefault(n => n.Name == name).Round is { IsDefault: false } round ? round : null;

    /// <summary>The line of <see cref="LineNumber"/> that sinks at this rate; 0 floats.</summary>
    /// <remarks>A level line falls broadside at s when (m - ρπd²/4) g = ½ρ C(Re) d s²; of a given mass the thinner sinks faster.</remarks>
    public static RunningLine Line(double sinkMS, Water water)
    {
        double massKgM = FlyLine.All[(int)LineNumber.Value - 1].MassKg / StandardLengthM;
        double floating = Thickness(FloatingDensity.Value), high = Thickness(water.DensityKgM3), low = high / 4;
        for (int i = 0; i < 60; i++)
        {
            double middle = (low + high) / 2;
            (low, high) = Spare(middle) > 0 ? (middle, high) : (low, middle);
        }

        return new RunningLine(massKgM, sinkMS > 0 ? low : floating, LineStiffness.Value, LineFriction.Value);

        double Thickness(double densityKgM3) => Math.Sqrt(4 * massKgM / (Math.PI * densityKgM3));
        double Spare(double d) => Standard.GravityMS2 * (massKgM - water.DensityKgM3 * Math.PI / 4 * d * d)
            - water.DensityKgM3 / 2 * CylinderDrag.CrossFlow(Math.Max(1e-3, sinkMS * d * water.DensityKgM3 / water.ViscosityPaS)) * d * sinkMS * sinkMS;
    }
}
