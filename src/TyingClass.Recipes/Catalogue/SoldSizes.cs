using System.Collections.Immutable;

namespace TyingClass.Recipes.Catalogue;

/// <summary>Sizes of beads, cones and dumbbell eyes that shops sell: by 1/64 in below 1/8 in, by 1/32 in above (common practice, no source).</summary>
public static class SoldSizes
{
    private const double HalfTenthM = 0.05e-3;

    /// <summary>From 5/64 in to 1/4 in.</summary>
    public static ImmutableArray<double> ExactM { get; } = [1.98e-3, 2.38e-3, 2.78e-3, 3.18e-3, 3.97e-3, 4.76e-3, 5.56e-3, 6.35e-3];

    /// <summary>The same to the tenth of a millimeter, as a packet in millimeters says it.</summary>
    public static ImmutableArray<double> PacketM { get; } = [2.0e-3, 2.4e-3, 2.8e-3, 3.2e-3, 4.0e-3, 4.8e-3, 5.6e-3, 6.4e-3];

    /// <summary>What packets say from one size to another.</summary>
    public static ImmutableArray<double> Between(double lowM, double highM) => [.. PacketM.Where(m => m > lowM - HalfTenthM && m < highM + HalfTenthM)];
}
