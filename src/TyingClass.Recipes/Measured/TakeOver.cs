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
/// <param name="Outcome">What was done, or why it cannot be done.</param>
public sealed record TakeOver(string? RecipeText, TakeOverOutcome Outcome)
{
    private const int Digits = 4;

    // The widest the recipe format takes; docs/recipes.md.
    private const double LeastDensityKgM3 = 10;

    /// <summary>Puts the hook at the mass that makes the whole fly as heavy as it was weighed: every other part is taken as stated.</summary>
    /// <param name="recipeText">A recipe that parses.</param>
    /// <param name="flyMassKg">Dry, as weighed.</param>
    public static TakeOver HookMass(string recipeText, double flyMassKg)
    {
        FlyBody body = FlyBuilder.Build(Parse(recipeText)).Body;
        double hookKg = MassKg(body.Parts[0]), othersKg = body.Parts.Sum(MassKg) - hookKg, wantedKg = flyMassKg - othersKg;
        HookWeighed weighed = new(flyMassKg, othersKg, hookKg, wantedKg);
        // A tenth and ten times the drawn hook: beyond that it is another part that is off, or the scale.
        if (!(wantedKg >= 0.1 * hookKg && wantedKg <= 10 * hookKg)) return new TakeOver(null, weighed);
        return Checked(RecipeDraft.Parse(recipeText).Value!.With("hook.mass", Units.Write(wantedKg, Dimension.Mass, Digits)), weighed with { Taken = true });
    }

    /// <summary>
    /// Lets one part of the dressing hold as much more sealed air (or less) as makes the fly sink at the rate that was timed. The recipe
    /// states it as a density: the part's mass over its own volume and that air together.
    /// </summary>
    /// <param name="recipeText">A recipe that parses.</param>
    /// <param name="partIndex">From 0, in tying order.</param>
    /// <param name="sinkRateMS">Positive down.</param>
    /// <param name="waterC">Of the tub, °C; null for the recipe's own.</param>
    public static TakeOver SealedAir(string recipeText, int partIndex, double sinkRateMS, WetState state, double? waterC = null)
    {
        Recipe recipe = Parse(recipeText);
        PartSpec part = recipe.Parts[partIndex];
        string name = FlyBuilder.Names(recipe.Parts)[partIndex];
        double massKg = MassKg(FlyBuilder.Build(recipe).Body.Parts[partIndex + 1]), densityKgM3 = PartSubstance.DensityKgM3(part);
        double solidM3 = massKg / densityKgM3, ownAirM3 = 1e-3 * PartSubstance.Of(part).SealedAir.Value * massKg;
        // At the one end the part has lost all its sealed air, at the other it is as light as a recipe can say.
        double leastM3 = -Math.Min(ownAirM3, 0.9 * solidM3), mostM3 = massKg / LeastDensityKgM3 - solidM3;
        double Miss(double airM3) => RateMS(recipe, partIndex, massKg, massKg / (solidM3 + airM3), state, waterC) - sinkRateMS;

        AirTimed timed = new(name, sinkRateMS, state);
        if (Miss(leastM3) < 0) return new TakeOver(null, timed with { Fault = AirFault.FasterThanWithoutAir });
        if (Miss(mostM3) > 0) return new TakeOver(null, timed with { Fault = AirFault.SlowerThanAnyAir });
        // A fly may jump from one attitude to another on the way: a root must give the rate, not only bracket it.
        if (!Brent.TryFindRoot(Miss, leastM3, mostM3, 1e-9 * (mostM3 - leastM3), 200, out double foundM3) || Math.Abs(Miss(foundM3)) > 0.01 * sinkRateMS)
            return new TakeOver(null, timed with { Fault = AirFault.AttitudeJumps });

        double newKgM3 = massKg / (solidM3 + foundM3);
        string path = $"parts[{partIndex.ToString(CultureInfo.InvariantCulture)}]";
        RecipeDraft draft = RecipeDraft.Parse(recipeText).Value!.With($"{path}.density", Units.Write(newKgM3, Dimension.Density, Digits));
        // Left out, the mass would follow the density.
        if (part.MassKg is null) draft = draft.With($"{path}.mass", Units.Write(massKg, Dimension.Mass, Digits));
        return Checked(draft, timed with { MoreAirM3 = foundM3, DensityKgM3 = newKgM3, DensityBeforeKgM3 = densityKgM3 });
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

    private static TakeOver Checked(RecipeDraft draft, TakeOverOutcome done)
    {
        string text = draft.ToText();
        return RecipeParser.Parse(text) is { Success: false } failed
            ? new TakeOver(null, new CannotBeSaid(failed.Errors[0].Text))
            : new TakeOver(text, done);
    }

    private static double MassKg(BodyPart part) => part.Masses.Sum(m => m.MassKg);

    private static Recipe Parse(string recipeText) =>
        RecipeParser.Parse(recipeText).Value ?? throw new ArgumentException("The recipe does not parse.", nameof(recipeText));
}
