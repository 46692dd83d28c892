using System.Collections.Immutable;

namespace TyingClass.Balance.Doubting;

/// <summary>What the guesses leave open of the soaked fly's curves. Nine draws in ten lie within, at each place on its own.</summary>
/// <param name="BySpeed">Slowest first.</param>
/// <param name="ByTime">On a slack line, from rest; empty where too few draws sink.</param>
public sealed record DoubtBands(ImmutableArray<SpeedBand> BySpeed, ImmutableArray<DepthBand> ByTime);

/// <param name="KeelHeightMm">Null when fewer than nine draws in ten have one.</param>
public readonly record struct SpeedBand(double SpeedMS, Interval? KeelHeightMm, Interval? PitchDeg);

/// <param name="DepthM">Below the start.</param>
public readonly record struct DepthBand(double TimeS, Interval DepthM);
