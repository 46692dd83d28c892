using System.Globalization;
using MathNet.Numerics.RootFinding;
using TyingClass.Balance.Bodies;
using TyingClass.Balance.Reports;
using TyingClass.Recipes.Bodies;
using TyingClass.Recipes.Catalogue;
using TyingClass.Recipes.Model;
using TyingClass.Recipes.Text;

namespace TyingClass.Recipes.Measured;

/// <summary>A recipe brought into line with what was measured at the fly that was tied by it.</summary>
/// <param name="RecipeText">Null when it cannot be done.</param>
/// <param name="Said">What was done, to be kept with the revision; or why it cannot be done, and what to look at instead.</param>
public sealed record TakeOver(string? RecipeText, string Said)
{
    private const int Digits = 4;

    // The widest the recipe format takes; docs/recipes.md.
    private const double LeastDensityKgM3 = 10;

    /// <summary>Puts the hook at the mass that makes the whole fly as heavy as it was weighed: every other part is taken as stated.</summary>
    /// <param name="recipeText">A recipe that parses.</param>
    /// <param name="flyMassKg">Dry, as weighed.</param>
    public static TakeOver HookMass(string recipeText, double flyMassKg, UnitSystem units = UnitSystem.Metric)
    {
        FlyBody body = FlyBuilder.Build(Parse(recipeText)).Body;
        double hookKg = MassKg(body.Parts[0]), othersKg = body.Parts.Sum(MassKg) - hookKg, wantedKg = flyMassKg - othersKg;
        string others = Say(othersKg, Dimension.Mass, units), weighed = Say(flyMassKg, Dimension.Mass, units);
        // A tenth and ten times the drawn hook: beyond that it is another part that is off, or the scale.
        if (!(wantedKg >= 0.1 * hookKg && wantedKg <= 10 * hookKg))
        {
            return new TakeOver(null, wantedKg <= 0
                ? $"The fly was weighed at {weighed}, but the parts on the hook alone come to {others} by the recipe. Weigh the parts, or correct their "
                + "masses, before the hook’s."
                : $"The hook would have to weigh {Say(wantedKg, Dimension.Mass, units)} instead of {Say(hookKg, Dimension.Mass, units)}. That is no longer "
                + "a matter of the hook: check the scale, and the masses of the parts.");
        }

        string value = Units.Format(wantedKg, Dimension.Mass, UnitSystem.Metric, Digits);
        return Checked(
            RecipeDraft.Parse(recipeText).Value!.With("hook.mass", value),
            $"Hook mass taken from the bench: the fly weighed {weighed}; its other parts come to {others}; so the hook is put "
                + $"at {Say(wantedKg, Dimension.Mass, units)} (before: {Say(hookKg, Dimension.Mass, units)}).");
    }

