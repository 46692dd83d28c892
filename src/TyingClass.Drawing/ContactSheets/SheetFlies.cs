using System.Collections.Immutable;
using System.Reflection;
using TyingClass.Recipes.Model;
using TyingClass.Recipes.Text;

namespace TyingClass.Drawing.ContactSheets;

/// <summary>Invented flies that between them use every kind of part, eye, bend and most materials: what drawings are judged by.</summary>
public static class SheetFlies
{
    public static ImmutableArray<Recipe> All { get; } = [.. Texts().Select(Parse)];

    private static IEnumerable<(string Name, string Text)> Texts()
    {
        Assembly assembly = typeof(SheetFlies).Assembly;
        foreach (string name in assembly.GetManifestResourceNames().Where(n => n.StartsWith("recipes/", StringComparison.Ordinal))
            .Order(StringComparer.Ordinal))
        {
            using StreamReader reader = new(assembly.GetManifestResourceStream(name)!);
            yield return (name, reader.ReadToEnd());
        }
    }

    private static Recipe Parse((string Name, string Text) file)
    {
        ParseResult<Recipe> result = RecipeParser.Parse(file.Text);
        return result.Success ? result.Value : throw new InvalidOperationException($"{file.Name}: {string.Join("; ", result.Errors)}");
    }
}
