using System.Collections.Immutable;
using TyingClass.Recipes.Text;
using TyingClass.Telling.Figures;

namespace TyingClass.Web.Editing;

/// <summary>A recipe in a few lines, for reading: nothing in it is computed, so it gives no answer away.</summary>
/// <param name="Parts">In tying order.</param>
public sealed record RecipeCard(string Name, string Ride, string Hook, ImmutableArray<(string Kind, string Said)> Parts, string Fishing)
{
    /// <summary>The tying notes, in their order.</summary>
    public ImmutableArray<string> Steps { get; init; } = [];

    /// <summary>Beside another fly: its lines piece by piece, what differs marked; null where it stands alone.</summary>
    public CardMarks? Marks { get; init; }

    /// <returns>Null when the layout is broken.</returns>
    public static RecipeCard? Of(string recipeText) => RecipeDraft.Parse(recipeText).Value is { } draft
        ? new RecipeCard(
            draft.Get("recipe") ?? "A fly",
            draft.Get("intent") ?? "",
            Join(draft.Fields("hook").Select(f => $"{f.Key} {f.Value}")),
            [.. Enumerable.Range(0, draft.PartCount).Select(i => Part(draft.Fields($"parts[{i}]"), () => Taken(recipeText, i)))],
            Join(draft.Fields("fishing").Select(f => $"{f.Key} {f.Value}")))
        {
            Steps = [.. draft.Values.Where(v => v.Key.StartsWith("steps[", StringComparison.Ordinal)).Select(v => v.Value)],
        }
        : null;

    /// <summary>What differs from <paramref name="otherText"/> marked.</summary>
    /// <param name="otherName">How the other fly is called.</param>
    public RecipeCard Beside(string recipeText, string otherText, string otherName) =>
        RecipeDraft.Parse(recipeText).Value is { } draft && RecipeDraft.Parse(otherText).Value is { } other
            ? this with { Marks = CardMarks.Of(draft, other, otherName) } : this;

    private static (string, string) Part(IReadOnlyList<KeyValuePair<string, string>> fields, Func<string?> taken)
    {
        string kind = fields.FirstOrDefault(f => f.Key == "part").Value ?? "";
        return (kind, Join(fields.Where(f => f.Key != "part").Select(f => f.Key == "material" ? f.Value
            // "medium" as shops say it, with what that is taken for.
            : f.Key == "size" && !f.Value.Any(char.IsAsciiDigit) && taken() is { } size ? $"size {f.Value}, {TakenAs}{size}"
            : $"{f.Key} {f.Value}")));
    }

    /// <summary>Begins what a card adds to the recipe's own words.</summary>
    internal const string TakenAs = "taken as ";

    private static string? Taken(string recipeText, int part) =>
        RecipeParser.Parse(recipeText) is { Success: true, Value: { } recipe } && recipe.Parts[part].SizeM is { } sizeM
            ? Stated.Say(sizeM, Dimension.Length, UnitSystem.Metric) : null;

    private static string Join(IEnumerable<string> items) => string.Join(", ", items);
}

/// <param name="Said">"size 4 mm".</param>
public sealed record CardPiece(string Said, bool Differs);

/// <summary>The lines of a card, piece by piece.</summary>
/// <param name="Other">The fly it is held against.</param>
public sealed record CardMarks(
    string Other, ImmutableArray<CardPiece> Hook, ImmutableArray<(string Kind, ImmutableArray<CardPiece> Pieces)> Parts, ImmutableArray<CardPiece> Fishing)
{
    /// <summary>How many pieces differ.</summary>
    public int Differing => Hook.Concat(Fishing).Concat(Parts.SelectMany(p => p.Pieces)).Count(p => p.Differs);

    internal static CardMarks Of(RecipeDraft fly, RecipeDraft other, string otherName) => new(
        otherName, Pieces(fly, other, "hook"),
        [.. Enumerable.Range(0, fly.PartCount).Select(i => (fly.Get($"parts[{i}].part") ?? "", Pieces(fly, other, $"parts[{i}]")))],
        Pieces(fly, other, "fishing"));

    private static ImmutableArray<CardPiece> Pieces(RecipeDraft fly, RecipeDraft other, string place)
    {
        bool same = fly.Get($"{place}.part") == other.Get($"{place}.part");
        return
        [
            .. fly.Fields(place).Where(f => f.Key != "part").Select(f => new CardPiece(
                f.Key == "material" ? f.Value : $"{f.Key} {f.Value}", !same || other.Get($"{place}.{f.Key}") != f.Value)),
        ];
    }
}
