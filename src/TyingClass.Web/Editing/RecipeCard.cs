using System.Collections.Immutable;
using TyingClass.Recipes.Text;

namespace TyingClass.Web.Editing;

/// <summary>A recipe in a few lines, for reading: nothing in it is computed, so it gives no answer away.</summary>
/// <param name="Parts">In tying order.</param>
public sealed record RecipeCard(string Name, string Ride, string Hook, ImmutableArray<(string Kind, string Said)> Parts, string Fishing)
{
    /// <summary>The tying notes, in their order.</summary>
    public ImmutableArray<string> Steps { get; init; } = [];

    /// <returns>Null when the layout is broken.</returns>
    public static RecipeCard? Of(string recipeText) => RecipeDraft.Parse(recipeText).Value is { } draft
        ? new RecipeCard(
            draft.Get("recipe") ?? "A fly",
            draft.Get("intent") ?? "",
            Join(draft.Fields("hook").Select(f => $"{f.Key} {f.Value}")),
            [.. Enumerable.Range(0, draft.PartCount).Select(i => Part(draft.Fields($"parts[{i}]")))],
            Join(draft.Fields("fishing").Select(f => $"{f.Key} {f.Value}")))
        {
            Steps = [.. draft.Values.Where(v => v.Key.StartsWith("steps[", StringComparison.Ordinal)).Select(v => v.Value)],
        }
        : null;

    private static (string, string) Part(IReadOnlyList<KeyValuePair<string, string>> fields)
    {
        string kind = fields.FirstOrDefault(f => f.Key == "part").Value ?? "";
        return (kind, Join(fields.Where(f => f.Key != "part").Select(f => f.Key == "material" ? f.Value : $"{f.Key} {f.Value}")));
    }

    private static string Join(IEnumerable<string> items) => string.Join(", ", items);
}
