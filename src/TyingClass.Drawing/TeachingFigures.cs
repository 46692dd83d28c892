using System.Collections.Frozen;
using System.Collections.Immutable;
using TyingClass.Drawing.Figures;
using TyingClass.Recipes.Reports;
using TyingClass.Telling;

namespace TyingClass.Drawing;

/// <summary>A fly of a teaching figure, and what a legend calls it.</summary>
public sealed record FigureFly(string Name, SolvedFly Fly);

/// <summary>What a teaching figure shows.</summary>
/// <param name="Values">By key, as its author wrote them: "heel" is "20".</param>
/// <param name="Labels">By place or part, the words beside it, in the author's order; empty for the usual ones.</param>
public sealed record FigureRequest(
    string Kind, ImmutableArray<FigureFly> Flies, ImmutableDictionary<string, string> Values, ImmutableArray<(string Place, string Words)> Labels);

/// <summary>One picture of a figure: they stand side by side where there is room, one below the other on a phone.</summary>
/// <param name="Name">Stands over it; empty where it stands alone.</param>
public sealed record FigurePanel(string Name, string Svg);

/// <summary>Pictures that explain one idea. Where a fly is shown it is a real one, solved and to scale.</summary>
public static class TeachingFigures
{
    private static readonly FrozenDictionary<string, TeachingFigure> ByKind = typeof(TeachingFigure).Assembly.GetTypes()
        .Where(t => t.IsSubclassOf(typeof(TeachingFigure)) && !t.IsAbstract)
        .Select(t => (TeachingFigure)Activator.CreateInstance(t)!)
        .ToFrozenDictionary(f => f.Kind);

    public static ImmutableArray<string> Kinds => [.. ByKind.Keys.Order(StringComparer.Ordinal)];

    /// <summary>Whether its flies must be worked out whole: it draws curves over speeds or times.</summary>
    public static bool NeedsCurves(string kind) => ByKind.TryGetValue(kind, out TeachingFigure? figure) && figure.NeedsCurves;

    /// <exception cref="ArgumentException">No such kind, or a fly that the figure cannot be drawn of; the message says why.</exception>
    public static ImmutableArray<FigurePanel> Draw(FigureRequest request, DrawingOptions options)
    {
        ArgumentNullException.ThrowIfNull(request);
        ArgumentNullException.ThrowIfNull(options);
        return ByKind.TryGetValue(request.Kind, out TeachingFigure? figure)
            ? figure.Draw(request, options)
            : throw new ArgumentException($"No figure is of the kind \"{request.Kind}\": there are {Grammar.And(Kinds)}.", nameof(request));
    }
}
