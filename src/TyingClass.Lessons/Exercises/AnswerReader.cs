using System.Collections.Immutable;
using TyingClass.Lessons.Kinds;
using TyingClass.Lessons.Yaml;
using TyingClass.Recipes.Text;

namespace TyingClass.Lessons.Exercises;

/// <summary>Model and wrong answers: a recipe, changes to the recipe given, or what a student would type.</summary>
/// <param name="givenText">Text of the fly given, for answers written as changes.</param>
internal sealed class AnswerReader(FieldReader fields, ExerciseKind kind, string? givenText, RecipeFinder recipes)
{
    public string? Model() => fields.Node("model answer") is { } node ? Answer(node) : null;

    public ImmutableArray<WrongAnswer> Wrong()
    {
        ImmutableArray<WrongAnswer>.Builder all = ImmutableArray.CreateBuilder<WrongAnswer>();
        foreach (YamlNode item in fields.Items("wrong answers"))
        {
            if (item is YamlMap map && map.Find("answer") is { } answerNode)
            {
                FieldReader entry = new(map, "a wrong answer", fields.Errors);
                entry.CheckKeys("answer", "named");
                if (Answer(answerNode) is { } answer) all.Add(new WrongAnswer(answer, entry.Text("named")));
            }
            else if (Answer(item) is { } text)
            {
                all.Add(new WrongAnswer(text, null));
            }
        }

        return all.ToImmutable();
    }

    private string? Answer(YamlNode node)
    {
        if (kind.AnswerIsRecipe)
        {
            if (node is YamlMap map && !map.Entries.Any(e => e.Key is "recipe" or "file")) return Changed(map);
            return recipes.Find(node) is { } source && source.Parse(fields.Errors) is not null ? source.Text : null;
        }

        switch (node)
        {
            case YamlText text:
                return text.Value.Trim();
            case YamlList list when list.Items.All(i => i is YamlText):
                return string.Join('\n', list.Items.Cast<YamlText>().Select(t => t.Value.Trim()));
            case YamlMap map when kind.AnswerHasNames:
                return string.Join('\n', map.Entries.Select(e => $"{e.Key}: {(e.Value as YamlText)?.Value}"));
            default:
                fields.Errors.Add(node, "Write the answer as a student would type it.");
                return null;
        }
    }

    /// <summary>What is done to the fly given, from the key that says so; null, and complained about, where it says nothing.</summary>
    public FlyChange? Change(string key)
    {
        if (fields.Node(key) is YamlMap map)
            return Changed(map) is { } text ? new FlyChange(text, [.. map.Entries.Select(e => (e.Key, NewValue((YamlText)e.Value)))]) : null;
        fields.Errors.Add(fields.At(key), $"Say what is done to the fly, as in “{key}:” and moved in below it “parts[0].size: 4.8 mm”.");
        return null;
    }

    private static string? NewValue(YamlText value) => value.Value.Trim() is var text && text != "none" ? text : null;

    /// <summary>The recipe given with some of its fields written anew: "hook.eye: straight".</summary>
    public string? Changed(YamlMap map)
    {
        if (givenText is null)
        {
            // A fly given that cannot be read has been complained about.
            if (fields.Has("recipe") || fields.Has("file")) return null;
            fields.Errors.Add(map, "An answer written as changes needs a fly given. Write the whole recipe here.");
            return null;
        }

        if (RecipeDraft.Parse(givenText).Value is not { } draft) return null;
        int before = fields.Errors.Count;
        foreach (YamlEntry entry in map.Entries)
        {
            YamlText place = new(entry.Key, entry.Line, entry.Column);
            if (AllowReader.PathComplaint(entry.Key, RecipeParser.Parse(givenText).Value) is { } complaint)
                fields.Errors.Add(place, complaint);
            else if (entry.Value is not YamlText value || entry.Key is "parts" or "hook" or "fishing")
                fields.Errors.Add(entry.Value,
                    $"Write the new value of {entry.Key} here, or the word none to take it away. To add or remove parts, write the whole recipe.");
            else
                draft = draft.With(entry.Key, NewValue(value));
        }

        if (fields.Errors.Count > before) return null;
        string text = draft.ToText();
        foreach (RecipeError error in RecipeParser.Parse(text).Errors)
        {
            YamlEntry? entry = map.Entries.FirstOrDefault(e => e.Key == error.Path);
            fields.Errors.Add(entry?.Line ?? map.Line, entry?.Column ?? map.Column, error.Text);
        }

        return fields.Errors.Count > before ? null : text;
    }
}
