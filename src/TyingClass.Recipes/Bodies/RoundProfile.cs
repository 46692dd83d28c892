using System.Collections.Immutable;
using TyingClass.Balance.Bodies;
using TyingClass.Balance.Fluid;
using TyingClass.Balance.Geometry;
using TyingClass.Recipes.Catalogue;

namespace TyingClass.Recipes.Bodies;

/// <summary>
/// All that is wound or threaded round the shank, as the slender round body that water flowing askew meets: its section S(x), from bead or cone through the
/// dressing. Every step of S belongs to the wider of the two parts it lies between.
/// </summary>
/// <remarks>What touches is one body, with the slenderness of the whole. Across a gap that fades as shelter does, by e^(-gap/diameter): a gap of a tenth of a
/// millimeter decides nothing. docs/formulas-body.md#side-force</remarks>
internal sealed class RoundProfile
{
    private readonly ImmutableArray<Stretch> _stretches;
    private readonly double[] _links;
    private readonly double _rearShare;

    public RoundProfile(ImmutableArray<Sheath> all, Sheaths sheaths, ResolvedHook hook)
    {
        _rearShare = hook.Guesses.Of(PartScale.RearShare);
        double nose = Parts.Cone.NoseM(1, hook), reach = hook.Guesses.Of(PartScale.ShelterReach);
        (Sheath Sheath, double FrontM, double RearM)[] runs =
        [
            .. all.Where(s => s.Owner >= 0).SelectMany(s => sheaths.ExposedRuns(s.Owner).Select(r => (s, r.FrontM, r.RearM))).OrderBy(r => r.FrontM),
        ];
        _links = [.. runs.Zip(runs.Skip(1), (a, b) => Link((b.FrontM - a.RearM) / (reach * Math.Max(a.Sheath.DiameterM, b.Sheath.DiameterM))))];
        _stretches = [.. runs.Select((r, i) => new Stretch(r.Sheath, r.FrontM, r.RearM, LambInertia.SideShare(Slenderness(runs, i)) * r.Sheath.Tight, nose))];
    }

    /// <summary>The steps that belong to one part.</summary>
    public IEnumerable<SideForceElement> Steps(int owner)
    {
        for (int i = 0; i < _stretches.Length; i++)
        {
            Stretch own = _stretches[i];
            if (own.Sheath.Owner != owner || own.StrengthM2 == 0) continue;
            double before = i == 0 ? 0 : Between(i - 1) / own.StrengthM2, after = i == _links.Length ? 0 : Between(i) / own.StrengthM2;
            if (before < 1) yield return Step(own.FrontCentroidM(before), 1 - before);
            if (after < 1) yield return Step(own.RearCentroidM(after), after - 1);

            // Shorter than wide, the whole turns as a lens does, by a couple alone (SideForceElement.Rod).
            SideForceElement Step(double atM, double share) => own.StrengthM2 > 0
                ? SideForceElement.Round(new(atM, 0, 0), Vector3D.UnitX, share * own.StrengthM2, _rearShare)
                : SideForceElement.Round(new(atM, 0, 0), Vector3D.UnitX, share * own.StrengthM2 * (1 + _rearShare) / 2, 1);
        }
    }

    // What pushes water aside in the gap behind a stretch, m²: as much as at the lesser of its neighbors, faded.
    private double Between(int gap)
    {
        double front = _stretches[gap].StrengthM2, rear = _stretches[gap + 1].StrengthM2;
        return front * rear > 0 ? _links[gap] * (Math.Abs(front) < Math.Abs(rear) ? front : rear) : 0;
    }

    private static double Link(double reaches) => Math.Exp(-Math.Max(0, reaches));

    private double Slenderness((Sheath Sheath, double FrontM, double RearM)[] runs, int at)
    {
        double lengthM = 0, widthM = 0;
        foreach (int way in (ReadOnlySpan<int>)[1, -1])
        {
            double linked = 1;
            // The stretch itself once, then its neighbors one way and the other.
            for (int i = way == 1 ? at : at - 1; i >= 0 && i < runs.Length; i += way)
            {
                if (i != at) linked *= _links[way == 1 ? i - 1 : i];
                (Sheath sheath, double frontM, double rearM) = runs[i];
                lengthM += linked * (sheath.Outline == Outline.Ball ? sheath.DiameterM : rearM - frontM);
                widthM = Math.Max(widthM, linked * sheath.DiameterM);
            }
        }

        return lengthM / widthM;
    }
}
