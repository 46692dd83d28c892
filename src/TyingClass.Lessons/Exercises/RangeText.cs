using System.Text.RegularExpressions;
using TyingClass.Lessons.Yaml;

namespace TyingClass.Lessons.Exercises;

/// <summary>"3.2 mm … 6.4 mm": two values with three dots, or "to", between them.</summary>
internal static partial class RangeText
{
    public static bool TrySplit(string text, out string low, out string high)
    {
        Match match = Pattern().Match(text);
        (low, high) = (match.Groups["low"].Value.Trim(), match.Groups["high"].Value.Trim());
        return match.Success;
    }

    /// <summary>The rule for one key, from "anything", a value, a list of values or a range.</summary>
    public static AllowedChange? Rule(string path, string key, YamlNode? value, YamlNode place, AuthorErrors errors)
    {
        switch (value)
        {
            case null:
                return new AllowedChange(path, null, null);
            case YamlText { Value: var text } when TrySplit(text, out string low, out string high):
                if (Grading.ValueRule.TryRead(low, key, out double lowSi) && Grading.ValueRule.TryRead(high, key, out double highSi))
                {
                    if (lowSi > highSi) errors.Add(value, $"The range {low} … {high} is written backward: the smaller end comes first.");
                    return new AllowedChange(path, low, high);
                }

                string example = Grading.ValueRule.DimensionOf(key) is { } dimension ? Recipes.Text.Units.Example(dimension) : "12";
                errors.Add(value, $"Both ends of the range need a value such as {example}.");
                return null;
            case YamlText { Value: var text } when text.Trim().Length == 0 || text.Trim() == "anything":
                return new AllowedChange(path, null, null);
            case YamlText text:
                return new AllowedChange(path, null, null) { Words = [text.Value.Trim()] };
            case YamlList list when list.Items.All(i => i is YamlText):
                return new AllowedChange(path, null, null) { Words = [.. list.Items.Cast<YamlText>().Select(t => t.Value.Trim())] };
            default:
                errors.Add(place, "Write a range (3.2 mm … 6.4 mm), one value, or a list of values in square brackets.");
                return null;
        }
    }

    [GeneratedRegex(@"\A(?<low>.+?)\s*(?:…|\.\.\.|\bto\b)\s*(?<high>.+)\z")]
    private static partial Regex Pattern();
}
