using System.Collections.Immutable;
using System.Security.Cryptography;
using System.Text;
using System.Text.RegularExpressions;
using TyingClass.Lessons.Conditions;
using TyingClass.Lessons.Kinds;
using TyingClass.Lessons.Prose;
using TyingClass.Lessons.Yaml;
using TyingClass.Recipes.Model;
using TyingClass.Recipes.Text;

namespace TyingClass.Lessons.Exercises;

/// <summary>The text of an exercise fence into an <see cref="Exercise"/>, every mistake reported at its place in the lesson file.</summary>
internal static partial class ExerciseReader
{
    private static readonly string[] CommonKeys =
        ["id", "kind", "title", "concepts", "prompt", "recipe", "file", "hints", "misreadings", "model answer", "wrong answers"];

    public static Exercise? Read(Fence fence, string[] lines, Func<string, string?> readFile, AuthorErrors errors) =>
        Read(fence, lines, readFile, errors, out _);

    /// <summary>Also takes practice fences, which have no id and no answers but "vary".</summary>
    public static Exercise? Read(Fence fence, string[] lines, Func<string, string?> readFile, AuthorErrors errors, out FieldReader? keys)
    {
        int before = errors.Count;
        keys = null;
        if (YamlReader.ReadMap(fence.Text, fence.FirstLine, errors, "An exercise") is not { } map) return null;
        bool isPractice = fence.Kind == "practice";
        FieldReader fields = keys = new FieldReader(map, isPractice ? "a practice fence" : "an exercise", errors);
        RecipeFinder recipes = new(lines, readFile, errors);
        if (Kind(fields) is not { } kind) return null;
        fields.CheckKeys(isPractice
            ? [.. CommonKeys.Except(["id", "model answer", "wrong answers"]), .. kind.Keys, "vary"]
            : [.. CommonKeys, .. kind.Keys]);
        RecipeSource? source = Given(fields, recipes);
        Recipe? given = source?.Parse(errors);
        if (!fields.Has("recipe") && !fields.Has("file") && kind.NeedsFly) fields.Missing("recipe", $"a {kind.Word} exercise needs a fly.");
        AnswerReader answers = new(fields, kind, given is null ? null : source!.Text, recipes);
        Exercise exercise = new()
        {
            Id = isPractice ? "" : Id(fields),
            Task = kind.Read(new TaskReading(fields, given, recipes, answers))!,
            Title = fields.RequiredText("title", "The cone that won the argument") ?? "",
            Concepts = Concepts(fields),
            PromptHtml = Prompt(fields, lines),
            RecipeText = source?.Text,
            ModelAnswer = answers.Model(),
            WrongAnswers = answers.Wrong(),
            Place = new ExercisePlace(errors.File, map.Line, map.Column,
                map.Entries.DistinctBy(e => e.Key).ToImmutableDictionary(e => e.Key, e => (e.Value.Line, e.Value.Column))),
        };
        if (!isPractice && kind.NeedsModelAnswer && !fields.Has("model answer"))
            fields.Missing("model answer", "check-lessons proves with it that the exercise can be done.");
        if (exercise.Task is null) return null;
        (string Say, string? Unless)[] hints = [.. Hints(fields, exercise, given)];
        exercise = exercise with
        {
            Hints = [.. hints.Select(h => h.Say)],
            HintsUnless = [.. hints.Select(h => h.Unless)],
            Misreadings = Misreadings(fields, exercise, given),
            Version = Hash(fence.Text, recipes.FileTexts),
        };
        return errors.Count == before ? exercise : null;
    }

    /// <summary>What conditions of an exercise may speak of.</summary>
    public static ConditionScope ScopeOf(Exercise exercise, Recipe? given) => exercise.Kind.Scope(exercise.Task, given);

    private static ExerciseKind? Kind(FieldReader fields)
    {
        fields.Suppose("kind", CommonKeys);
        if (fields.RequiredText("kind", "repair") is not { } word) return null;
        if (ExerciseKinds.TryFind(word, out ExerciseKind kind)) return kind;
        fields.Errors.Add(fields.At("kind"),
            $"“{FieldReader.Clip(word)}” is not a kind of exercise.{Nearest.Hint(word, ExerciseKinds.Words)} It may "
                + $"be {string.Join(", ", ExerciseKinds.Words)}.");
        return null;
    }

    private static RecipeSource? Given(FieldReader fields, RecipeFinder recipes) => (fields.Node("recipe"), fields.Node("file")) switch
    {
        ({ } node, _) => recipes.Find(node),
        (null, YamlText path) => recipes.FromFile(path),
        _ => null,
    };

