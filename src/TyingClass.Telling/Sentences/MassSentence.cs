using TyingClass.Balance.Bodies;
using TyingClass.Recipes.Text;
using TyingClass.Telling.Figures;

namespace TyingClass.Telling.Sentences;

/// <summary>Where the mass of a fly sits.</summary>
public static class MassSentence
{
    private const int Told = 3;

    /// <summary>The heaviest parts and how far each lies behind the front of the shank.</summary>
    /// <param name="except">A part whose mass is asked for and not to be told yet.</param>
    /// <param name="withPlaces">False where only what they weigh is asked about.</param>
    public static string Most(FlyBody body, UnitSystem units, string? except = null, bool withPlaces = true)
    {
        ArgumentNullException.ThrowIfNull(body);
        IEnumerable<string> terms = body.Parts.Where(p => p.Name != except && MassKg(p) > 0).OrderByDescending(MassKg).Take(Told)
            .Select(p => $"the {p.Name}, {(withPlaces ? Sits(p, units) : Magnitudes.PartMass.Say(MassKg(p), units))}");
        string head = except is null ? "Most of the mass" : "The other masses";
        if (!withPlaces) return $"{head}, dry: {string.Join("; ", terms)}.";
        return $"{head}, and how far behind the front of the shank it sits: {string.Join("; ", terms)}.";
    }

    private static string Sits(BodyPart part, UnitSystem units) =>
        $"{Magnitudes.PartMass.Say(MassKg(part), units)} at {Magnitudes.Place.Say(PlaceM(part), units)}";

    private static double MassKg(BodyPart part) => part.Masses.Sum(m => m.MassKg);

    private static double PlaceM(BodyPart part) => MassKg(part) == 0 ? 0 : part.Masses.Sum(m => m.MassKg * m.PositionM.X) / MassKg(part);
}
