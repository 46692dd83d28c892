using TyingClass.Balance.Bodies;
using TyingClass.Recipes.Model;

namespace TyingClass.Recipes.Advice;

/// <summary>What the adviser tells a tyer to do, as figures: Telling writes the sentence.</summary>
public abstract record Advised;

public sealed record AdvisedKnot(Knot Knot) : Advised;

/// <summary>Another way to fish it; the fly stays as it is.</summary>
/// <param name="Key">"retrieve", "count down", "line".</param>
/// <param name="To">As the recipe would state it.</param>
public sealed record AdvisedRetrieve(string Key, string To, string From) : Advised;

/// <param name="Rad">From the shank's line, up positive; 0 straight.</param>
public sealed record AdvisedEye(double Rad) : Advised;

public sealed record AdvisedGape(double ToM, double FromM) : Advised;

/// <summary>How a part is bought in another size: by its length, as a pair by weight, as a lump by weight.</summary>
public enum BoughtBy { Size, PairWeight, LumpMass }

/// <param name="ToSi">m of a size, kg of a weight.</param>
public sealed record AdvisedSize(string Part, BoughtBy By, double ToSi, double FromSi) : Advised;

public sealed record AdvisedMaterial(string Part, string To, string From) : Advised;

public sealed record AdvisedTurns(int To, int From) : Advised;

/// <param name="ByM">How far, above 0.</param>
/// <param name="AtM">Where its front edge comes to stand, from the front of the shank.</param>
public sealed record AdvisedPlace(string Part, double ByM, bool Back, double AtM) : Advised;

public sealed record AdvisedSide(string Part, Side Side) : Advised;
