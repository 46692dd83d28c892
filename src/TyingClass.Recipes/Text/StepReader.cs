using System.Collections.Immutable;
using TyingClass.Recipes.Yaml;

namespace TyingClass.Recipes.Text;

/// <summary>The tying notes: a list of sentences, in the order they are followed.</summary>
internal static class StepReader
{
    private const string Advice = "The steps are a list of notes. Begin each with a dash and a space, as in “- Press the barb down.”";

    public static ImmutableArray<string> Read(MapReader recipe)
    {
        switch (recipe.Map.Find("steps"))
        {
            case YamlList list:
                if (list.Items.Length > Limits.MostSteps)
                    recipe.Errors.Add(list.Items[Limits.MostSteps], "steps",
                        $"There are {list.Items.Length} steps; a recipe may have at most {Limits.MostSteps}.");
                return [.. list.Items.Take(Limits.MostSteps).Select((item, index) => Step(item, index, recipe)).OfType<string>()];
            case null or YamlSpoiled:
                return [];
            default:
                recipe.Complain("steps", Advice);
                return [];
        }
    }

    private static string? Step(YamlNode item, int index, MapReader recipe)
    {
        string? complaint = item switch
        {
            YamlSpoiled => null,
            YamlText { Value: var text } when string.IsNullOrWhiteSpace(text) => "Nothing is written here. Write a note, or delete the line.",
            YamlText { Value: var text } when text.Any(c => char.IsControl(c) || Invisible.Is(c)) =>
                "The note holds a line end or a character that cannot be seen. Retype it on one line.",
            YamlText { Value: var text } when text.Trim().Length > Limits.LongestStep =>
                $"The note is {text.Trim().Length} characters long. Make two steps of it, of at most {Limits.LongestStep} each.",
            YamlText { Value: var text } => "",
            YamlMap => "A note with a colon and a space in it needs quotes around it: “- \"Head: five turns.\"”",
            _ => Advice,
        };
        if (complaint is { Length: > 0 }) recipe.Errors.Add(item, $"steps[{index}]", $"Step {index + 1}: {complaint}");
        return complaint is "" ? ((YamlText)item).Value.Trim() : null;
    }
}
