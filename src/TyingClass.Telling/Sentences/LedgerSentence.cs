using TyingClass.Balance.Bodies;
using TyingClass.Balance.Geometry;
using TyingClass.Balance.Reports;
using TyingClass.Recipes.Reports;
using TyingClass.Recipes.Text;
using TyingClass.Telling.Figures;

namespace TyingClass.Telling.Sentences;

/// <summary>The ledger counts two things of each part, its weight in water and the water's pull on it, and shows their sum.</summary>
public static class LedgerSentence
{
    // A figure that is told as none needs no word.
    private const double LeastGmm = 0.05;

    /// <summary>"What stands here of the weed guard (−0.96 g·mm) is mostly the pull of the water on it …" Empty for none.</summary>
    /// <remarks>Only where it is certain, because the weight can make up less than half of it.</remarks>
    public static string ByWater(SolvedFly fly, StateReport state, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(fly);
        ArgumentNullException.ThrowIfNull(state);
        string[] parts =
            [.. PulledByWater(fly, state).Select(e => $"the {e.Part} ({Magnitudes.KeelMoment.SaySigned(Si.Gmm(e.KeelMomentGmm), units)})")];
        return parts.Length switch
        {
            0 => "",
            1 => $"What stands here of {parts[0]} is mostly the pull of the water on it: its weight alone could not do that much.",
            _ => $"What stands here of {Grammar.And(parts)} is mostly the pull of the water on them: their weight alone could not do that much.",
        };
    }

    /// <summary>Entries that weight makes up less than half of: drag and side force do the rest.</summary>
    public static IEnumerable<LedgerEntry> PulledByWater(SolvedFly fly, StateReport state)
    {
        ArgumentNullException.ThrowIfNull(fly);
        ArgumentNullException.ThrowIfNull(state);
        return state.Ledger.Where(e => Math.Abs(e.KeelMomentGmm) >= LeastGmm && Part(fly.Built.Body, e.Part) is { } part
            && Math.Abs(e.KeelMomentGmm) > 2 * MostByWeightGmm(part, fly, state));
    }

    private static BodyPart? Part(FlyBody body, string name) => body.Parts.FirstOrDefault(p => p.Name == name);

    // No weight has a greater moment about a line through the eye than its first moment about the eye itself; g·mm.
    private static double MostByWeightGmm(BodyPart part, SolvedFly fly, StateReport state)
    {
        double densityKgM3 = fly.Built.Conditions.Water.DensityKgM3, soakS = state.SoakS ?? double.PositiveInfinity;
        Vector3D eye = fly.Built.Body.TowPointM, sumKgM = Vector3D.Zero;
        foreach (MassElement m in part.Masses) sumKgM += m.MassKg * (m.PositionM - eye);
        foreach (VolumeElement v in part.Solids) sumKgM -= densityKgM3 * v.VolumeM3 * (v.PositionM - eye);
        foreach (AirElement a in part.Air) sumKgM -= densityKgM3 * a.VolumeM3(soakS) * (a.PositionM - eye);
        return 1e6 * sumKgM.Length;
    }
}
