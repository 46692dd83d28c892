using System.Collections.Immutable;
using TyingClass.Recipes.Catalogue;
using TyingClass.Recipes.Model;
using static TyingClass.Recipes.Advice.Adjustables;

namespace TyingClass.Recipes.Advice;

/// <summary>What can be changed about one part.</summary>
internal static class PartAdjustables
{
    private const double PlaceStepMm = 0.5;

    public static void Add(
        List<Adjustable> all, Recipe recipe, ResolvedHook hook, int index, string name,
        ImmutableArray<double> beadSizesM, ImmutableArray<int> eyesPerOunce, double ounceKg)
    {
        PartSpec part = recipe.Parts[index];
        Change change = new(all, recipe, index, name);
        (double frontM, double rearM) = PartExtents.Of(part, hook);
        switch (part.Kind)
        {
            case PartKind.Bead or PartKind.Cone:
                // A stated mass would pin the weight down whatever the size, so a new size lets go of it.
                Sizes(change, part.SizeM ?? rearM - frontM, beadSizesM, "size", "size", m => part with { SizeM = TwelveDigits(m), MassKg = null }, m => $"{Say(m * 1e3, 2)} mm");
                Materials(change, part);
                break;
            case PartKind.DumbbellEyes when part.MassKg is { } massKg:
                Sizes(change, massKg, [.. eyesPerOunce.Select(n => ounceKg / n)], "mass", "pair", kg => part with { MassKg = TwelveDigits(kg), SizeM = null }, kg => $"1/{Math.Round(ounceKg / kg)} oz");
                Materials(change, part);
                Places(change, part, hook, frontM, rearM);
                Sides(change, part);
                break;
            case PartKind.DumbbellEyes:
                Sizes(change, part.SizeM ?? rearM - frontM, beadSizesM, "size", "size", m => part with { SizeM = TwelveDigits(m) }, m => $"{Say(m * 1e3, 2)} mm");
                Places(change, part, hook, frontM, rearM);
                Sides(change, part);
                break;
            case PartKind.Wraps when part.Turns is { } turns && part.ToM is null && part.MassKg is null:
                double wireM = part.DiameterM ?? hook.WireM;
                int more = (int)Math.Floor((hook.ShankM - rearM) / wireM);
                change.Add("turns", $"more {name}", more, n => part with { Turns = turns + n }, n => $"wind {turns + n} turns instead of {turns}", n => turns + n);
                change.Add("turns", $"fewer {name}", turns - 1, n => part with { Turns = turns - n }, n => $"wind {turns - n} turns instead of {turns}", n => turns - n);
                Places(change, part, hook, frontM, rearM);
                break;
            case PartKind.Wing:
                Sides(change, part);
                break;
        }
    }

    private static void Sizes(
        Change change, double now, ImmutableArray<double> sold, string key, string noun, Func<double, PartSpec> with, Func<double, string> words)
    {
        double[] larger = [.. sold.Where(s => s > 1.02 * now).Order()];
        double[] smaller = [.. sold.Where(s => s < now / 1.02).OrderDescending()];
        change.Add(key, $"heavier {change.Name}", larger.Length, n => with(larger[n - 1]), n => $"use a {words(larger[n - 1])} {noun} of {change.Name} instead of {words(now)}", n => larger[n - 1]);
        change.Add(key, $"lighter {change.Name}", smaller.Length, n => with(smaller[n - 1]), n => $"use a {words(smaller[n - 1])} {noun} of {change.Name} instead of {words(now)}", n => smaller[n - 1]);
    }

    private static void Materials(Change change, PartSpec part)
    {
        if (part.DensityKgM3 is not null || part.MassKg is not null)
        {
            return;
        }

        string[] metals = ["plastic", "glass", "aluminum", "tin", "brass", "lead", "tungsten"];
        string nowName = part.Material ?? PartScale.UsualMaterial(part.Kind);
        double now = Catalogue.Materials.Find(nowName).DensityKgM3;
        Material[] known = [.. metals.Select(Catalogue.Materials.Find).Where(m => m.Suits.Contains(part.Kind))];
        Material[] denser = [.. known.Where(m => m.DensityKgM3 > now).OrderBy(m => m.DensityKgM3)];
        Material[] lighter = [.. known.Where(m => m.DensityKgM3 < now).OrderByDescending(m => m.DensityKgM3)];
        change.Add("material", $"denser {change.Name}", denser.Length, n => part with { Material = denser[n - 1].Name }, n => $"make the {change.Name} {denser[n - 1].Name} instead of {nowName}", _ => null);
        change.Add("material", $"less dense {change.Name}", lighter.Length, n => part with { Material = lighter[n - 1].Name }, n => $"make the {change.Name} {lighter[n - 1].Name} instead of {nowName}", _ => null);
    }

    private static void Places(Change change, PartSpec part, ResolvedHook hook, double frontM, double rearM)
    {
        int back = (int)Math.Floor((hook.ShankM - rearM) * 1e3 / PlaceStepMm), forward = (int)Math.Floor(frontM * 1e3 / PlaceStepMm);
        double at = part.AtM * 1e3;
        change.Add("at", $"{change.Name} further back", back, n => Moved(part, PlaceStepMm * n), n => $"tie the {change.Name} {Say(PlaceStepMm * n, 1)} mm further back, at {Say(at + PlaceStepMm * n, 2)} mm", n => Mm(at + PlaceStepMm * n));
        change.Add("at", $"{change.Name} further forward", forward, n => Moved(part, -PlaceStepMm * n), n => $"tie the {change.Name} {Say(PlaceStepMm * n, 1)} mm further forward, at {Say(at - PlaceStepMm * n, 2)} mm", n => Mm(at - PlaceStepMm * n));
    }

    private static PartSpec Moved(PartSpec part, double mm) => part with
    {
        AtM = TwelveDigits(part.AtM + mm * 1e-3),
        ToM = part.ToM is { } to ? TwelveDigits(to + mm * 1e-3) : null,
    };

    private static void Sides(Change change, PartSpec part)
    {
        Side now = part.Side ?? (part.Kind == PartKind.Wing ? Side.Top : Side.Top);
        Side other = now == Side.Under ? Side.Top : Side.Under;
        change.Add("side", $"{change.Name} on the other side", 1, _ => part with { Side = other }, _ => $"tie the {change.Name} {(other == Side.Under ? "under the shank, on the point side" : "on top of the shank")}", _ => null);
    }

    internal sealed record Change(List<Adjustable> All, Recipe Recipe, int Index, string Name)
    {
        public void Add(string key, string kind, int steps, Func<int, PartSpec> part, Func<int, string> say, Func<int, double?> value)
        {
            if (steps > 0)
            {
                All.Add(new Adjustable($"parts[{Index}].{key}", kind, steps, n => Recipe with { Parts = Recipe.Parts.SetItem(Index, part(n)) }, say, value));
            }
        }
    }
}
