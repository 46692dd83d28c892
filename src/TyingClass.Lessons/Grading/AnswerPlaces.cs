using System.Globalization;
using System.Text.RegularExpressions;
using TyingClass.Lessons.Yaml;

namespace TyingClass.Lessons.Grading;

/// <summary>Where a path stands in recipe text that parses.</summary>
internal static partial class AnswerPlaces
{
    /// <summary>The place of the deepest step that is there; line 1 for one that is not.</summary>
    public static (int Line, int Column) Find(string text, string path)
    {
        YamlNode? node = YamlReader.ReadMap(text, 1, new AuthorErrors(""), "A recipe");
        (int, int) at = (1, 1);
        foreach (Match step in Step().Matches(path))
        {
            node = node switch
            {
                YamlMap map => map.Find(step.Value),
                YamlList list when int.TryParse(step.Groups["index"].Value, CultureInfo.InvariantCulture, out int i) && i < list.Items.Length => list.Items[i],
                _ => null,
            };
            if (node is null) return at;
            at = (node.Line, node.Column);
        }

        return at;
    }

    [GeneratedRegex(@"\[(?<index>[0-9]{1,4})\]|[^.\[\]]+")]
    private static partial Regex Step();
}
