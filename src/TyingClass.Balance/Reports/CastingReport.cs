using System.Collections.Immutable;

namespace TyingClass.Balance.Reports;

/// <summary>What has to be cast.</summary>
/// <param name="DryG">g.</param>
/// <param name="WetG">With the water it holds, g.</param>
/// <param name="Lines">The wet fly beside each class of line.</param>
public sealed record CastingReport(double DryG, double WetG, ImmutableArray<LineShare> Lines);

/// <param name="Share">Wet fly over the mass of the line's first 30 ft, 0 to more than 1.</param>
public readonly record struct LineShare(int LineNumber, double Share);
