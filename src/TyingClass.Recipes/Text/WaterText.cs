using System.Text.RegularExpressions;
using TyingClass.Recipes.Model;

namespace TyingClass.Recipes.Text;

/// <summary>The water: "fresh 12 °C", "sea", "sea 30 g/kg 12 °C"; after the first word the order does not matter.</summary>
internal static partial class WaterText
{
    public const string Forms = "“fresh 12 °C” or “sea 30 g/kg 12 °C”";

    public static string? TryRead(string text, ref FishingSpec fishing)
    {
        string plain = string.Join(' ', text.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries));
        string word = plain.Split(' ')[0];
        if (!Words.Waters.TryGet(word, out WaterKind kind))
            return $"{WordList.Quote(text)} does not begin with fresh or sea.{Hint(word)} Write {Forms}.";

        FishingSpec read = fishing with { Water = kind };
        string rest = plain[word.Length..].Trim();
        foreach (string piece in Pieces(rest))
        {
            if (TryPiece(piece, text, ref read) is { } error) return error;
        }

        fishing = read;
        return null;
    }

    private static string Hint(string word) => word.StartsWith("salt", StringComparison.OrdinalIgnoreCase) ? " Salt water is called sea here."
        : Nearest.Hint(word, Words.Waters.Words);

    // Each piece begins at a number that follows a space: "30 g/kg 12 °C".
    private static string[] Pieces(string rest) =>
        rest.Length == 0 ? [] : [.. Boundary().Split(rest).Where(p => p.Length > 0)];

    private static string? TryPiece(string piece, string text, ref FishingSpec fishing)
    {
        if (!NumberText.TrySplit(piece, "12 °C", out _, out string unit, out string? error)) return $"{error} Water reads {Forms}.";
        if (unit.Length == 0) return $"{WordList.Quote(piece)} has no unit. Write °C or °F after a temperature, g/kg after a salinity: {Forms}.";
        if (Units.IsUnitOf(unit, Dimension.Salinity))
        {
            if (fishing.Water == WaterKind.Fresh) return $"Fresh water has no salinity. Delete {WordList.Quote(piece)}, or write sea in place of fresh.";
            if (fishing.SalinityKgKg is not null) return $"{WordList.Quote(text)} gives the salinity twice. Keep one.";
            error = Limits.Salinity.TryRead(piece, out double salinityKgKg);
            if (error is null) fishing = fishing with { SalinityKgKg = salinityKgKg };
            return error;
        }

        if (fishing.TemperatureC is not null && Units.IsUnitOf(unit, Dimension.Temperature))
            return $"{WordList.Quote(text)} gives the temperature twice. Keep one.";
        error = Limits.Temperature.TryRead(piece, out double temperatureC);
        if (error is null) fishing = fishing with { TemperatureC = temperatureC };
        return error;
    }

    [GeneratedRegex(@"(?:^|\s)(?=[-+\u2212]?\.?[0-9])")]
    private static partial Regex Boundary();
}
