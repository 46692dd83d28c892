using System.Diagnostics.CodeAnalysis;
using TyingClass.Recipes.Model;

namespace TyingClass.Recipes.Catalogue;

/// <summary>The generic hook scale. Hook sizes have no objective standard: every figure here is an estimate, and what the tyer measured always wins.</summary>
public static class HookScale
{
    /// <summary>Largest hook on the scale, 6/0, as a size number.</summary>
    public const int LargestNumber = -5;

    /// <summary>Smallest hook on the scale, as a size number.</summary>
    public const int SmallestNumber = 20;

    public static readonly Figure DefaultEyeAngleDeg = new(30, "°", Figure.Estimate);
    public static readonly Figure DefaultJigAngleDeg = new(60, "°", Figure.Estimate);
    public static readonly Figure EyeLegWires = new(1, "× wire", Figure.Estimate);
    public static readonly Figure JigLegWires = new(3.5, "× wire", Figure.Estimate);
    public static readonly Figure RingOuterWires = new(3.5, "× wire", Figure.Estimate);
    public static readonly Figure SpearGapes = new(0.75, "× gape", Figure.Estimate);
    public static readonly Figure RoundDepthGapes = new(0.5, "× gape", Figure.Estimate + ", a semicircle of the gape");
    public static readonly Figure LongDepthGapes = new(0.7, "× gape", Figure.Estimate + ", half an ellipse deeper aft");
    public static readonly Figure SquareDepthGapes = new(0.25, "× gape", Figure.Estimate + ", two quarter circles and a straight");
    public static readonly Figure WireDensity = new(7850, "kg/m³", "engineering handbook tables of metals, carbon steel");

    /// <summary>
    /// Overall length without the eye (shank and half the gape), m: 30.2 - 1.59 n mm down to size 12, then 0.76 mm per number, which leaves a size 20 the 3.7
    /// mm of shank that a caliper finds.
    /// </summary>
    public static double LengthM(double number) => (number <= 12 ? 30.2 - 1.59 * number : 30.2 - 1.59 * 12 - 0.76 * (number - 12)) * 1e-3;

    /// <summary>Gape, m: 12 e^(-0.0745 n) mm.</summary>
    public static double GapeM(double number) => 12e-3 * Math.Exp(-0.0745 * number);

    /// <summary>Wire diameter, m: 1.15 e^(-0.065 n) mm.</summary>
    public static double WireM(double number) => 1.15e-3 * Math.Exp(-0.065 * number);

    /// <summary>Fills in what the recipe left out.</summary>
    /// <exception cref="ArgumentException">The hook cannot be drawn; the message says why and what to do.</exception>
    public static ResolvedHook Resolve(HookSpec spec) =>
        TryResolve(spec, out ResolvedHook? hook, out string? problem) ? hook : throw new ArgumentException(problem, nameof(spec));

    /// <summary>As <see cref="Resolve"/>, with the problem as a sentence for the tyer.</summary>
    public static bool TryResolve(HookSpec spec, [NotNullWhen(true)] out ResolvedHook? hook, [NotNullWhen(false)] out string? problem)
    {
        ArgumentNullException.ThrowIfNull(spec);
        hook = null;
        if (spec.Size is null && (spec.ShankM is null || spec.GapeM is null || spec.WireM is null))
        {
            problem = "The hook needs a size, or its shank, gape and wire all measured.";
            return false;
        }

        int number = spec.Size?.Number ?? 0;
        if (number is < LargestNumber or > SmallestNumber)
        {
            problem = $"Hook size {spec.Size} is off the generic scale, which runs from 6/0 to 20. Give its shank, gape and wire measured instead.";
            return false;
        }

        double gapeM = spec.GapeM ?? GapeM(number);
        double wireM = spec.WireM ?? WireM(number - spec.WireSteps);
        double shankM = spec.ShankM ?? LengthM(number - spec.ShankSteps) - GapeM(number) / 2;
        problem = Problem(shankM, gapeM, wireM);
        if (problem is not null) return false;

        hook = new ResolvedHook(
            shankM, gapeM, wireM, EyeAngleRad(spec),
            (spec.Eye == EyeKind.Jig ? JigLegWires.Value : EyeLegWires.Value) * wireM,
            RingOuterWires.Value * wireM, SpearGapes.Value * gapeM, DepthGapes(spec.Bend).Value * gapeM, spec.Eye, spec.Bend);
        return true;
    }

    internal static Figure DepthGapes(BendKind bend) => bend switch
    {
        BendKind.Long => LongDepthGapes,
        BendKind.Square => SquareDepthGapes,
        _ => RoundDepthGapes,
    };

    private static double EyeAngleRad(HookSpec spec)
    {
        double statedRad = spec.EyeAngleRad
            ?? (spec.Eye == EyeKind.Jig ? DefaultJigAngleDeg : DefaultEyeAngleDeg).Value * Math.PI / 180;
        return spec.Eye switch
        {
            EyeKind.Straight => 0,
            EyeKind.Up => statedRad,
            _ => -statedRad,
        };
    }

    private static string? Problem(double shankM, double gapeM, double wireM) =>
        !(shankM > 0) ? "So short a shank leaves nothing to tie on: take fewer steps short, or give the shank as a length."
        : !(gapeM > 0) ? "The gape must be over 0."
        : !(wireM > 0) ? "The wire must be over 0."
        : wireM * 2 > gapeM ? "The wire is too thick for so small a gape: check both."
        : null;
}
