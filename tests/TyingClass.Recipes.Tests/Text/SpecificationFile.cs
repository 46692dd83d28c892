using System.Globalization;
using System.Text.RegularExpressions;

namespace TyingClass.Recipes.Tests.Text;

/// <summary>One pair of a specification file: a recipe text and what must come of it.</summary>
/// <param name="Kind">"recipe" or "errors".</param>
public sealed record SpecificationCase(string File, string Title, string RecipeText, string Kind, string[] Outcome);

/// <summary>Reads the pairs of the *.spec.md files beside the tests.</summary>
internal static partial class SpecificationFile
{
    public static IReadOnlyDictionary<string, SpecificationCase> All { get; } = ReadAll();

    private static Dictionary<string, SpecificationCase> ReadAll() =>
        Directory.GetFiles(Path.Combine(AppContext.BaseDirectory, "Text"), "*.spec.md")
            .Order(StringComparer.Ordinal)
            .SelectMany(file => Read(Path.GetFileName(file), File.ReadAllText(file)))
            .ToDictionary(c => $"{c.File}: {c.Title}");

    private static IEnumerable<SpecificationCase> Read(string file, string text)
    {
        foreach (string section in Heading().Split(text).Skip(1))
        {
            Match match = Pair().Match(section);
            if (!match.Success) throw new InvalidDataException($"{file}: this section is no pair:\n{section}");
            yield return new SpecificationCase(
                file, match.Groups["title"].Value.Trim(), Spelled(match.Groups["recipe"].Value), match.Groups["kind"].Value,
                match.Groups["outcome"].Value.Split('\n', StringSplitOptions.RemoveEmptyEntries));
        }
    }

    private static string Spelled(string text) => CodePoint().Replace(
        text.Replace('⇥', '\t'), m => ((char)int.Parse(m.Groups[1].Value, NumberStyles.HexNumber, CultureInfo.InvariantCulture)).ToString());

    [GeneratedRegex(@"^### ", RegexOptions.Multiline)]
    private static partial Regex Heading();

    [GeneratedRegex(@"\A(?<title>[^\n]+)\n.*?^```yaml\n(?<recipe>.*?)^```\n\s*^```outcome (?<kind>recipe|errors)\n(?<outcome>.*?)^```\s*\z",
        RegexOptions.Multiline | RegexOptions.Singleline)]
    private static partial Regex Pair();

    [GeneratedRegex("⟨U\\+([0-9A-F]{4})⟩")]
    private static partial Regex CodePoint();
}
