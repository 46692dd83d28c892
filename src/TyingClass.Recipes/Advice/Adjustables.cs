using System.Collections.Immutable;
using System.Globalization;
using TyingClass.Balance.Bodies;
using TyingClass.Recipes.Bodies;
using TyingClass.Recipes.Catalogue;
using TyingClass.Recipes.Model;
using TyingClass.Recipes.Parts;

namespace TyingClass.Recipes.Advice;

/// <summary>Everything about a recipe that can be changed by itself.</summary>
public static class Adjustables
{
    public static ImmutableArray<Adjustable> Of(Recipe recipe)
    {
        ArgumentNullException.ThrowIfNull(recipe);
        recipe = Places.Settle(recipe);
        ResolvedHook hook = HookScale.Resolve(recipe.Hook);
        List<Adjustable> all = [];
        AddHook(all, recipe, hook);
        ImmutableArray<string> names = FlyBuilder.Names(recipe.Parts);
        for (int i = 0; i < recipe.Parts.Length; i++)
        {
            KindsOfPart.Of(recipe.Parts[i]).Advise(new PartChange(all, recipe, hook, i, names[i]));
        }

        Knot other = recipe.Fishing.Knot == Knot.Cinched ? Knot.Loop : Knot.Cinched;
        all.Add(new Adjustable(
            "fishing.knot", "another knot", 1,
            _ => recipe with { Fishing = recipe.Fishing with { Knot = other } },
            _ => new AdvisedKnot(other)));
        all.AddRange(RetrieveChanges.Of(recipe));
        return [.. all];
    }

    private static void AddHook(List<Adjustable> all, Recipe recipe, ResolvedHook hook)
    {
        if (recipe.Hook.Eye != EyeKind.Jig)
        {
            int degrees = (int)Math.Round(hook.EyeAngleRad * 180 / Math.PI);
            AddEye("eye bent further down", -1, degrees + 45);
            AddEye("eye bent further up", +1, 45 - degrees);

            void AddEye(string kind, int sign, int steps)
            {
                if (steps > 0)
                {
                    all.Add(new Adjustable("hook.eye", kind, steps, n => WithEye(recipe, degrees + sign * n),
                        n => new AdvisedEye((degrees + sign * n) * Math.PI / 180)));
                }
            }
        }

        double gapeMm = Math.Round(hook.GapeM * 1e3, 1);
        AddGape("wider gape", +1, (int)Math.Floor(gapeMm / 0.1));
        AddGape("narrower gape", -1, (int)Math.Floor(gapeMm / 2 / 0.1));

        void AddGape(string kind, int sign, int steps)
        {
            if (steps > 0)
            {
                all.Add(new Adjustable(
                    "hook.gape", kind, steps,
                    n => Places.Settle(recipe with { Hook = recipe.Hook with { GapeM = Mm(gapeMm + sign * 0.1 * n) } }),
                    n => new AdvisedGape(Mm(gapeMm + sign * 0.1 * n), Mm(gapeMm))));
            }
        }
    }

    private static Recipe WithEye(Recipe recipe, int degrees) => recipe with
    {
        Hook = recipe.Hook with
        {
            Eye = degrees == 0 ? EyeKind.Straight : degrees > 0 ? EyeKind.Up : EyeKind.Down,
            EyeAngleRad = degrees == 0 ? null : TwelveDigits(Math.Abs(degrees) * Math.PI / 180),
        },
    };

    internal static double Mm(double mm) => TwelveDigits(mm * 1e-3);

    // Recipes hold 12 significant digits, so that writing and reading one changes nothing.
    internal static double TwelveDigits(double value) =>
        double.Parse(value.ToString("G12", CultureInfo.InvariantCulture), CultureInfo.InvariantCulture);
}
