using System.Collections.Immutable;
using TyingClass.Lessons.Yaml;
using TyingClass.Recipes.Model;
using TyingClass.Recipes.Text;

namespace TyingClass.Lessons.Courses;

/// <summary>evenings.yaml beside the lessons: the plan of each evening.</summary>
internal static class EveningsReader
{
    public const string FileName = "evenings.yaml";

    private const int MostEvenings = 60;
    private const int MostOfOne = 50;

    public static (ImmutableArray<CourseEvening> Evenings, ImmutableArray<AuthorError> Errors) Read(string text, Func<string, string?> readRecipe)
    {
        AuthorErrors errors = new(FileName);
        ImmutableArray<CourseEvening>.Builder all = ImmutableArray.CreateBuilder<CourseEvening>();
        if (YamlReader.ReadMap(text, 1, errors, FileName) is { } map)
        {
            FieldReader fields = new(map, FileName, errors);
            fields.CheckKeys("evenings");
            foreach (YamlNode item in fields.Items("evenings"))
            {
                if (item is not YamlMap evening) errors.Add(item, "Each evening is a group of keys: “evening: 1”, “title: …”, “plan: |”.");
                else if (One(new FieldReader(evening, "an evening", errors), all) is { } read)
                {
                    FieldReader rest = new(evening, "an evening", errors);
                    all.Add(read with { Flies = Flies(rest, readRecipe), Spares = Spares(rest) });
                }
            }
        }

        return (all.ToImmutable(), errors.InOrder());
    }

    private static CourseEvening? One(FieldReader fields, IReadOnlyCollection<CourseEvening> earlier)
    {
        fields.CheckKeys("evening", "title", "plan", "demonstrations", "watch for", "home", "flies", "spares", "besides", "in the room", "first at home");
        if (!fields.Has("evening")) fields.Missing("evening", "its number, as in “evening: 3”.");
        int? number = fields.WholeNumber("evening", 1, MostEvenings);
        string? title = fields.RequiredText("title", "Where the weight acts"), plan = fields.RequiredText("plan", "|");
        if (earlier.Any(e => e.Number == number)) fields.Errors.Add(fields.At("evening"), $"Evening {number} has a plan above already. Make one of the two.");
        return number is not { } known || title is null || plan is null
            ? null
            : new CourseEvening(known, title, plan, fields.Text("demonstrations") ?? "", fields.Text("watch for") ?? "", fields.Text("home") ?? "",
                fields.TextItems("besides"), fields.TextItems("in the room"), fields.Map.Line)
            { First = fields.TextItems("first at home") };
    }

    private static ImmutableArray<CourseFly> Flies(FieldReader evening, Func<string, string?> readRecipe)
    {
        ImmutableArray<CourseFly>.Builder all = ImmutableArray.CreateBuilder<CourseFly>();
        foreach (YamlNode item in evening.Items("flies"))
        {
            if (item is not YamlMap map)
            {
                evening.Errors.Add(item, "Each fly is a group of keys: “file: recipes/…”, “for two neighbors: 1”, “to show: 1”.");
                continue;
            }

            if (Fly(new FieldReader(map, "a fly of an evening", evening.Errors), readRecipe) is not { } fly) continue;
            // The instructor's own counts are kept by the fly's name.
            if (all.Any(f => f.Recipe.Name == fly.Recipe.Name))
                evening.Errors.Add(map, $"{fly.Recipe.Name} is listed twice. Add the two up, or give one of the flies another name.");
            else all.Add(fly);
        }

        return all.ToImmutable();
    }

    private static CourseFly? Fly(FieldReader fields, Func<string, string?> readRecipe)
    {
        fields.CheckKeys("file", "for two neighbors", "to show");
        if (fields.RequiredText("file", "recipes/slate-minnow.fly.yaml") is not { } file) return null;
        if (readRecipe(file) is not { } text)
        {
            fields.Errors.Add(fields.At("file"), $"There is no recipe “{FieldReader.Clip(file)}” beside the lessons.");
            return null;
        }

        if (RecipeParser.Parse(text).Value is not { } recipe)
        {
            fields.Errors.Add(fields.At("file"), $"The recipe in “{FieldReader.Clip(file)}” has a mistake. Run “balance” on it to see where.");
            return null;
        }

        return new CourseFly(
            file, recipe, text, fields.WholeNumber("for two neighbors", 0, MostOfOne) ?? 0, fields.WholeNumber("to show", 0, MostOfOne) ?? 0,
            fields.Map.Line);
    }

    private static ImmutableArray<CourseFly> Spares(FieldReader evening)
    {
        ImmutableArray<CourseFly>.Builder all = ImmutableArray.CreateBuilder<CourseFly>();
        foreach (YamlNode item in evening.Items("spares"))
        {
            if (item is YamlMap map)
            {
                if (Spare(new FieldReader(map, "a spare part of an evening", evening.Errors)) is { } spare) all.Add(spare);
            }
            else
            {
                evening.Errors.Add(
                    item, "Each spare part is a group of keys: “part: dumbbell eyes”, “material: brass”, “size: 3.2 mm”, “for two neighbors: 1”.");
            }
        }

        return all.ToImmutable();
    }

    // It is read as a recipe reads its parts, on a hook with room for any of them.
    private static CourseFly? Spare(FieldReader fields)
    {
        fields.CheckKeys("part", "material", "size", "for two neighbors", "to show");
        if (fields.RequiredText("part", "dumbbell eyes") is not { } part || fields.RequiredText("material", "brass") is not { } material
            || fields.RequiredText("size", "3.2 mm") is not { } size) return null;
        string text = $"recipe: Spares\nintent: point up\nhook:\n  size: 2\nparts:\n  - part: {part}\n    material: {material}\n    size: {size}\n";
        ParseResult<Recipe> read = RecipeParser.Parse(text);
        if (read.Value is not { } recipe)
        {
            fields.Errors.Add(fields.At("part"), $"No such spare part: {read.Errors[0].Text}");
            return null;
        }

        int two = fields.WholeNumber("for two neighbors", 0, MostOfOne) ?? 0, show = fields.WholeNumber("to show", 0, MostOfOne) ?? 0;
        if (two + show == 0)
            fields.Errors.Add(fields.Map, $"Nobody is to have the spare {part}. Say “for two neighbors” or “to show”, or take it out.");
        return new CourseFly("", recipe, text, two, show, fields.Map.Line);
    }
}
