using System.Collections.Immutable;
using TyingClass.Balance.Bodies;
using TyingClass.Balance.Fluid;

namespace TyingClass.Balance.Retrieving;

/// <summary>One straight piece of line or leader.</summary>
/// <param name="RestM">Length when nothing pulls, m.</param>
/// <param name="StiffnessN">Pull over stretch EA, N.</param>
internal sealed record LinePiece(double RestM, double MassKgM, double DiameterM, double StiffnessN)
{
    /// <summary>EI, N·m²; 0 for the line.</summary>
    public double BendingNM2 { get; init; }

    /// <summary>Friction along it, per length over speed, N·s/m².</summary>
    public required double FrictionNSM2 { get; init; }
}

/// <summary>Line and leader cut into pieces, short ones at the fly, where they bend most.</summary>
internal static class LineLayout
{
    private const double ShortestM = 0.15, LongestM = 1.2, Growth = 1.3;

    // Drawn in and let lie by turns, a line never has the thick layer of slowed water about it that one towed for ever has: its layer is as old as a strip.
    private const double LayerS = 0.5;

    /// <param name="refinement">Divides the length of every piece; 1 is as used.</param>
    /// <returns>From the rod tip to the fly.</returns>
    public static ImmutableArray<LinePiece> Of(RetrievePlan plan, Leader leader, Water water, double refinement = 1)
    {
        double lineM = plan.LineOutM - plan.LeaderM, area = Math.PI / 4 * leader.DiameterM * leader.DiameterM;
        LinePiece ofLeader = new(0, area * leader.DensityKgM3, leader.DiameterM, leader.YoungsModulusPa * area)
        {
            BendingNM2 = leader.BendingStiffnessNM2,
            FrictionNSM2 = leader.FrictionFactor * FrictionNSM2(water, leader.DiameterM),
        };
        LinePiece ofLine = new(0, plan.Line.MassKgM, plan.Line.DiameterM, plan.Line.StiffnessN)
        {
            FrictionNSM2 = plan.Line.FrictionFactor * FrictionNSM2(water, plan.Line.DiameterM),
        };
        List<LinePiece> fromFly = [];
        double next = ShortestM / refinement;
        Cut(fromFly, ofLeader, plan.LeaderM, ref next, refinement);
        Cut(fromFly, ofLine, lineM, ref next, refinement);
        fromFly.Reverse();
        return [.. fromFly];
    }

    // The layer that grows along a wire in x is as thick as that which grows in x/U on one that has just begun to move; laminar friction is then as the speed.
    private static double FrictionNSM2(Water water, double diameterM) => LeaderFriction.ForceN(water, diameterM, LayerS, 1) / LayerS;

    private static void Cut(List<LinePiece> pieces, LinePiece like, double wholeM, ref double next, double refinement)
    {
        if (!(wholeM > 0)) return;
        List<double> lengths = [];
        double sum = 0;
        while (sum < wholeM)
        {
            lengths.Add(next);
            sum += next;
            next = Math.Min(next * Growth, LongestM / refinement);
        }

        foreach (double length in lengths) pieces.Add(like with { RestM = length * wholeM / sum });
    }
}
