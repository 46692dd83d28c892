using TyingClass.Lessons.Courses;
using TyingClass.Lessons.Yaml;
using TyingClass.Recipes.Model;
using TyingClass.Recipes.Text;

namespace TyingClass.Lessons.Exercises;

/// <summary>A recipe in a lesson file or beside it, and where its first character stands.</summary>
internal sealed record RecipeSource(string Text, string File, int FirstLine, int Indent)
{
    /// <summary>The recipe, its mistakes reported at their place in the file.</summary>
    public Recipe? Parse(AuthorErrors errors)
    {
        ParseResult<Recipe> result = RecipeParser.Parse(Text);
        foreach (RecipeError error in result.Errors)
        {
            errors.Add(new AuthorError(File, FirstLine + error.Line - 1, Indent + error.Column, error.Text));
        }

        return result.Value;
    }
}

/// <summary>Finds recipes: written out, or in a file of the recipes folder.</summary>
/// <param name="lines">The lesson file, line by line.</param>
/// <param name="readFile">Text of "recipes/x.fly.yaml", or null when there is no such file.</param>
internal sealed class RecipeFinder(string[] lines, Func<string, string?> readFile, AuthorErrors errors)
{
    /// <summary>Everything read from recipe files, for telling when it changes.</summary>
    public string FileTexts { get; private set; } = "";

    /// <summary>Reads "recipe: |", a recipe moved in below its key, or "file: recipes/x.fly.yaml".</summary>
    public RecipeSource? Find(YamlNode node)
    {
        switch (node)
        {
            case YamlText { IsBlock: true } block:
                int first = block.Line;
                while (first < lines.Length && string.IsNullOrWhiteSpace(lines[first])) first++;
                return new RecipeSource(block.Value, errors.File, first + 1, IndentBelow(lines, block.Line));
            case YamlMap { Entries: [{ Key: "file", Value: YamlText path }] }:
                return FromFile(path);
            case YamlMap map:
                return new RecipeSource(Slice(map), errors.File, map.Line, map.Column - 1);
            default:
                errors.Add(node, "A recipe stands here: move its keys in below this one, or write “file: recipes/name.fly.yaml” below it.");
                return null;
        }
    }

    /// <summary>How far block text is moved in, its first line standing below <paramref name="line"/> (from 1).</summary>
    public static int IndentBelow(string[] lines, int line) =>
        lines.Skip(line).FirstOrDefault(l => !string.IsNullOrWhiteSpace(l)) is { } first ? Indent(first) : 0;

    public RecipeSource? FromFile(YamlText path)
    {
        string name = path.Value.Trim();
        if (!RecipeFileName.IsGood(name))
        {
            errors.Add(path,
                $"“{FieldReader.Clip(name)}” is not a recipe file. Write it as recipes/slate-minnow.fly.yaml, in small letters, digits and hyphens.");
            return null;
        }

        if (readFile(name) is { } text)
        {
            FileTexts += text;
            return new RecipeSource(text, name, 1, 0);
        }

        errors.Add(path, $"There is no file {name} in the lessons folder.");
        return null;
    }

    private string Slice(YamlMap map)
    {
        int end = map.EndLine > map.Line ? map.EndLine - 1 : lines.Length;
        string[] slice = lines[(map.Line - 1)..Math.Min(end, lines.Length)];

        // The first line may begin with the key above it, or with a dash.
        return slice[0][(map.Column - 1)..] + "\n" + string.Concat(slice.Skip(1).Select(l => Dedent(l, map.Column - 1) + "\n"));
    }

    private static string Dedent(string line, int indent) => line[Math.Min(indent, Indent(line))..];

    private static int Indent(string line) => line.Length - line.TrimStart(' ').Length;
}

internal static partial class RecipeFileName
{
    /// <summary>Only plain names below recipes/: nothing that climbs out of the folder.</summary>
    public static bool IsGood(string name) => Pattern().IsMatch(name);

    [System.Text.RegularExpressions.GeneratedRegex(@"\Arecipes/[a-z0-9]+(?:-[a-z0-9]+)*\.fly\.yaml\z")]
    private static partial System.Text.RegularExpressions.Regex Pattern();
}
