using System.Collections.Immutable;
using System.Text.RegularExpressions;
using TyingClass.Recipes.Parts;
using TyingClass.Recipes.Text;
using TyingClass.Web.Bench;

namespace TyingClass.Web.Editing;

/// <summary>What people paste where a recipe is asked: the recipe itself, the text of a recipe card, or the address of a bench.</summary>
public static partial class RecipePaste
{
    // The longest first: "at" must not be taken for "at most".
    private static readonly ImmutableArray<string> Keys =
        [.. KindsOfPart.All.SelectMany(k => k.Keys).Concat(FieldWords.HookKeys).Concat(FieldWords.FishingKeys).Distinct().OrderByDescending(k => k.Length)];

    /// <summary>A recipe's text, where one can be made of what was pasted; else the text as it is, for the reader of recipes to complain about.</summary>
    public static string Read(string? typed)
    {
        string text = (typed ?? "").ReplaceLineEndings("\n");
        if (BenchAddressIn().Match(text) is { Success: true } bench && Packed.TryUnpack(bench.Groups[1].Value, AnswerLimit.MostBytes, out string? packed))
            return packed;
        // A card with a wrong word in it is a card all the same: what is told of it is what is wrong with that word.
        return FromCard(text) is { } card && RecipeDraft.Parse(text).Value is null ? card : text;
    }

    private const string Ride = "meant to ride ";

    // The lines of a card as a browser copies them: a name, how it is meant to ride, then each heading with what belongs to it. A whole page that prints a
    // card has the drawing's words in between, and figures and cautions after it.
    private static string? FromCard(string text)
    {
        string[] lines = [.. text.Split(['\n', '\t']).Select(l => l.Trim()).Where(l => l.Length > 0)];
        int ride = Array.FindIndex(lines, l => l.StartsWith(Ride, StringComparison.OrdinalIgnoreCase));
        if (ride < 1) return null;
        int from = Array.FindIndex(lines, ride, l => l == "In tying order");
        from = from < 0 ? ride + 1 : from + 1;
        int to = Array.FindIndex(lines, from, l => l is "Figures, soaked" or "Take care");
        return Draft(lines[ride - 1], lines[ride][Ride.Length..].Split('.')[0], lines[from..(to < 0 ? lines.Length : to)]);
    }

    private static string Draft(string name, string intent, string[] lines)
    {
        RecipeDraft draft = RecipeDraft.Empty.With("recipe", name).With("intent", intent);
        int parts = 0, steps = 0;
        for (int i = 0; i + 1 < lines.Length; i += 2)
        {
            (string head, string body) = (lines[i], lines[i + 1]);
            if (head == "steps")
            {
                foreach (string step in lines[(i + 1)..]) draft = draft.With($"steps[{steps++}]", Numbered().Replace(step, ""));
                break;
            }

            string group = head is "hook" or "fishing" ? head : $"parts[{parts++}]";
            if (group != head) draft = draft.With($"{group}.part", head);
            string last = "";
            foreach ((string? key, string value) in Fields(body))
            {
                // "retrieve strip 30 cm in 0.5 s, pause 1.5 s" is one value.
                string path = $"{group}.{key ?? (last.Length > 0 && !group.StartsWith("parts", StringComparison.Ordinal) ? last : "material")}";
                draft = draft.With(path, key is null && draft.Get(path) is { } begun ? $"{begun}, {value}" : value);
                last = key ?? last;
            }
        }

        return draft.ToText();
    }

    // "brass, size 3 mm, at 3 mm": what begins with no key is the material of a part.
    private static IEnumerable<(string? Key, string Value)> Fields(string body)
    {
        foreach (string item in body.Split(", ", StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries))
        {
            // A reader of inches sees the recipe's own figure in brackets: "0.118 in (3 mm)".
            string plain = InBrackets().Replace(item, "$1");
            if (plain.StartsWith(RecipeCard.TakenAs, StringComparison.Ordinal)) continue;
            string? key = Keys.FirstOrDefault(k => plain.StartsWith(k + " ", StringComparison.Ordinal));
            yield return key is null ? (null, plain) : (key, plain[(key.Length + 1)..]);
        }
    }

    [GeneratedRegex(@"/bench(?:/card)?\?(?:[^\s#]*&)?r=([A-Za-z0-9_-]+)", RegexOptions.CultureInvariant)]
    private static partial Regex BenchAddressIn();

    [GeneratedRegex(@"[\d.,/−-]+ ?(?:in|gr|oz|ft|ft/s|°F) \(([^()]+)\)", RegexOptions.CultureInvariant)]
    private static partial Regex InBrackets();

    [GeneratedRegex(@"^\d+[.)]\s*", RegexOptions.CultureInvariant)]
    private static partial Regex Numbered();
}
