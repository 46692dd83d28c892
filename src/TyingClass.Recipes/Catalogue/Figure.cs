namespace TyingClass.Recipes.Catalogue;

/// <summary>A catalogue number with its unit and where it comes from. No number enters the catalogue without one.</summary>
/// <param name="Value">In <paramref name="Unit"/>.</param>
/// <param name="Unit">As shown to a reader: "kg/m³", "s", "1" for a pure number.</param>
/// <param name="Source">A citation, or <see cref="Estimate"/>, with a remark after a comma where it helps.</param>
public readonly record struct Figure(double Value, string Unit, string Source)
{
    /// <summary>Common practice with no source: an editable default, never a measured fact.</summary>
    public const string Estimate = "estimate";
}
