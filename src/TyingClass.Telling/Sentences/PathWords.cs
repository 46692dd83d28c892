using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;
using TyingClass.Recipes.Parts;

namespace TyingClass.Telling.Sentences;

/// <summary>Recipe paths in the words of the bench.</summary>
public static partial class PathWords
{
    /// <summary>"the hook's eye", "the size of the cone".</summary>
    /// <param name="partNames">Names of the parts of the recipe the path belongs to.</param>
    public static string Say(string path, ImmutableArray<string> partNames)
    {
        if (path == "parts") return "the parts on the hook";
        if (path == "intent") return "which way up it is meant to ride";
        if (PartPath().Match(path) is { Success: true } match)
        {
            int index = int.Parse(match.Groups["index"].Value, CultureInfo.InvariantCulture);
            string part = index < partNames.Length ? partNames[index] : $"part {index + 1}";
            return match.Groups["key"].Value switch
            {
                "" => $"the {part}",
                "at" => $"the place of the {part}",
                "to" => $"the rear end of the {part}",
                "side" => $"the side the {part} {(IsPlural(part) ? "sit" : "sits")} on",
                "tied" => $"the way the {part} {(IsPlural(part) ? "are" : "is")} tied down",
                "clocked" => $"the turn of the {part} about the shank",
                var key => $"the {key} of the {part}",
            };
        }

        string[] steps = path.Split('.');
        return (steps[0], steps.Length > 1 ? steps[1] : "") switch
        {
            ("hook", "") => "the hook",
            ("hook", var key) => $"the hook's {key}",
            ("fishing", "") => "how it is fished",
            ("fishing", var key) => $"the {key}",
            _ => path,
        };
    }

    private static bool IsPlural(string part) => KindsOfPart.FindByName(part) is { IsPlural: true };

    [GeneratedRegex(@"\Aparts\[(?<index>[0-9]{1,4})\](?:\.(?<key>.+))?\z")]
    private static partial Regex PartPath();
}
