using System.Collections.Immutable;
using TyingClass.Lessons.Courses;

namespace TyingClass.Web.Pages.FirstWraps;

/// <summary>What a beginner has in the vise in the first hour.</summary>
public static class FirstFlies
{
    private const string BareHook = """
        recipe: First hook
        intent: point down
        hook:
          size: 6
          shank: 3XL
          eye: straight
        parts: []
        fishing:
          knot: loop
          speed: 0.4 m/s
        """;

    private const string BeadAndThread = """
        recipe: First wraps
        intent: point down
        hook:
          size: 6
          shank: 3XL
          eye: straight
        parts:
          - part: bead
            material: brass
            size: 4 mm
            at: 0 mm
          - part: body
            material: floss
            mass: 0.01 g
            diameter: 1.4 mm
            at: 4 mm
            to: 18 mm
        fishing:
          knot: loop
          speed: 0.4 m/s
        """;

    /// <summary>A bare hook, with the words of its places.</summary>
    public static FigureBlock Hook { get; } = Named("hook", BareHook);

    /// <summary>The same with a bead and a layer of thread.</summary>
    public static FigureBlock Wound { get; } = Named("fly", BeadAndThread);

    private static FigureBlock Named(string kind, string recipe) =>
        new(kind, [new FigureRecipe("", recipe)], ImmutableDictionary<string, string>.Empty, [], "", 0);
}
