using System.Collections.Immutable;
using TyingClass.Lessons.Grading;
using TyingClass.Recipes.Advice;
using TyingClass.Recipes.Catalogue;
using TyingClass.Recipes.Model;
using TyingClass.Recipes.Parts;
using TyingClass.Recipes.Text;

namespace TyingClass.Lessons.Kinds.Predict;

/// <summary>
/// Another change of the same idea: of the same thing by other values, or of another thing altogether. Never the change that was asked about, nor that change
/// undone: whoever turns the answer round has not understood it.
/// </summary>
internal static class FreshChange
{
    private const int MostRetries = 8;

    private static readonly double[] Before = [0.8, 1, 1.25];
    private static readonly double[] After = [0.55, 0.7, 1.4, 1.8];

    private static readonly ImmutableArray<string> Eyes = ["straight", "down 25°", "down 45°", "up 25°", "up 45°", "jig 60°"];
    private static readonly ImmutableArray<string> Waters = ["fresh 4 °C", "fresh 12 °C", "fresh 22 °C", "sea 12 °C"];
    private static readonly ImmutableArray<string> Wires = ["2XF", "standard", "2XH"];

    /// <param name="asked">The change the exercise asks about.</param>
    /// <returns>The fly before and after; null where this draw gave none.</returns>
    public static (RecipeDraft Before, RecipeDraft After)? Draw(RecipeDraft fly, ImmutableArray<RecipeChange> asked, Random random) =>
        asked.Length == 1 && random.Next(2) == 0 ? SameThing(fly, asked[0], random) : OtherThing(fly, asked, random);

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

    private static (RecipeDraft, RecipeDraft)? OtherThing(RecipeDraft fly, ImmutableArray<RecipeChange> asked, Random random)
    {
        if (RecipeParser.Parse(fly.ToText()).Value is not { } recipe) return null;
        recipe = Places.Settle(recipe);
        return Adjusted(recipe, [.. asked.Select(c => c.Path)], random) is { } changed ? (RecipeDraft.Of(recipe), RecipeDraft.Of(changed)) : null;
    }

    /// <summary>With one thing changed that a tyer can change, far enough to matter and no further than a tyer would go.</summary>
    /// <param name="kept">Paths that stay as they are.</param>
    internal static Recipe? Adjusted(Recipe recipe, ImmutableArray<string> kept, Random random)
    {
        Adjustable[] others = [.. Adjustables.Of(recipe).Where(a => a.Advise(1) is not AdvisedRetrieve && !kept.Contains(a.Path))];
        if (others.Length == 0) return null;
        Adjustable change = others[random.Next(others.Length)];
        return change.At(Math.Max(1, (change.Steps * (1 + random.Next(2)) + 2) / 3));
    }
}
