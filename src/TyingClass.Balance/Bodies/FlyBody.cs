using System.Collections.Immutable;
using TyingClass.Balance.Geometry;

namespace TyingClass.Balance.Bodies;

/// <summary>A fly as the balance engine sees it: parts made of small elements, and the place the leader pulls from.</summary>
/// <param name="Parts">Hook first, then the parts in tying order. Names are unique.</param>
/// <param name="TowPointM">Center of the eye's ring, hook frame, m.</param>
/// <param name="ShankLengthM">Straight shank, m, over 0: the yardstick of residuals.</param>
/// <param name="Intent">How it is meant to ride.</param>
public sealed record FlyBody(ImmutableArray<BodyPart> Parts, Vector3D TowPointM, double ShankLengthM, Intent Intent);
