using System.Collections.Immutable;
using TyingClass.Lessons.Grading;
using TyingClass.Recipes.Advice;
using TyingClass.Recipes.Bodies;
using TyingClass.Recipes.Catalogue;
using TyingClass.Recipes.Model;
using TyingClass.Recipes.Parts;
using TyingClass.Recipes.Text;

namespace TyingClass.Lessons.Kinds.Predict;

/// <summary>
/// Another change of the same idea: of the same thing by other values, or of a thing like it, a part for a part. Never the change that was asked about, nor
/// that change undone: whoever turns the answer round has not understood it.
/// </summary>
internal static class FreshChange
{
    private const int MostRetries = 8;

    private static readonly double[] Before = [0.8, 1, 1.25];
    private static readonly double[] After = [0.55, 0.7, 1.4, 1.8];

    private static readonly ImmutableArray<string> Eyes = ["straight", "down 25°", "down 45°", "up 25°", "up 45°", "jig 60°"];
    private static readonly ImmutableArray<string> Waters = ["fresh 4 °C", "fresh 12 °C", "fresh 22 °C", "sea 12 °C"];
    private static readonly ImmutableArray<string> Wires = ["2XF", "standard", "2XH"];

    // What a hook's mass follows from: held at a stated mass, another gape would weigh nothing.
    private static readonly ImmutableArray<string> MeasuresOfHook = ["hook.gape", "hook.shank", "hook.wire", "hook.size"];

    /// <param name="asked">The change the exercise asks about.</param>
    /// <returns>The fly before and after; null where this draw gave none.</returns>
    public static (RecipeDraft Before, RecipeDraft After)? Draw(RecipeDraft fly, ImmutableArray<RecipeChange> asked, Random random)
    {
        if (asked.Any(c => MeasuresOfHook.Contains(c.Path))) fly = fly.With("hook.mass", null);
        if (asked is [{ Path: "fishing.knot" }]) return Leader(fly.With("fishing.knot", "cinched"), random);
        if (asked.Length > 1 && asked.All(c => MeasuresOfHook.Contains(c.Path))) return Gape(fly, random);
        if (asked is not [var one]) return OtherThing(fly, asked, random);
        bool others = IsOfPart(one.Path) || RetrieveBuilder.IsOfRetrieve(one.Path);
        return others && random.Next(2) == 0 ? OtherThing(fly, asked, random) : SameThing(fly, one, random) ?? (others ? OtherThing(fly, asked, random) : null);
    }

    private static bool IsOfPart(string path) => path.StartsWith("parts[", StringComparison.Ordinal);

    // A knot has two ways only, and both have been seen: what it does through the leader is asked of the leader.
    private static (RecipeDraft, RecipeDraft)? Leader(RecipeDraft fly, Random random) =>
        FreshDressing.OnLeader(fly, Before[random.Next(Before.Length)]) is { } from && FreshDressing.OnLeader(fly, After[random.Next(After.Length)]) is { } to
            ? random.Next(2) == 0 ? (from, to) : (to, from)
            : null;

    // A hook of another size and length is another hook: what that does is asked again of the gape alone.
    private static (RecipeDraft, RecipeDraft)? Gape(RecipeDraft fly, Random random) =>
        RecipeParser.Parse(fly.ToText()).Value is { } recipe && HookScale.TryResolve(recipe.Hook, out ResolvedHook? hook, out _)
            ? SameThing(fly, new RecipeChange("hook.gape", "hook.gape", Units.Write(hook.GapeM, Dimension.Length, 2), null, ""), random)
            : null;

    private static (RecipeDraft, RecipeDraft)? SameThing(RecipeDraft fly, RecipeChange asked, Random random)
    {
        for (int i = 0; i < MostRetries; i++)
        {
            (string? from, string? to) = Values(fly, asked, random);
            if (from is null || to is null || from == to) continue;
            if ((from, to) == (asked.Before, asked.After) || (from, to) == (asked.After, asked.Before)) continue;
            return (fly.With(asked.Path, from), fly.With(asked.Path, to));
        }

        return null;
    }

    private static (string?, string?) Values(RecipeDraft fly, RecipeChange asked, Random random)
    {
        string key = asked.Path[(asked.Path.LastIndexOf('.') + 1)..];
        if (Words(fly, asked.Path, key) is { IsEmpty: false } words) return (words[random.Next(words.Length)], words[random.Next(words.Length)]);
        if (FreshDressing.Scaled(key, asked.Before ?? asked.After ?? "", Before[random.Next(Before.Length)]) is not { } from) return (null, null);
        // What sits at the very front can only go back.
        string start = from.StartsWith("0 ", StringComparison.Ordinal) ? asked.After ?? from : from;
        string? to = FreshDressing.Scaled(key, start, After[random.Next(After.Length)]);
        return random.Next(2) == 0 ? (from, to) : (to, from);
    }

    private static ImmutableArray<string> Words(RecipeDraft fly, string path, string key) => key switch
    {
        "eye" => Eyes,
        "water" => Waters,
        "wire" => Wires,
        "material" or "side" when KindsOfPart.Find(fly.Get($"{path[..path.LastIndexOf('.')]}.part")) is { } kind => key == "material"
            ? [.. Materials.All.Select(m => m.Name).Where(kind.SuitedMaterials.Contains)]
            : [.. kind.Sides.Select(s => s.ToString().ToLowerInvariant())],
        _ => [],
    };

    // Of a part, some part otherwise; of the hand, something else that the hand does.
    private static (RecipeDraft, RecipeDraft)? OtherThing(RecipeDraft fly, ImmutableArray<RecipeChange> asked, Random random)
    {
        if (RecipeParser.Parse(fly.ToText()).Value is not { } recipe) return null;
        recipe = Places.Settle(recipe);
        bool hand = asked.Any(c => RetrieveBuilder.IsOfRetrieve(c.Path));
        if (Adjusted(recipe, a => hand ? a.Advise(1) is AdvisedRetrieve
                : IsOfPart(a.Path) && !asked.Any(c => c.Path == a.Path), random) is not { } changed)
            return null;
        (RecipeDraft before, RecipeDraft after) = (RecipeDraft.Of(recipe), RecipeDraft.Of(changed));
        return asked.Any(c => (before.Get(c.Path), after.Get(c.Path)) is var now && (now == (c.Before, c.After) || now == (c.After, c.Before))) ? null
            : (before, after);
    }

    /// <summary>With one thing changed that a tyer can change, far enough to matter and no further than a tyer would go.</summary>
    internal static Recipe? Adjusted(Recipe recipe, Func<Adjustable, bool> may, Random random)
    {
        Adjustable[] others = [.. Adjustables.Of(recipe).Where(a => !(a.Path == "hook.gape" && recipe.Hook.MassKg is not null) && may(a))];
        if (others.Length == 0) return null;
        Adjustable change = others[random.Next(others.Length)];
        return change.At(Math.Max(1, (change.Steps * (1 + random.Next(2)) + 2) / 3));
    }
}
