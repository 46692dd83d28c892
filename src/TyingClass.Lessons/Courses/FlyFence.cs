using System.Collections.Immutable;
using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Prose;
using TyingClass.Lessons.Yaml;
using TyingClass.Recipes.Text;

namespace TyingClass.Lessons.Courses;

/// <summary>A fly fence: "```fly side state=fresh", then a recipe or "file:", and a caption.</summary>
internal static class FlyFence
{
    public static FlyBlock? Read(Fence fence, Func<string, string?> readFile, AuthorErrors errors)
    {
        int before = errors.Count;
        (string view, ImmutableDictionary<string, string> arguments) = Arguments(fence, errors);
        if (YamlReader.ReadMap(fence.Text, fence.FirstLine, errors, "A fly fence") is not { } map) return null;
        FieldReader fields = new(map, "a fly fence with a file", errors);
        string caption = fields.Text("caption") ?? "";
        RecipeSource? source;
        if (fields.Node("file") is { } file)
        {
            fields.CheckKeys("file", "caption", Fold.Key);
            source = file is YamlText path ? new RecipeFinder([], readFile, errors).FromFile(path) : null;
        }
        else
        {
            source = new RecipeSource(Without(fence, map, "caption", Fold.Key), errors.File, fence.FirstLine, 0);
        }

        source?.Parse(errors);
        bool folded = Fold.Read(fields, caption);
        return source is null || errors.Count > before ? null : new FlyBlock(source.Text, view, caption, arguments) { Folded = folded };
    }

    private static (string View, ImmutableDictionary<string, string> Arguments) Arguments(Fence fence, AuthorErrors errors)
    {
        string[] words = fence.Arguments.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        string view = string.Join(' ', words.TakeWhile(w => !w.Contains('=', StringComparison.Ordinal)));
        if (view.Length == 0) view = FlyViews.Side;
        if (!FlyViews.All.Contains(view))
            errors.Add(fence.FirstLine - 1, 1,
                $"“{FieldReader.Clip(view)}” cannot be drawn.{Nearest.Hint(view, FlyViews.All)} A fly fence draws {string.Join(", ", FlyViews.All)}.");
        ImmutableDictionary<string, string> arguments = ImmutableDictionary<string, string>.Empty;
        foreach (string word in words.SkipWhile(w => !w.Contains('=', StringComparison.Ordinal)))
        {
            string[] pair = word.Split('=', 2);
            if (pair.Length == 2 && FlyViews.Arguments.TryGetValue(pair[0], out ImmutableArray<string> values) && values.Contains(pair[1]))
                arguments = arguments.SetItem(pair[0], pair[1]);
            else
                errors.Add(fence.FirstLine - 1, 1,
                    $"“{FieldReader.Clip(word)}” is not understood after the view. "
                        + $"Write {string.Join(" or ", FlyViews.Arguments.SelectMany(a => a.Value.Select(v => $"{a.Key}={v}")))}, with no spaces around "
                        + "the sign.");
        }

        return (view, arguments);
    }

    // The lines of our own keys are emptied, not cut, so that the recipe's mistakes keep their line.
    private static string Without(Fence fence, YamlMap map, params string[] keys)
    {
        string[] lines = fence.Text.Split('\n');
        for (int i = 0; i < map.Entries.Length; i++)
        {
            if (!keys.Contains(map.Entries[i].Key)) continue;
            int first = map.Entries[i].Line - fence.FirstLine;
            int end = i + 1 < map.Entries.Length ? map.Entries[i + 1].Line - fence.FirstLine : lines.Length;
            Array.Fill(lines, "", first, end - first);
        }

        return string.Join('\n', lines);
    }
}
