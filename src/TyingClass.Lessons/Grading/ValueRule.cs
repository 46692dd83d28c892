using System.Globalization;
using TyingClass.Lessons.Exercises;
using TyingClass.Recipes.Text;

namespace TyingClass.Lessons.Grading;

/// <summary>Whether a recipe value keeps to what an exercise allows.</summary>
internal static class ValueRule
{
    /// <summary>True when the value, as a recipe writes it, may stand there.</summary>
    public static bool Allows(AllowedChange rule, string key, string? value)
    {
        if (rule.Words.Length > 0) return value is not null && rule.Words.Any(word => Same(word, value, key));
        if (rule.LowText is null || rule.HighText is null) return true;
        return TryRead(value, key, out double si) && TryRead(rule.LowText, key, out double low) && TryRead(rule.HighText, key, out double high)
            && si >= low && si <= high;
    }

    /// <summary>What the key of a path measures; null for words and plain numbers.</summary>
    public static Dimension? DimensionOf(string key) => key switch
    {
        "size" or "diameter" or "length" or "at" or "to" or "side offset" or "shank" or "wire" or "gape" or "leader" or "line out"
            or "leader length" or "rod tip" or "water depth" => Dimension.Length,
        "count down" or "wetted" => Dimension.Duration,
        "mass" => Dimension.Mass,
        "density" => Dimension.Density,
        "clocked" => Dimension.Angle,
        "speed" or "current" => Dimension.Speed,
        _ => null,
    };

    public static bool TryRead(string? text, string key, out double si) =>
        DimensionOf(key) is { } dimension
            ? Units.TryParse(text, dimension, out si, out _)
            : double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out si);

    private static bool Same(string word, string value, string key) =>
        TryRead(word, key, out double a) && TryRead(value, key, out double b)
            ? a.Equals(b)
            : string.Equals(Plain(word), Plain(value), StringComparison.OrdinalIgnoreCase);

    private static string Plain(string text) =>
        string.Join(' ', text.Replace("deg", "°", StringComparison.Ordinal).Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries)).Replace(" °", "°",
        StringComparison.Ordinal);
}