    /// <summary>
    /// Lets one part of the dressing hold as much more sealed air (or less) as makes the fly sink at the rate that was timed. The recipe
    /// states it as a density: the part's mass over its own volume and that air together.
    /// </summary>
    /// <param name="recipeText">A recipe that parses.</param>
    /// <param name="partIndex">From 0, in tying order.</param>
    /// <param name="sinkRateMS">Positive down.</param>
    /// <param name="waterC">Of the tub, °C; null for the recipe's own.</param>
    public static TakeOver SealedAir(string recipeText, int partIndex, double sinkRateMS, WetState state, double? waterC = null,
        UnitSystem units = UnitSystem.Metric)
    {
        Recipe recipe = Parse(recipeText);
        PartSpec part = recipe.Parts[partIndex];
        string name = FlyBuilder.Names(recipe.Parts)[partIndex];
        double massKg = MassKg(FlyBuilder.Build(recipe).Body.Parts[partIndex + 1]), densityKgM3 = PartSubstance.DensityKgM3(part);
        double solidM3 = massKg / densityKgM3, ownAirM3 = 1e-3 * PartSubstance.Of(part).SealedAir.Value * massKg;
        // At the one end the part has lost all its sealed air, at the other it is as light as a recipe can say.
        double leastM3 = -Math.Min(ownAirM3, 0.9 * solidM3), mostM3 = massKg / LeastDensityKgM3 - solidM3;
        double Miss(double airM3) => RateMS(recipe, partIndex, massKg, massKg / (solidM3 + airM3), state, waterC) - sinkRateMS;

        string timed = Say(sinkRateMS, Dimension.Speed, units);
        if (Miss(leastM3) < 0)
            return new TakeOver(null,
                $"The fly sank at {timed}, faster than it could with no air sealed in its {name} at all. Look for the difference elsewhere: weigh the fly, "
                    + "and see whether it is dressed as the recipe says.");
        if (Miss(mostM3) > 0)
            return new TakeOver(null,
                $"The fly sank at {timed}, slower than any amount of air in its {name} can explain. Look for the difference elsewhere: time the drop "
                    + "again, soaked, with every bubble stroked out.");
        // A fly may jump from one attitude to another on the way: a root must give the rate, not only bracket it.
        if (!Brent.TryFindRoot(Miss, leastM3, mostM3, 1e-9 * (mostM3 - leastM3), 200, out double foundM3) || Math.Abs(Miss(foundM3)) > 0.01 * sinkRateMS)
            return new TakeOver(null,
                $"No amount of air in the {name} gives just {timed}: the fly changes its attitude in between. Try another part, or time the drop again.");

        double newKgM3 = massKg / (solidM3 + foundM3);
        string path = $"parts[{partIndex.ToString(CultureInfo.InvariantCulture)}]";
        RecipeDraft draft = RecipeDraft.Parse(recipeText).Value!.With($"{path}.density", Units.Format(newKgM3, Dimension.Density, UnitSystem.Metric, Digits));
        // Left out, the mass would follow the density.
        if (part.MassKg is null) draft = draft.With($"{path}.mass", Units.Format(massKg, Dimension.Mass, UnitSystem.Metric, Digits));
        return Checked(
            draft,
            $"Air taken from the bench: the fly sank at {timed}, {(state == WetState.Fresh ? "fresh from the cast" : "soaked")}; so the {name} is taken to "
                + $"seal in {Say(Math.Abs(foundM3), Dimension.Volume, units)} {(foundM3 >= 0 ? "more" : "less")} air than before, written as a density "
                + $"of {Say(newKgM3, Dimension.Density, units)} (before: {Say(densityKgM3, Dimension.Density, units)}).");
    }

    private static double RateMS(Recipe recipe, int index, double massKg, double densityKgM3, WetState state, double? waterC)
    {
        Recipe tried = recipe with
        {
            Parts = recipe.Parts.SetItem(index, recipe.Parts[index] with { MassKg = massKg, DensityKgM3 = densityKgM3 }),
            Fishing = waterC is { } c ? recipe.Fishing with { TemperatureC = c } : recipe.Fishing,
        };
        BuiltFly built = FlyBuilder.Build(tried);
        // A fly that hangs still in the water sinks at no rate.
        return PartialReports.Sink(built.Body, built.Conditions, state)?.RateMS ?? 0;
    }

    private static TakeOver Checked(RecipeDraft draft, string said)
    {
        string text = draft.ToText();
        return RecipeParser.Parse(text) is { Success: false } failed
            ? new TakeOver(null, $"The recipe cannot say what was measured: {failed.Errors[0].Text}")
            : new TakeOver(text, said);
    }

    private static double MassKg(BodyPart part) => part.Masses.Sum(m => m.MassKg);

    private static string Say(double si, Dimension dimension, UnitSystem units) => Units.Format(si, dimension, units);

    private static Recipe Parse(string recipeText) =>
        RecipeParser.Parse(recipeText).Value ?? throw new ArgumentException("The recipe does not parse.", nameof(recipeText));
}
