namespace TyingClass.Recipes.Text;

/// <summary>One mistake in a text: where it stands and what to write instead.</summary>
/// <param name="Line">From 1.</param>
/// <param name="Column">From 1, counted in UTF-16 units as editors do.</param>
/// <param name="Path">The field: "hook.gape", "parts[0].size", "parts[1]"; null when it belongs to no field.</param>
/// <param name="Text">Plain sentences; may quote what the user typed, so it is text, never markup.</param>
public sealed record RecipeError(int Line, int Column, string? Path, string Text)
{
    /// <summary>"line:column: text".</summary>
    public override string ToString() => FormattableString.Invariant($"{Line}:{Column}: {Text}");
}
