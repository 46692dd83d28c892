namespace TyingClass.Recipes.Parts;

/// <summary>How a form words a key.</summary>
/// <param name="Example">Null for the usual one.</param>
public readonly record struct FieldWording(string Label, string? Example = null);
