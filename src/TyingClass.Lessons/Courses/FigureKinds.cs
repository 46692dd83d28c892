using System.Collections.Immutable;
using System.Globalization;
using TyingClass.Recipes.Catalogue;

namespace TyingClass.Lessons.Courses;

/// <summary>What one key of a figure fence may hold.</summary>
/// <param name="Key">As the fence writes it: "heel".</param>
/// <param name="IsNeeded">Whether the figure means nothing without it.</param>
/// <param name="Takes">What may stand there, for advice.</param>
/// <param name="Complaint">What is wrong with a text, or null.</param>
public sealed record FigureValue(string Key, bool IsNeeded, string Takes, Func<string, string?> Complaint);

/// <summary>A kind of teaching figure, as a lesson asks for it.</summary>
/// <param name="Word">"ship and fly".</param>
/// <param name="FewestFlies">Flies it is drawn of.</param>
/// <param name="Names">Whether words beside the picture may be set under "labels".</param>
public sealed record FigureKind(string Word, int FewestFlies, int MostFlies, bool Names, ImmutableArray<FigureValue> Values);

/// <summary>The kinds of figure there are. The drawing library draws each; a test holds its list to this one.</summary>
public static class FigureKinds
{
    private const double LeastHeelDeg = 5, MostHeelDeg = 20;
    private const int MostInOnePlot = 4;

    private static readonly ImmutableArray<string> Curves = ["depth", "keel height", "pitch", "righting"];

    public static ImmutableArray<FigureKind> All { get; } =
    [
        new("hook", 1, 1, Names: true, []),
        new("fly", 1, 1, Names: true, []),
        // Past the heel at which its deck's edge goes under, the box-shaped ship is another ship.
        new("ship and fly", 1, 1, Names: false, [new("heel", IsNeeded: false, "a number of degrees from 5 to 20", text =>
            Number(text, LeastHeelDeg, MostHeelDeg))]),
        new("garden gate", 1, 1, Names: false, []),
        new("balance on a finger", 1, 1, Names: false, []),
        new("pull and push", 1, 1, Names: false, []),
        new("eyes and rings", 2, 6, Names: false, []),
        new("turning over", 1, 1, Names: false, []),
        new("air leaving hair", 0, 0, Names: false, [new("materials", IsNeeded: true, $"one to {MostInOnePlot} materials, parted by commas", Hair)]),
        new("slack and taut", 1, 1, Names: false, []),
        new("loop and cinched", 1, 1, Names: false, []),
        new("compare", 2, MostInOnePlot, Names: false,
            [new("curve", IsNeeded: true, string.Join(", ", Curves), text => Curves.Contains(text) ? null : $"No curve is called “{text}”.")]),
    ];

    public static FigureKind? Find(string word) => All.FirstOrDefault(k => k.Word == word);

    private static string? Number(string text, double least, double most) =>
        double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out double value) && value >= least && value <= most
            ? null
            : $"“{text}” cannot stand here.";

    private static string? Hair(string text)
    {
        string[] names = [.. text.Split(',').Select(n => n.Trim())];
        return names.Length > MostInOnePlot ? "These are too many for one picture."
            : names.FirstOrDefault(n => !Materials.TryFind(n, out _)) is { } unknown ? $"“{unknown}” is no material of the catalogue."
            : null;
    }
}
