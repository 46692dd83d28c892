using System.Globalization;
using TyingClass.Recipes.Model;
using TyingClass.Recipes.Text;

namespace TyingClass.Benchmarks;

/// <summary>Recipes at the edges of what a recipe may say: the smallest and largest hooks, leaders, speeds and numbers of parts, each with each.</summary>
internal static class LimitRecipes
{
    private static readonly string[] Hooks =
        ["{shank: 1 mm, wire: 0.1 mm, gape: 1 mm}", "{shank: 8 mm, wire: 0.5 mm, gape: 5 mm, eye: jig 90°}", "{shank: 100 mm, wire: 3 mm, gape: 50 mm}"];

    private static readonly string[] Fishings =
    [
        "leader: 0.05 mm nylon, knot: loop", "leader: 150 lb fluorocarbon, knot: loop", "leader: 0.05 mm nylon, knot: cinched",
        "leader: 150 lb nylon, knot: cinched",
    ];

    private static readonly string[] Parts =
    [
        "", "- {part: body, at: 0.1 x shank}", "- {part: foam, at: 0.1 x shank, side: top}\n  - {part: wing, side: top}",
        string.Join("\n  ", Enumerable.Range(0, Most)
            .Select(i => i % 2 == 0 ? "- {part: hackle, at: 0.3 x shank}" : "- {part: legs, at: 0.5 x shank, mass: 1 mg}")),
    ];

    private const int Most = 60;

    public static Recipe[] All() =>
    [
        .. from hook in Hooks
           from parts in Parts
           from fishing in Fishings
           from speedMS in (double[])[0.01, 0.4, 3]
           from water in (string[])["fresh 0 °C", "sea 42 g/kg 40 °C"]
           let name = string.Create(CultureInfo.InvariantCulture, $"{hook}, {(parts.Length > 60 ? "60 parts" : parts)}, {fishing}, {speedMS} m/s, {water}")
           let read = RecipeParser.Parse(
               $"recipe: Fly\nintent: point down\nhook: {hook}\n" + (parts.Length == 0 ? "" : $"parts:\n  {parts}\n")
                   + string.Create(CultureInfo.InvariantCulture, $"fishing: {{{fishing}, speed: {speedMS} m/s, water: {water}}}\n")).Value
           where read is not null
           select read with { Name = name.Replace('\n', ' ') },
    ];
}