    private static string Id(FieldReader fields)
    {
        string id = fields.RequiredText("id", "keel-03") ?? "";
        if (id.Length > 0 && (id.Length > 60 || !IdText().IsMatch(id)))
            fields.Errors.Add(fields.At("id"), $"“{FieldReader.Clip(id)}” cannot be an id. Use up to 60 small letters, digits and hyphens, as in keel-03.");
        return id;
    }

    private static ImmutableArray<string> Concepts(FieldReader fields)
    {
        ImmutableArray<string> concepts = fields.TextItems("concepts");
        if (concepts.Length is 0 or > 3)
            fields.Errors.Add(fields.At("concepts"), "An exercise teaches one to three concepts: write “concepts: [tow point, proportion]”.");
        return concepts;
    }

    private static string Prompt(FieldReader fields, string[] lines)
    {
        if (fields.RequiredText("prompt", "|, and the text moved in below it") is not { } prompt) return "";
        YamlText node = (YamlText)fields.At("prompt");
        int column = node.IsQuoted ? node.Column : node.Column - 1;
        return node.IsBlock
            ? ProseWriter.Prompt(prompt, node.Line + 1, RecipeFinder.IndentBelow(lines, node.Line), fields.Errors)
            : ProseWriter.Prompt(prompt, node.Line, column, fields.Errors);
    }

    // A text, or “say” with “unless”: what the answer has done already is not hinted at.
    private static IEnumerable<(string Say, string? Unless)> Hints(FieldReader fields, Exercise exercise, Recipe? given)
    {
        foreach (YamlNode item in fields.Items("hints"))
        {
            if (item is YamlText { Value: var value } && !string.IsNullOrWhiteSpace(value)) yield return (value.Trim(), null);
            else if (item is YamlMap map)
            {
                FieldReader entry = new(map, "a hint", fields.Errors);
                entry.CheckKeys("say", "unless");
                string? say = entry.RequiredText("say", "Turn the fly over in your mind."), unless = entry.RequiredText("unless", "parts[0].side changed");
                if (say is not null && unless is not null && entry.Node("unless") is YamlText node
                    && ConditionReader.Check(node, ScopeOf(exercise, given), fields.Errors))
                    yield return (say.Trim(), unless);
            }
            else
            {
                fields.Errors.Add(
                    item, "Each hint is a piece of text, in quotes if it holds a colon, or “say” (the text) with “unless” (when it is not needed).");
            }
        }
    }

    private static ImmutableArray<Misreading> Misreadings(FieldReader fields, Exercise exercise, Recipe? given)
    {
        ImmutableArray<Misreading>.Builder all = ImmutableArray.CreateBuilder<Misreading>();
        foreach (YamlNode item in fields.Items("misreadings"))
        {
            if (item is not YamlMap map)
            {
                fields.Errors.Add(item, "Each misreading has “when” (how to know it) and “say” (what to tell the student).");
                continue;
            }

            FieldReader entry = new(map, "a misreading", fields.Errors);
            entry.CheckKeys("when", "say", "concept", "halfway");
            string? halfway = entry.Text("halfway");
            if (halfway is not (null or "true" or "false")) fields.Errors.Add(entry.At("halfway"), "“halfway” is true or false.");
            string? when = entry.RequiredText("when", "keel height rises but eye unchanged"),
                say = entry.RequiredText("say", "This treats the eye as if it were straight.");
            string? concept = entry.Text("concept") ?? exercise.Concepts.FirstOrDefault();
            if (concept is not null && !exercise.Concepts.Contains(concept))
                fields.Errors.Add(entry.At("concept"), $"A misreading belongs to one of its exercise's concepts: {string.Join(", ", exercise.Concepts)}.");
            bool flyKnown = given is not null || !exercise.Kind.NeedsFly;
            if (when is not null && say is not null && flyKnown && entry.Node("when") is YamlText node
                && ConditionReader.Check(node, ScopeOf(exercise, given), fields.Errors))
                all.Add(new Misreading(when, say, concept) { IsHalfway = halfway == "true" });
        }

        return all.ToImmutable();
    }

    private static string Hash(string fence, string recipes) =>
        Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(fence + "\0" + recipes)))[..12];

    [GeneratedRegex(@"\A[a-z0-9]+(?:-[a-z0-9]+)*\z")]
    private static partial Regex IdText();
}
