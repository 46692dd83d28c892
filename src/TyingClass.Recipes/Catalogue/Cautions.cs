using System.Collections.Immutable;
using TyingClass.Balance.Bodies;
using TyingClass.Recipes.Bodies;
using TyingClass.Recipes.Model;
using TyingClass.Recipes.Parts;

namespace TyingClass.Recipes.Catalogue;

/// <summary>A warning to show beside the step it belongs to.</summary>
/// <param name="Code">Stays the same between versions: "hooks", "lead", "resin", "cement", "slotted", "bore", "heavy".</param>
/// <param name="Text">For the tyer, whole sentences.</param>
public sealed record Caution(string Code, string Text);

/// <summary>What in a recipe can hurt the tyer, a bystander or the water. Local rules come first, always.</summary>
public static class Cautions
{
    /// <summary>A fly this heavy as it is cast, with the water it holds, gets the casting caution.</summary>
    public static readonly Figure HeavyFly = new(0.8, "g", Figure.Estimate);

    // In the order they are shown. Hooks: every fly has one. Heavy: the whole fly decides.
    private static readonly ImmutableArray<Caution> All =
    [
        new("hooks",
            "Hooks are sharp: wear wrap-around eye protection when you tie and when you cast, and keep the point away from your hands and from other people."),
        new("lead",
            "Lead is poisonous, and lead weights or tackle are restricted or banned in many places: check the rules where you fish before you tie. Wash "
                + "your hands before you eat, never bite lead, and never melt it at home. Tin, brass or tungsten will often do instead."),
        new("hot",
            "Solder is molten metal, and its flux smokes: do not melt it at the vise or without someone who knows how, wear eye protection, let the air "
                + "move, and take lead-free solder. Putty needs no heat."),
        new("glass",
            "A rattle of glass is thin: press it down with thread, never with pliers, wear eye protection, and pick up the splinters of one that breaks."),
        new("resin",
            "Uncured resin irritates the skin and can cause a lasting allergy: wear nitrile gloves, keep the air moving, and never look straight at a "
                + "curing lamp. Follow the maker's sheet and your club's rules."),
        new("cement", "Solvent cement gives off fumes that burn: open a window and keep every flame away. Follow the label and your club's rules."),
        new("slotted", "On a jig hook only a slotted bead sits at the ring. One with a round hole stops at the bend: ask for slotted."),
        new("bore",
            "A bead of this size may not pass the bend of this hook, even with the barb pressed flat. Try one before you buy a packet. If it sticks, take the "
                + "next size of bead or a smaller hook; never force or drill it."),
        new("heavy",
            "A heavy fly is hard to cast safely and hits hard: cover your eyes and head, slow the stroke down, keep others well clear, and follow the "
                + "rules of the water you fish."),
    ];

    /// <summary>The cautions that apply, hooks first: every fly has one.</summary>
    /// <param name="body">Where it is built already.</param>
    /// <exception cref="ArgumentException">As <see cref="FlyBuilder.Build(Recipe, int)"/>.</exception>
    public static ImmutableArray<Caution> For(Recipe recipe, FlyBody? body = null)
    {
        ArgumentNullException.ThrowIfNull(recipe);
        HashSet<string> codes = [.. recipe.Parts.SelectMany(part => KindsOfPart.Of(part).CautionCodes(part)), "hooks"];
        if (recipe.Parts.Length > 0)
        {
            ResolvedHook hook = HookScale.Resolve(recipe.Hook);
            codes.UnionWith(recipe.Parts.SelectMany(part => KindsOfPart.Of(part).FitCodes(part, hook)));
        }

        double castKg = (body ?? FlyBuilder.Build(recipe).Body).Parts.Sum(part => part.Masses.Sum(e => e.MassKg) + part.HeldWaterKg);
        if (castKg * 1e3 >= HeavyFly.Value) codes.Add("heavy");
        return [.. All.Where(caution => codes.Contains(caution.Code))];
    }

    /// <summary>What a part calls for by what it is made of, whatever its kind.</summary>
    internal static IEnumerable<string> OfMaterial(PartSpec part)
    {
        if (IsLead(part)) yield return "lead";
        switch (PartSubstance.Of(part).Name)
        {
            case "uv resin" or "epoxy resin":
                yield return "resin";
                break;
            case "head cement":
                yield return "cement";
                break;
        }
    }

    // A part given by its density alone is taken for lead when it is as dense as lead or its alloys.
    private static bool IsLead(PartSpec part) =>
        part.Material?.Trim().ToLowerInvariant() is "lead" or "tin-lead solder"
        || PartSubstance.DensityKgM3(part) is > 10500 and < 12000;
}
