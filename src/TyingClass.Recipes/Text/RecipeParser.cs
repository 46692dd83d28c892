using System.Collections.Immutable;
using TyingClass.Balance.Bodies;
using TyingClass.Recipes.Model;
using TyingClass.Recipes.Text.Yaml;
using TyingClass.Recipes.Yaml;

namespace TyingClass.Recipes.Text;

/// <summary>Recipe text (docs/recipes.md) into a <see cref="Recipe"/>.</summary>
public static class RecipeParser
{
    public static readonly ImmutableArray<string> Keys = ["recipe", "intent", "hook", "parts", "fishing", "steps"];

    /// <summary>The recipe, or every mistake of the text at once. Never throws for what a user typed.</summary>
    /// <exception cref="ArgumentNullException">No text at all.</exception>
    public static ParseResult<Recipe> Parse(string text)
    {
        ArgumentNullException.ThrowIfNull(text);
        RecipeMeter.Parses.Add(1);
        ErrorList errors = new();
        (YamlNode? root, bool complete) = RecipeYaml.Read(text, errors);
        Recipe? recipe = root is YamlMap map ? ReadRecipe(new MapReader(map, "", "", complete, errors)) : null;
        if (recipe is null) RootAdvice.Add(root, errors);
        return recipe is not null && errors.Count == 0 ? ParseResult<Recipe>.Of(recipe) : ParseResult<Recipe>.Failed(errors.InOrder());
    }

    /// <summary>
    /// The recipe of a form, read without being printed first. A draft with a mistake in it is read from its text, so that the mistake has the
    /// place that it has there.
    /// </summary>
    public static ParseResult<Recipe> Parse(RecipeDraft draft)
    {
        ArgumentNullException.ThrowIfNull(draft);
        ErrorList errors = new();
        if (!IsPlain(draft)) return Parse(draft.ToText());
        Recipe recipe = ReadRecipe(new MapReader(draft.Root, "", "", complete: true, errors));
        return errors.Count == 0 ? ParseResult<Recipe>.Of(recipe) : Parse(draft.ToText());
    }

    // What the look over a text would complain about, its size and halves of letters, is for the text to show.
    private static bool IsPlain(RecipeDraft draft) =>
        draft.Values.Sum(v => v.Key.Length + v.Value.Length) < TextGuard.MostBytes / 8 && !draft.Values.Any(v => v.Value.Any(char.IsSurrogate));

    private static Recipe ReadRecipe(MapReader map)
    {
        map.CheckKeys(Keys, key => $"{WordList.Quote(key)} is not a key of a recipe.{Nearest.Hint(key, Keys)} A recipe has {WordList.And(Keys)}.");
        map.Missing("recipe", "Give the fly a name, as in “recipe: Slate Minnow”.");
        map.Missing("intent", "Say which way up it is meant to ride: “intent: point down” or “intent: point up”.");
        map.Missing("hook", "Write “hook:” and its keys moved in below it, such as “size: 6”.");
        string name = RecipeName.Read(map) ?? "";
        Intent intent = map.Choice("intent", Words.Intents) ?? Intent.PointDown;

        int before = map.Errors.Count;
        MapReader? hookMap =
            map.Group("hook", "Hook", "The hook is a group of keys. Write “hook:” on a line of its own and the keys moved in below it, such as “size: 6”.");
        HookSpec hook = hookMap is null ? new HookSpec() : HookReader.Read(hookMap);
        bool hookIsClean = hookMap is not null && map.Errors.Count == before;

        ImmutableArray<ReadPart> parts = PartReader.Read(map);
        if (hookIsClean) parts = PartReader.Settled(parts, hook);
        if (hookIsClean && map.Complete) ShankCheck.Inspect(hook, hookMap!, parts);

        MapReader? fishingMap = map.Group("fishing", "Fishing",
            "The fishing is a group of keys. Write “fishing:” on a line of its own and the keys moved in below it, such as “speed: 0.4 m/s”.");
        FishingSpec fishing = fishingMap is null ? new FishingSpec() : FishingReader.Read(fishingMap);
        return new Recipe(name, intent, hook, [.. parts.Select(p => p.Spec)], fishing) { Steps = StepReader.Read(map) };
    }
}
