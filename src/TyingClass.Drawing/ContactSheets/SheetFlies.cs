using System.Collections.Immutable;
using System.Reflection;
using TyingClass.Drawing.Flies;
using TyingClass.Recipes.Model;
using TyingClass.Recipes.Parts;
using TyingClass.Recipes.Text;

namespace TyingClass.Drawing.ContactSheets;

/// <summary>
/// Invented flies that between them use every kind of part, eye, bend and most materials: what drawings are judged by. A fly with a kind of part that
/// lacks one of its two files waits until it is written: one test names the file, and not every test of a drawing fails with it.
/// </summary>
public static class SheetFlies
{
    public static ImmutableArray<Recipe> All { get; } = [.. Texts().Select(Parse).OfType<Recipe>()];

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

    private static Recipe? Parse((string Name, string Text) file)
    {
        ParseResult<Recipe> result = RecipeParser.Parse(file.Text);
        if (result.Success) return result.Value.Parts.All(p => PartArt.Draws(p.Kind)) ? result.Value : null;
        // A kind of the catalogue that nothing describes has no word to be read by.
        bool allAreDescribed = KindsOfPart.All.Length == Enum.GetValues<PartKind>().Length;
        return allAreDescribed ? throw new InvalidOperationException($"{file.Name}: {string.Join("; ", result.Errors)}") : null;
    }
}
