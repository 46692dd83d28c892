using TyingClass.Recipes.Model;

namespace TyingClass.Recipes.Supplies;

/// <summary>How a thing is bought: by the piece, by the length, or by weight.</summary>
public enum SupplyKind { Hook, Bead, Eyes, Wire, Dressing }

/// <summary>What one asks for in a shop. The same thing is equal, however its size was written.</summary>
/// <param name="What">"bead", "hook, size 8, eye straight", or a dressing's name alone.</param>
public sealed record SupplyItem(string What)
{
    /// <summary>A name of the materials table.</summary>
    public string? Substance { get; init; }

    /// <summary>Where the recipe names no substance.</summary>
    public double? DensityKgM3 { get; init; }

    /// <summary>Of a bead, an eye, a tube or a wire, to the two digits in mm that a packet says; m.</summary>
    public double? SizeM { get; init; }

    /// <summary>Of a tube, likewise.</summary>
    public double? LengthM { get; init; }

    /// <summary>Of a hook: what is asked for of it, without what one hook happened to weigh.</summary>
    public HookSpec? Hook { get; init; }

    /// <summary>"balls 3 steel".</summary>
    public string? With { get; init; }
}

/// <summary>One line of a materials list. Only the amounts that fit its kind are above 0.</summary>
/// <param name="Item">What to ask for.</param>
/// <param name="Pieces">Hooks, beads, cones and pairs of eyes.</param>
/// <param name="Turns">Wire, as the recipes count it.</param>
/// <param name="WireM">Length of that wire, m, nothing for waste.</param>
/// <param name="MassKg">Dressing, kg, nothing for waste.</param>
public sealed record Supply(SupplyKind Kind, SupplyItem Item, int Pieces, int Turns, double WireM, double MassKg)
{
    /// <summary>The same thing for <paramref name="times"/> as many.</summary>
    public Supply Times(int times) => this with { Pieces = Pieces * times, Turns = Turns * times, WireM = WireM * times, MassKg = MassKg * times };

    internal Supply Plus(Supply other) =>
        this with { Pieces = Pieces + other.Pieces, Turns = Turns + other.Turns, WireM = WireM + other.WireM, MassKg = MassKg + other.MassKg };
}
