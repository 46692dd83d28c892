using System.Collections.Immutable;
using TyingClass.Recipes.Catalogue;
using TyingClass.Recipes.Model;
using TyingClass.Recipes.Parts;
using static TyingClass.Recipes.Advice.Adjustables;

namespace TyingClass.Recipes.Advice;

/// <summary>What can be changed about one part: its kind says which of these, and everything that is found is added to the list.</summary>
internal sealed class PartChange(List<Adjustable> all, Recipe recipe, ResolvedHook hook, int index, string name)
{
    private const double PlaceStepMm = 0.5;

    // In the order of their density; the kind says which of them it is made of.
    private static readonly ImmutableArray<string> Solids = ["plastic", "glass", "aluminum", "tin", "brass", "lead", "tungsten"];

    public PartSpec Part { get; } = recipe.Parts[index];

    public ResolvedHook Hook => hook;

    public (double FrontM, double RearM) Extent { get; } = PartExtents.Of(recipe.Parts[index], hook);

    /// <summary>The sizes of bead that shops sell. A stated mass would pin the weight down whatever the size, so a new size lets go of it.</summary>
    public void Sizes() => Choose(
        "size", BoughtBy.Size, Part.SizeM ?? Extent.RearM - Extent.FrontM, SoldSizes.ExactM,
        m => Part with { SizeM = TwelveDigits(m), MassKg = null, Said = Part.Said.Without("size") });

    /// <summary>Any of what is sold instead of what it is now, heavier and lighter.</summary>
    public void Choose(string key, BoughtBy by, double now, ImmutableArray<double> sold, Func<double, PartSpec> with)
    {
        Add("heavier", [.. sold.Where(s => s > 1.02 * now).Order()]);
        Add("lighter", [.. sold.Where(s => s < now / 1.02).OrderDescending()]);

        void Add(string which, double[] steps) => Change(
            key, $"{which} {name}", steps.Length, n => with(steps[n - 1]),
            n => new AdvisedSize(name, by, steps[n - 1], now));
    }

    /// <summary>Another of the kind's materials, denser or less dense.</summary>
    public void Materials()
    {
        if (Part.DensityKgM3 is not null || Part.MassKg is not null) return;

        KindOfPart kind = KindsOfPart.Of(Part);
        string nowName = Part.Material ?? kind.UsualMaterial;
        double now = Catalogue.Materials.Find(nowName).DensityKgM3;
        Material[] known = [.. Solids.Where(kind.SuitedMaterials.Contains).Select(Catalogue.Materials.Find)];
        Add("denser", [.. known.Where(m => m.DensityKgM3 > now).OrderBy(m => m.DensityKgM3)]);
        Add("less dense", [.. known.Where(m => m.DensityKgM3 < now).OrderByDescending(m => m.DensityKgM3)]);

        void Add(string which, Material[] steps) => Change(
            "material", $"{which} {name}", steps.Length, n => Part with { Material = steps[n - 1].Name },
            n => new AdvisedMaterial(name, steps[n - 1].Name, nowName));
    }

    /// <summary>More turns as far as the shank reaches, fewer down to one.</summary>
    public void Turns(double wireM)
    {
        int turns = Part.Turns!.Value, more = (int)Math.Floor((hook.ShankM - Extent.RearM) / wireM);
        Change("turns", $"more {name}", more, n => Part with { Turns = turns + n }, n => new AdvisedTurns(turns + n, turns));
        Change("turns", $"fewer {name}", turns - 1, n => Part with { Turns = turns - n }, n => new AdvisedTurns(turns - n, turns));
    }

    /// <summary>Further back or forward along the shank.</summary>
    public void Places()
    {
        Add("further back", 1, (int)Math.Floor((hook.ShankM - Extent.RearM) * 1e3 / PlaceStepMm));
        Add("further forward", -1, (int)Math.Floor(Extent.FrontM * 1e3 / PlaceStepMm));

        void Add(string which, int sign, int steps)
        {
            double at = Part.AtM * 1e3;
            Change(
                "at", $"{name} {which}", steps, n => Moved(sign * PlaceStepMm * n),
                n => new AdvisedPlace(name, Mm(PlaceStepMm * n), sign > 0, Mm(at + sign * PlaceStepMm * n)));
        }
    }

    /// <summary>On top of the shank instead of under it, or the other way round.</summary>
    public void Sides()
    {
        Side other = (Part.Side ?? KindsOfPart.Of(Part).UsualSide) == Side.Under ? Side.Top : Side.Under;
        Change(
            "side", $"{name} on the other side", 1, _ => Part with { Side = other },
            _ => new AdvisedSide(name, other));
    }

    private PartSpec Moved(double mm) => Part with
    {
        AtM = TwelveDigits(Part.AtM + mm * 1e-3),
        ToM = Part.ToM is { } to ? TwelveDigits(to + mm * 1e-3) : null,
        Said = Part.Said.Without("at").Without("to"),
    };

    private void Change(string key, string kind, int steps, Func<int, PartSpec> part, Func<int, Advised> advise)
    {
        if (steps > 0)
            all.Add(new Adjustable($"parts[{index}].{key}", kind, steps, n => Parts.Places.Settle(recipe with { Parts = recipe.Parts.SetItem(index, part(n)) }),
                advise));
    }
}
