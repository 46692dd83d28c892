using TyingClass.Recipes.Text;

namespace TyingClass.Recipes.Parts;

/// <summary>One quantity of a part that a reader may pull about at the bench.</summary>
/// <param name="Key">As the recipe writes it: "size".</param>
/// <param name="Label">What stands before "of the bead": "Size".</param>
/// <param name="Dimension">Null for a whole number.</param>
public readonly record struct Dial(string Key, string Label, Dimension? Dimension, double LowSi, double HighSi, double ValueSi)
{
    /// <summary>A length, its ends made to hold the value it has now.</summary>
    internal static Dial Length(string key, string label, double lowM, double highM, double valueM) =>
        new(key, label, Text.Dimension.Length, lowM, Math.Max(highM, valueM), valueM);
}
