using System.Collections.Immutable;
using TyingClass.Lessons.Grading;
using TyingClass.Recipes.Bodies;
using TyingClass.Recipes.Model;

namespace TyingClass.Lessons.Revisions;

/// <summary>The way from one recipe to another in steps of one part each: intent, hook, the parts in tying order, fishing.</summary>
internal static class RevisionSteps
{
    /// <summary>Each step with its changes and the recipe after it; the last recipe is the later one, its name aside.</summary>
    public static IEnumerable<(string Part, ImmutableArray<RecipeChange> Changes, Recipe Recipe)> Between(Recipe before, Recipe after)
    {
        ImmutableArray<RecipeChange> changes = ChangeList.Between(before, after);
        Recipe now = before;
        if (Of("intent") is { IsEmpty: false } intent) yield return ("intent", intent, now = now with { Intent = after.Intent });
        if (Of("hook") is { IsEmpty: false } hook) yield return ("hook", hook, now = now with { Hook = after.Hook });
        Place[] places = Places(before, after, changes);
        for (int i = 0; i < places.Length; i++)
        {
            if (places[i].Changes.IsEmpty) continue;
            places[i] = places[i] with { Done = true };
            now = now with { Parts = [.. places.Select(p => p.Done ? p.After : p.Before).OfType<PartSpec>()] };
            yield return (places[i].Name, places[i].Changes, now);
        }

        if (Of("fishing") is { IsEmpty: false } fishing) yield return ("fishing", fishing, now with { Fishing = after.Fishing });

        ImmutableArray<RecipeChange> Of(string group) =>
            [.. changes.Where(c => c.Path == group || c.Path.StartsWith(group + ".", StringComparison.Ordinal))];
    }

    /// <summary>Both lists of parts walked side by side: a part that was changed keeps its place, one taken out or put in has a place of its own.</summary>
    internal static Place[] Places(Recipe before, Recipe after, ImmutableArray<RecipeChange> changes)
    {
        ImmutableArray<string> names = FlyBuilder.Names(before.Parts), later = FlyBuilder.Names(after.Parts);
        List<Place> places = [];
        int b = 0, a = 0;
        while (b < before.Parts.Length || a < after.Parts.Length)
        {
            if (changes.FirstOrDefault(c => c.IsWholePart && c.Path == $"parts[{b}]" && c.After is null) is { } takenOut)
            {
                places.Add(new Place(names[b], before.Parts[b++], null, [takenOut], false));
            }
            else if (changes.FirstOrDefault(c => c.IsWholePart && c.AnswerPath == $"parts[{a}]" && c.Before is null) is { } putIn)
            {
                places.Add(new Place(later[a], null, after.Parts[a++], [putIn], false));
            }
            else
            {
                string path = $"parts[{b}].";
                places.Add(
                    new Place(later[a], before.Parts[b++], after.Parts[a++], [.. changes.Where(c => c.Path.StartsWith(path, StringComparison.Ordinal))],
                        false));
            }
        }

        return [.. places];
    }

    internal sealed record Place(string Name, PartSpec? Before, PartSpec? After, ImmutableArray<RecipeChange> Changes, bool Done);
}
