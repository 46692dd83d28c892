using System.Collections.Immutable;
using TyingClass.Lessons.Exercises;
using TyingClass.Lessons.Quantities;
using TyingClass.Lessons.Yaml;

namespace TyingClass.Lessons.Kinds.Sort;

/// <summary>"flies", "by" and "order" of a sort exercise.</summary>
internal static class SortReader
{
    public static SortTask? Read(FieldReader fields, RecipeFinder recipes)
    {
        ImmutableArray<SortItem>.Builder items = ImmutableArray.CreateBuilder<SortItem>();
        ImmutableArray<YamlNode> nodes = fields.Items("flies");
        foreach (YamlNode node in nodes)
        {
            if (recipes.Find(node) is not { } source || source.Parse(fields.Errors) is not { } recipe) continue;
            if (items.Any(i => i.Name == recipe.Name))
                fields.Errors.Add(node, $"Two of the flies are called {recipe.Name}. The names are what the student puts in order.");
            if (recipe.Name.IndexOfAny([',', ';', '>']) >= 0)
                fields.Errors.Add(node,
                    $"The name {recipe.Name} holds a comma, a semicolon or a “>”, which students write between names. Give the fly a plainer name.");
            items.Add(new SortItem(recipe.Name, source.Text));
        }

        if (nodes.Length is < 3 or > 8) fields.Errors.Add(fields.At("flies"), "Give three to eight flies to put in order under “flies”.");
        string? by = fields.RequiredText("by", "sink rate");
        if (by is not null && !QuantityQuery.TryParse(by, out _, out string error)) fields.Errors.Add(fields.At("by"), error);
        string order = fields.Text("order") ?? "largest first";
        if (order is not ("largest first" or "smallest first")) fields.Errors.Add(fields.At("order"), "“order” is “largest first” or “smallest first”.");
        return by is not null && QuantityQuery.TryParse(by, out QuantityQuery query, out _)
            ? new SortTask(items.ToImmutable(), query.Name, order == "largest first")
            : null;
    }
}
