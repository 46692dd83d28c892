using System.Globalization;

namespace TyingClass.Recipes.Text;

/// <summary>What is in a rattle: "3 steel", "2 glass", "3".</summary>
internal static class BallText
{
    private static readonly string[] Materials = ["steel", "glass"];

    public static (int? Balls, string? Material) Read(MapReader map)
    {
        if (map.Text("balls", "“3 steel”") is not { } text) return default;
        string[] words = WordList.Plain(text).Split(' ');
        bool counted =
            int.TryParse(words[0], NumberStyles.None, CultureInfo.InvariantCulture, out int balls) && balls is >= Limits.FewestBalls and <= Limits.MostBalls;
        if (counted && (words.Length == 1 || (words.Length == 2 && Materials.Contains(words[1])))) return (balls, words.ElementAtOrDefault(1));
        map.Complain("balls",
            $"{WordList.Quote(text)} does not say what is in the rattle. Write how many balls, {Limits.FewestBalls} to {Limits.MostBalls}, "
                + $"and {WordList.Or(Materials)}: “3 steel”.");
        return default;
    }

    public static string? Write(int? balls, string? material) =>
        balls is { } count ? string.Create(CultureInfo.InvariantCulture, $"{count} {material}").TrimEnd() : null;
}
