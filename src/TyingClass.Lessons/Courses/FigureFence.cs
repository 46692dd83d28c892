using System.Collections.Immutable;
using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Prose;
using TyingClass.Lessons.Yaml;
using TyingClass.Recipes.Bodies;
using TyingClass.Recipes.Text;

namespace TyingClass.Lessons.Courses;

/// <summary>A figure fence: "kind: ship and fly", the fly or flies, what else the kind takes, and a caption.</summary>
internal static class FigureFence
{
    private const string KindKey = "kind", Caption = "caption", Flies = "flies", Labels = "labels", Called = "called", File = "file", Recipe = "recipe",
        With = "with";

    private static readonly string[] HookPlaces = ["ring", "shank", "bend", "point", "barb", "gape"];

    public static FigureBlock? Read(Fence fence, string[] lines, Func<string, string?> readFile, AuthorErrors errors)
    {
        int before = errors.Count;
        if (fence.Arguments.Length > 0) errors.Add(fence.FirstLine - 1, 1,
            "Nothing may follow the word “figure”. Write what it shows below, as in “kind: hook”.");
        if (YamlReader.ReadMap(fence.Text, fence.FirstLine, errors, "A figure fence") is not { } map) return null;
        FieldReader fields = new(map, "a figure fence", errors);
        if (Kind(fields) is not { } kind) return null;
        bool one = kind.MostFlies == 1;
        string[] ofFly = one ? [File, Recipe, With] : kind.MostFlies > 1 ? [Flies] : [];
        fields.CheckKeys([KindKey, Caption, Fold.Key, .. ofFly, .. kind.Names ? [Labels] : (string[])[], .. kind.Values.Select(v => v.Key)]);
        RecipeFinder recipes = new(lines, readFile, errors);
        ImmutableArray<FigureRecipe> flies = one ? [.. Fly(fields, recipes, "")] : [.. Named(fields, recipes)];
        if (errors.Count == before && (flies.Length < kind.FewestFlies || flies.Length > kind.MostFlies))
            errors.Add(fields.At(Flies), $"A figure of the kind “{kind.Word}” shows {kind.FewestFlies} to {kind.MostFlies} flies, each an item of “{Flies}”.");
        ImmutableDictionary<string, string> values = Values(fields, kind);
        ImmutableArray<(string, string)> labels = errors.Count == before && kind.Names ? Words(fields, flies[0].Text) : [];
        string caption = fields.Text(Caption) ?? "";
        bool folded = Fold.Read(fields, caption);
        return errors.Count > before ? null : new FigureBlock(kind.Word, flies, values, labels, caption, fence.FirstLine - 1) { Folded = folded };
    }

    private static FigureKind? Kind(FieldReader fields)
    {
        string[] words = [.. FigureKinds.All.Select(k => k.Word)];
        if (fields.RequiredText(KindKey, words[0]) is not { } word) return null;
        if (FigureKinds.Find(word) is { } kind) return kind;
        fields.Errors.Add(fields.At(KindKey),
            $"There is no figure of the kind “{FieldReader.Clip(word)}”.{Nearest.Hint(word, words)} The kinds are {string.Join(", ", words)}.");
        return null;
    }

    private static IEnumerable<FigureRecipe> Named(FieldReader fields, RecipeFinder recipes)
    {
        foreach (YamlNode item in fields.Items(Flies))
        {
            if (item is not YamlMap map)
            {
                fields.Errors.Add(item, $"Each item of “{Flies}” is a group: “{Called}: brass” and “{File}: recipes/slate-minnow.fly.yaml”.");
                continue;
            }

            FieldReader one = new(map, $"an item of “{Flies}”", fields.Errors);
            one.CheckKeys(Called, File, Recipe, With);
            foreach (FigureRecipe fly in Fly(one, recipes, one.RequiredText(Called, "brass") ?? "")) yield return fly;
        }
    }

    // None or one: what is wrong has been said.
    private static IEnumerable<FigureRecipe> Fly(FieldReader fields, RecipeFinder recipes, string called)
    {
        if (fields.Node(File) is null == fields.Node(Recipe) is null)
        {
            fields.Errors.Add(fields.Map, $"Name one fly: “{File}: recipes/slate-minnow.fly.yaml”, or “{Recipe}:” with its keys below.");
            yield break;
        }

        RecipeSource? source = fields.Node(File) is YamlText path ? recipes.FromFile(path) : recipes.Find(fields.At(Recipe));
        if (source?.Parse(fields.Errors) is { } recipe && StatedReader.Changed(source.Text, recipe,
            fields) is { } text) yield return new FigureRecipe(called, text);
    }

    private static ImmutableDictionary<string, string> Values(FieldReader fields, FigureKind kind)
    {
        ImmutableDictionary<string, string> values = ImmutableDictionary<string, string>.Empty;
        foreach (FigureValue value in kind.Values)
        {
            if (fields.Text(value.Key) is not { } text)
            {
                if (value.IsNeeded && !fields.Has(value.Key)) fields.Missing(value.Key, $"it takes {value.Takes}.");
            }
            else if (value.Complaint(text) is { } complaint)
            {
                fields.Errors.Add(fields.At(value.Key), $"{complaint} “{value.Key}” takes {value.Takes}.");
            }
            else
            {
                values = values.SetItem(value.Key, text);
            }
        }

        return values;
    }

    private static ImmutableArray<(string, string)> Words(FieldReader fields, string recipeText)
    {
        if (fields.Group(Labels) is not { } map) return [];
        string[] places = [.. FlyBuilder.Names(RecipeParser.Parse(recipeText).Value!.Parts), .. HookPlaces];
        foreach (YamlEntry entry in map.Entries.Where(e => !places.Contains(e.Key) || e.Value is not YamlText { Value.Length: > 0 }))
            fields.Errors.Add(entry.Line, entry.Column, places.Contains(entry.Key)
                ? $"Write the words beside “{entry.Key}” after the colon."
                : $"“{FieldReader.Clip(entry.Key)}” is nothing to point at.{Nearest.Hint(entry.Key, places)} There are {string.Join(", ", places)}.");
        return [.. map.Entries.Where(e => e.Value is YamlText).Select(e => (e.Key, ((YamlText)e.Value).Value.Trim()))];
    }
}
