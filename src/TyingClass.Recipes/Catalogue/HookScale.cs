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

    public static readonly Figure ShankOfScale =
        Figure.Guess("hook shank by the scale", 1, "× scale", 0.92, 1.08, "makers differ by a size up or down, common practice");
    public static readonly Figure GapeOfScale =
        Figure.Guess("hook gape by the scale", 1, "× scale", 0.92, 1.08, "makers differ by a size up or down, common practice");
    public static readonly Figure WireOfScale =
        Figure.Guess("hook wire by the scale", 1, "× scale", 0.9, 1.1, "a wire one step lighter or heavier than its name, common practice");
    public static readonly Figure DefaultEyeAngleDeg = Figure.Guess("eye angle, up and down eyes", 30, "°", 20, 40, "makes differ");
    public static readonly Figure DefaultJigAngleDeg = Figure.Guess("eye angle, jig eyes", 60, "°", 45, 90, "jig hooks are sold bent by 45°, 60° and 90°");
    public static readonly Figure EyeLegWires = Figure.Guess("eye leg", 1, "× wire", 0.5, 2, "makes differ");
    public static readonly Figure JigLegWires = Figure.Guess("eye leg of a jig hook", 3.5, "× wire", 2.5, 5, "makes differ");
    public static readonly Figure RingOuterWires = Figure.Guess("eye ring, outside", 3.5, "× wire", 3, 4, "makes differ");
    public static readonly Figure SpearGapes = Figure.Guess("spear", 0.75, "× gape", 0.6, 1, "short and long points");
    public static readonly Figure RoundDepthGapes =
        Figure.Guess("depth of a round bend", 0.5, "× gape", 0.42, 0.6, "a semicircle of the gape; few bends are exact ones");
    public static readonly Figure LongDepthGapes = Figure.Guess("depth of a long bend", 0.7, "× gape", 0.6, 0.85, "half an ellipse deeper aft");
    public static readonly Figure SquareDepthGapes = Figure.Guess("depth of a square bend", 0.25, "× gape", 0.18, 0.35, "two quarter circles and a straight");
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

    internal static IEnumerable<Figure> Estimates =>
    [
        ShankOfScale, GapeOfScale, WireOfScale, DefaultEyeAngleDeg, DefaultJigAngleDeg, EyeLegWires, JigLegWires, RingOuterWires, SpearGapes,
        RoundDepthGapes, LongDepthGapes, SquareDepthGapes,
    ];

    /// <summary>Fills in what the recipe left out.</summary>
    /// <exception cref="ArgumentException">The hook cannot be drawn; the message says why and what to do.</exception>
    public static ResolvedHook Resolve(HookSpec spec, Guesses? guesses = null) =>
        TryResolve(spec, guesses ?? Guesses.Usual, out ResolvedHook? hook, out string? problem) ? hook : throw new ArgumentException(problem, nameof(spec));

    /// <summary>As <see cref="Resolve"/>, with the problem as a sentence for the tyer.</summary>
    public static bool TryResolve(HookSpec spec, [NotNullWhen(true)] out ResolvedHook? hook, [NotNullWhen(false)] out string? problem) =>
        TryResolve(spec, Guesses.Usual, out hook, out problem);

    private static bool TryResolve(
        HookSpec spec, Guesses guesses, [NotNullWhen(true)] out ResolvedHook? hook, [NotNullWhen(false)] out string? problem)
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

        double gapeM = spec.GapeM ?? guesses.Of(GapeOfScale) * GapeM(number);
        double wireM = spec.WireM ?? guesses.Of(WireOfScale) * WireM(number - spec.WireSteps);
        double shankM = spec.ShankM ?? guesses.Of(ShankOfScale) * (LengthM(number - spec.ShankSteps) - GapeM(number) / 2);
        problem = Problem(shankM, gapeM, wireM);
        if (problem is not null) return false;

        hook = new ResolvedHook(
            shankM, gapeM, wireM, EyeAngleRad(spec, guesses),
            guesses.Of(spec.Eye == EyeKind.Jig ? JigLegWires : EyeLegWires) * wireM,
            guesses.Of(RingOuterWires) * wireM, guesses.Of(SpearGapes) * gapeM, guesses.Of(DepthGapes(spec.Bend)) * gapeM, spec.Eye, spec.Bend)
        {
            Guesses = guesses,
        };
        return true;
    }

    internal static Figure DepthGapes(BendKind bend) => bend switch
    {
        BendKind.Long => LongDepthGapes,
        BendKind.Square => SquareDepthGapes,
        _ => RoundDepthGapes,
    };

    private static double EyeAngleRad(HookSpec spec, Guesses guesses)
    {
        if (spec.Eye == EyeKind.Straight) return 0;
        double angleRad = spec.EyeAngleRad ?? guesses.Of(spec.Eye == EyeKind.Jig ? DefaultJigAngleDeg : DefaultEyeAngleDeg) * Math.PI / 180;
        return spec.Eye == EyeKind.Up ? angleRad : -angleRad;
    }

    private static string? Problem(double shankM, double gapeM, double wireM) =>
        !(shankM > 0) ? "So short a shank leaves nothing to tie on: take fewer steps short, or give the shank as a length."
        : !(gapeM > 0) ? "The gape must be over 0."
        : !(wireM > 0) ? "The wire must be over 0."
        : wireM * 2 > gapeM ? "The wire is too thick for so small a gape: check both."
        : null;
}
