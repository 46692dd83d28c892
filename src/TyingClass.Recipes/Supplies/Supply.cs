namespace TyingClass.Recipes.Supplies;

/// <summary>How a thing is bought: by the piece, by the length, or by weight.</summary>
public enum SupplyKind { Hook, Bead, Eyes, Wire, Dressing }

/// <summary>One line of a materials list. Only the amounts that fit its kind are above 0.</summary>
/// <param name="Item">"bead, brass, 3.2 mm".</param>
/// <param name="Pieces">Hooks, beads, cones and pairs of eyes.</param>
/// <param name="Turns">Wire, as the recipes count it.</param>
/// <param name="WireM">Length of that wire, m, nothing for waste.</param>
/// <param name="MassKg">Dressing, kg, nothing for waste.</param>
public sealed record Supply(SupplyKind Kind, string Item, int Pieces, int Turns, double WireM, double MassKg)
{
    /// <summary>The same thing for <paramref name="times"/> as many.</summary>
    public Supply Times(int times) => this with { Pieces = Pieces * times, Turns = Turns * times, WireM = WireM * times, MassKg = MassKg * times };

    internal Supply Plus(Supply other) =>
        this with { Pieces = Pieces + other.Pieces, Turns = Turns + other.Turns, WireM = WireM + other.WireM, MassKg = MassKg + other.MassKg };
}
