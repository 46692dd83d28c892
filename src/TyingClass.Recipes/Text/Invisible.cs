namespace TyingClass.Recipes.Text;

/// <summary>Characters that have no business in a recipe: they cannot be seen, or they rearrange what is seen.</summary>
internal static class Invisible
{
    /// <summary>
    /// Control characters other than tab and line ends, the extra line ends of old YAML, marks that turn the reading direction, spaces and hyphens of no width.
    /// </summary>
    public static bool Is(char c) => c is not ('\t' or '\n' or '\r') && (char.IsControl(c) || c is
        '\u00AD' or '\u200B' or '\u200E' or '\u200F' or '\u2028' or '\u2029' or '\u2060' or '\uFEFF' or '\uFFFE' or '\uFFFF'
        or (>= '\u202A' and <= '\u202E') or (>= '\u2066' and <= '\u2069'));
}
