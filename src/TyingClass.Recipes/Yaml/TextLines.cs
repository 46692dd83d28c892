namespace TyingClass.Recipes.Yaml;

/// <summary>The lines of a text as YAML counts them: ended by LF, CR LF or a lone CR.</summary>
public static class TextLines
{
    public static string[] Of(string text) =>
        text.Replace("\r\n", "\n", StringComparison.Ordinal).Replace('\r', '\n').Split('\n');
}
