using System.Collections.Immutable;
using TyingClass.Recipes.Catalogue;

namespace TyingClass.Recipes.Bodies;

/// <summary>A stretch of the fly of circular section about the shank: the bare shank itself (owner -1), or the part of that index.</summary>
/// <param name="IsSeat">What is tied over it sits on it.</param>
/// <param name="IsWound">Wraps, which wire wound over them lies upon.</param>
internal readonly record struct Sheath(int Owner, double FrontM, double RearM, double DiameterM, bool IsSeat, bool IsWound = false)
{
    public Outline Outline { get; init; }

    /// <summary>Share of a solid body's side force that is left where water goes through.</summary>
    public double Tight { get; init; } = 1;
}

/// <summary>Which sheath the water meets where: at every place the widest, the later one of equals.</summary>
internal sealed class Sheaths(ImmutableArray<Sheath> all)
{
    /// <summary>Shorter leftovers are rounding, not fly.</summary>
    private const double ShortestM = 1e-9;

    private RoundProfile? _round;

    /// <summary>All of them as the one round body they are to water that flows askew.</summary>
    /// <param name="hook">The one they are tied on.</param>
    public RoundProfile Round(ResolvedHook hook) => _round ??= new RoundProfile(all, this, hook);

    /// <summary>The stretches of one sheath that no wider one hides, front to rear.</summary>
    public IEnumerable<(double FrontM, double RearM)> ExposedRuns(int owner)
    {
        Sheath own = all.First(s => s.Owner == owner);
        double frontM = own.FrontM;
        foreach (Sheath hiding in all.Where(s => Hides(s, own)).OrderBy(s => s.FrontM))
        {
            double stopM = Math.Min(hiding.FrontM, own.RearM);
            if (stopM - frontM > ShortestM) yield return (frontM, stopM);
            frontM = Math.Max(frontM, hiding.RearM);
        }

        if (own.RearM - frontM > ShortestM) yield return (frontM, own.RearM);
    }

    /// <summary>
    /// Share of a section of this diameter, starting at <paramref name="frontM"/>, that no part in front of it shelters, 0 to 1. Shelter fades with the gap
    /// between them.
    /// </summary>
    /// <param name="reach"><see cref="PartScale.ShelterReach"/>.</param>
    public double ProudShare(double frontM, double diameterM, double reach)
    {
        double shelteredM2 = all.Where(s => s.FrontM < frontM - ShortestM)
            .Select(s => s.DiameterM * s.DiameterM * Math.Exp(-Math.Max(0, frontM - s.RearM) / (reach * s.DiameterM)))
            .DefaultIfEmpty(0).Max();
        return Math.Max(0, 1 - shelteredM2 / (diameterM * diameterM));
    }

    /// <summary>Radius of what a part tied in over this stretch sits on: the widest thing tied before it. Beads and cones are no seat.</summary>
    public double SeatRadiusM(int owner, double frontM, double rearM) =>
        all.Where(s => s.IsSeat && s.Owner < owner && s.FrontM < rearM && s.RearM > frontM || s.Owner == -1).Max(s => s.DiameterM) / 2;

    /// <summary>Diameter that wire is wound on over this stretch: the shank, or the wraps already there. Loose dressing gives way under the wire.</summary>
    public double CoreDiameterM(int owner, double frontM, double rearM) =>
        all.Where(s => s.IsWound && s.Owner < owner && s.FrontM < rearM - ShortestM && s.RearM > frontM + ShortestM || s.Owner == -1).Max(s => s.DiameterM);

    /// <summary>Volume inside this stretch already taken by what was tied before, m³.</summary>
    public double FilledVolumeM3(int owner, double frontM, double rearM)
    {
        ImmutableArray<Sheath> inner = [.. all.Where(s => s.Owner < owner && s.FrontM < rearM && s.RearM > frontM)];
        double[] cuts = [.. inner.SelectMany(s => new[] { s.FrontM, s.RearM }).Append(frontM).Append(rearM)
            .Where(x => x >= frontM && x <= rearM).Distinct().Order()];
        double volumeM3 = 0;
        foreach ((double from, double to) in cuts.Zip(cuts.Skip(1)))
        {
            double middle = (from + to) / 2;
            double widestM = inner.Where(s => s.FrontM < middle && s.RearM > middle).Select(s => s.DiameterM).DefaultIfEmpty(0).Max();
            volumeM3 += Math.PI / 4 * widestM * widestM * (to - from);
        }

        return volumeM3;
    }

    private static bool Hides(Sheath other, Sheath own) =>
        other.Owner != own.Owner && other.FrontM < own.RearM && other.RearM > own.FrontM
        && (other.DiameterM > own.DiameterM || (other.DiameterM == own.DiameterM && other.Owner > own.Owner));
}
