using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;

namespace TyingClass.Recipes.Text;

/// <summary>One step into a draft: a key of a group or a place in a list.</summary>
internal readonly record struct DraftStep(string? Key, int Index);

/// <summary>Addresses such as "hook.gape" or "parts[0].side offset".</summary>
internal static partial class DraftPath
{
    /// <summary>Keys with path signs in them have no address.</summary>
    public static bool IsKey(string key) => KeyText().IsMatch(key);

    public static bool TryParse(string path, out ImmutableArray<DraftStep> steps)
    {
        steps = [];
        if (path.Length > 200 || !PathText().IsMatch(path)) return false;
        steps = [.. Step().Matches(path).Select(ToStep)];
        return true;
    }

    /// <exception cref="ArgumentException">No such form of path.</exception>
    public static ImmutableArray<DraftStep> Parse(string path) =>
        TryParse(path, out ImmutableArray<DraftStep> steps) ? steps
        : throw new ArgumentException($"'{path}' is not a path such as parts[0].size.", nameof(path));

    private static DraftStep ToStep(Match match) => match.Groups["index"].Success
        ? new DraftStep(null, int.Parse(match.Groups["index"].Value, CultureInfo.InvariantCulture))
        : new DraftStep(match.Groups["key"].Value, 0);

    [GeneratedRegex(@"\A[^.\[\]\p{C}]{1,60}\z")]
    private static partial Regex KeyText();

    [GeneratedRegex(@"\A[^.\[\]\p{C}]+(?:\[[0-9]{1,4}\])*(?:\.[^.\[\]\p{C}]+(?:\[[0-9]{1,4}\])*)*\z")]
    private static partial Regex PathText();

    [GeneratedRegex(@"\[(?<index>[0-9]+)\]|(?<key>[^.\[\]]+)")]
    private static partial Regex Step();
}
