using System.Collections.Immutable;
using TyingClass.Recipes.Bodies;
using TyingClass.Recipes.Model;

namespace TyingClass.Recipes.Catalogue;

/// <summary>A warning to show beside the step it belongs to.</summary>
/// <param name="Code">Stays the same between versions: "hooks", "lead", "resin", "cement", "heavy".</param>
/// <param name="Text">For the tyer, whole sentences.</param>
public sealed record Caution(string Code, string Text);

/// <summary>What in a recipe can hurt the tyer, a bystander or the water. Local rules come first, always.</summary>
public static class Cautions
{
    /// <summary>A fly this heavy, in air and dry, gets the casting caution.</summary>
    public static readonly Figure HeavyFly = new(0.8, "g", Figure.Estimate);

    /// <summary>The cautions that apply, hooks first: every fly has one.</summary>
    /// <exception cref="ArgumentException">As <see cref="FlyBuilder.Build"/>.</exception>
    public static ImmutableArray<Caution> For(Recipe recipe)
    {
        ArgumentNullException.ThrowIfNull(recipe);
        ImmutableArray<Caution>.Builder all = ImmutableArray.CreateBuilder<Caution>();
        all.Add(new Caution(
            "hooks",
            "Hooks are sharp: wear wrap-around eye protection when you tie and when you cast, and keep the point away from your hands and from other people."));
        if (recipe.Parts.Any(IsLead))
        {
            all.Add(new Caution(
                "lead",
                "Lead is poisonous, and lead weights or tackle are restricted or banned in many places: check the rules where you fish before you tie. Wash your hands before you eat, never bite lead, and never melt it at home. Tin, brass or tungsten will often do instead."));
        }

        if (Uses(recipe, "uv resin", "epoxy resin"))
        {
            all.Add(new Caution(
                "resin",
                "Uncured resin irritates the skin and can cause a lasting allergy: wear nitrile gloves, keep the air moving, and never look straight at a curing lamp. Follow the maker's sheet and your club's rules."));
        }

        if (Uses(recipe, "head cement"))
        {
            all.Add(new Caution("cement", "Solvent cement gives off fumes that burn: open a window and keep every flame away. Follow the label and your club's rules."));
        }

        if (FlyBuilder.Build(recipe).Body.Parts.Sum(part => part.Masses.Sum(e => e.MassKg)) * 1e3 >= HeavyFly.Value)
        {
            all.Add(new Caution(
                "heavy",
                "A heavy fly is hard to cast safely and hits hard: cover your eyes and head, slow the stroke down, keep others well clear, and follow the rules of the water you fish."));
        }

        return all.ToImmutable();
    }

    // A part given by its density alone is taken for lead when it is as dense as lead or its alloys.
    private static bool IsLead(PartSpec part) =>
        string.Equals(part.Material?.Trim(), "lead", StringComparison.OrdinalIgnoreCase)
        || PartSubstance.DensityKgM3(part) is > 10500 and < 12000;

    private static bool Uses(Recipe recipe, params ReadOnlySpan<string> materials)
    {
        foreach (PartSpec part in recipe.Parts)
        {
            foreach (string name in materials)
            {
                if (PartSubstance.Of(part).Name == name) return true;
            }
        }

        return false;
    }
}
