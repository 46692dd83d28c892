namespace TyingClass.Drawing.Words;

/// <summary>How wide a line of text comes out, on the generous side, since the reader's own serif is not known here.</summary>
internal static class TextSize
{
    /// <summary>In ems.</summary>
    public static double WidthEm(string text) => text.Sum(c => c switch
    {
        'i' or 'j' or 'l' or '.' or ',' or ';' or ':' or '\'' or '|' or ' ' => 0.33,
        'm' or 'w' or 'M' or 'W' or '\u2212' or '+' => 0.84,
        'f' or 't' or 'r' or '(' or ')' => 0.44,
        >= 'A' and <= 'Z' => 0.72,
        > '\u2E80' => 1.05,
        _ => 0.57,
    });
}
