using System.Collections.Immutable;
using TyingClass.Balance.Bodies;
using TyingClass.Recipes.Text;
using TyingClass.Telling.Figures;

namespace TyingClass.Telling.Sentences;

/// <summary>Where the mass of a fly sits, and what mass a change moves.</summary>
public static class MassSentence
{
    private const int Told = 3;
    private const double SameKg = 1e-9;
    private const double SameM = 1e-5;

    /// <summary>The heaviest parts and how far each lies behind the front of the shank.</summary>
    /// <param name="except">A part whose mass is asked for and not to be told yet.</param>
    public static string Most(FlyBody body, UnitSystem units, string? except = null)
    {
        ArgumentNullException.ThrowIfNull(body);
        IEnumerable<string> terms = body.Parts.Where(p => p.Name != except && MassKg(p) > 0).OrderByDescending(MassKg).Take(Told)
            .Select(p => $"the {p.Name}, {Sits(p, units)}");
        string head = except is null ? "Most of the mass" : "The other masses";
        return $"{head}, and how far behind the front of the shank it sits: {string.Join("; ", terms)}.";
    }

    /// <summary>What mass was changed, part by part.</summary>
    public static string Change(FlyBody before, FlyBody after, UnitSystem units)
    {
        ArgumentNullException.ThrowIfNull(before);
        ArgumentNullException.ThrowIfNull(after);
        ImmutableArray<string> changes =
        [
            .. after.Parts.Select(now => (now, was: Named(before, now.Name))).Where(p => p.was is null || Differ(p.was, p.now))
                .Select(p => p.was is null
                    ? $"the {p.now.Name} is new: {Sits(p.now, units)}"
                    : $"the {p.now.Name}, from {Sits(p.was, units)} to {Sits(p.now, units)}"),
            .. before.Parts.Where(was => Named(after, was.Name) is null).Select(was => $"the {was.Name}, {Sits(was, units)}, is gone"),
        ];
        return changes.IsEmpty
            ? "No part changes its mass or its place along the shank."
            : $"What changes, with the mass of each part and the place of its own mass center: {string.Join("; ", changes)}.";
    }

    private static string Sits(BodyPart part, UnitSystem units) =>
        $"{Magnitudes.PartMass.Say(MassKg(part), units)} at {Magnitudes.Place.Say(PlaceM(part), units)}";

    private static bool Differ(BodyPart a, BodyPart b) => Math.Abs(MassKg(a) - MassKg(b)) > SameKg || Math.Abs(PlaceM(a) - PlaceM(b)) > SameM;

    private static BodyPart? Named(FlyBody body, string name) => body.Parts.FirstOrDefault(p => p.Name == name);

    private static double MassKg(BodyPart part) => part.Masses.Sum(m => m.MassKg);

    private static double PlaceM(BodyPart part) => MassKg(part) == 0 ? 0 : part.Masses.Sum(m => m.MassKg * m.PositionM.X) / MassKg(part);
}
