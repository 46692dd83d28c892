using TyingClass.Balance.Bodies;
using TyingClass.Recipes.Advice;
using TyingClass.Recipes.Model;
using TyingClass.Recipes.Text;
using TyingClass.Telling.Figures;

namespace TyingClass.Telling.Sentences;

/// <summary>What the adviser tells a tyer to do.</summary>
public static class AdviceSentence
{
    // A scale shows no less.
    private const double LeastG = 0.0005;

    /// <summary>"use a hook with its eye straight": no capital, no full stop.</summary>
    public static string Of(Advised advised, UnitSystem units) => advised switch
    {
        AdvisedKnot knot => knot.Knot == Knot.Loop ? "tie it on with a loop knot" : "cinch the knot on the eye",
        AdvisedRetrieve retrieve => WrittenFigures.Instead(Retrieve(retrieve), units),
        AdvisedEye eye => $"use a hook with its eye {Eye(eye.Rad)}",
        AdvisedGape gape => $"use a hook with a gape of {Length(gape.ToM, units)} instead of {Length(gape.FromM, units)}",
        AdvisedSize size => Size(size, units),
        AdvisedMaterial material => $"make the {material.Part} {material.To} instead of {material.From}",
        AdvisedTurns turns => $"wind {turns.To} {(turns.To == 1 ? "turn" : "turns")} instead of {turns.From}",
        AdvisedPlace place =>
            $"tie the {place.Part} {Length(place.ByM, units)} further {(place.Back ? "back" : "forward")}, at {Length(place.AtM, units)}",
        AdvisedSide side => $"tie the {side.Part} {(side.Side == Side.Under ? "under the shank, on the point side" : "on top of the shank")}",
        _ => throw new ArgumentOutOfRangeException(nameof(advised), advised, "The adviser has learned something new: give it a sentence here."),
    };

    /// <summary>Where a fly has more changes than are tried.</summary>
    public static string LeftUntried(int tried, int changes) =>
        $"This fly has so many parts that the adviser tried only {tried} of its {changes} changes. One that it did not try may mend the fly too. "
            + "Take parts out that do little, and ask again.";

    /// <summary>"It adds 0.05 g."</summary>
    /// <param name="addedMassG">In air, dry, g; negative when it gets lighter.</param>
    public static string Cost(double addedMassG, UnitSystem units) => Math.Abs(addedMassG) < LeastG
        ? "It adds no mass."
        : $"It {(addedMassG > 0 ? "adds" : "takes off")} {Magnitudes.AddedMass.Say(Si.G(Math.Abs(addedMassG)), units)}.";

    /// <summary>What a change costs: one of the hand costs nothing, one of the fly its mass and the tying.</summary>
    public static string Cost(Advised advised, double addedMassG, UnitSystem units) =>
        advised is AdvisedRetrieve ? "It costs nothing: the fly stays as it is." : Cost(addedMassG, units);

    private static string Retrieve(AdvisedRetrieve retrieve)
    {
        string instead = retrieve.From.Length > 0 ? $" instead of “{retrieve.From}”" : "";
        return retrieve.Key switch
        {
            "count down" => $"count down {retrieve.To}{(retrieve.From.Length > 0 ? $" instead of {retrieve.From}" : "")}",
            "line" => retrieve.To == "floating" ? "fish it on a floating line" : $"fish it on a line that {retrieve.To}",
            _ => $"retrieve it otherwise: “{retrieve.To}”{instead}",
        };
    }

    private static string Eye(double rad)
    {
        string angle = Stated.Say(Math.Abs(rad), Dimension.Angle, UnitSystem.Metric);
        return angle == "0°" ? "straight" : $"{(rad > 0 ? "up" : "down")} {angle}";
    }

    // As it is sold: beads and eyes in sixty-fourths of an inch for a reader of inches, pairs of eyes in fractions of an ounce for everybody.
    private static string Size(AdvisedSize size, UnitSystem units)
    {
        string noun = size.By switch { BoughtBy.Size => "size", BoughtBy.PairWeight => "pair", _ => "lump" };
        return $"use a {Sold(size.ToSi)} {noun} of {size.Part} instead of {Sold(size.FromSi)}";

        string Sold(double si) => size.By switch
        {
            BoughtBy.Size => Stated.SaySizeToBuy(si, units),
            BoughtBy.PairWeight => Stated.SayWeightToBuy(si, UnitSystem.Imperial),
            _ => Stated.Say(si, Dimension.Mass, units),
        };
    }

    private static string Length(double m, UnitSystem units) => Stated.Say(m, Dimension.Length, units);
}
