using System.Text.RegularExpressions;

namespace TyingClass.Lessons.Reference;

/// <summary>Formulas are typed plainly in the documents, r_G and Re^0.7; on the page they stand as subscripts and superscripts.</summary>
internal static partial class FormulaText
{
    /// <param name="html">Cleaned; only its text is touched, never a tag.</param>
    public static string Raise(string html) =>
        Power().Replace(NumberPower().Replace(Index().Replace(html, "$1<sub>$2</sub>"), "<sup>$1</sup>"), "<sup>$1</sup>");

    // What follows must not close a tag: then we stand inside one.
    [GeneratedRegex(@"(?<![\p{L}\p{N}_-])(Re|\p{L})_(\p{L}{1,4}|\p{N})(?![\p{L}\p{N}_])(?![^<>]*>)")]
    private static partial Regex Index();

    [GeneratedRegex(@"\^(-?\p{N}+(?:\.\p{N}+)?)(?![^<>]*>)")]
    private static partial Regex NumberPower();

    // In brackets, which may hold one pair of their own; the powers inside have already been raised.
    [GeneratedRegex(@"\^\(((?:[^()]|\([^()]*\))*)\)(?![^<>]*>)")]
    private static partial Regex Power();
}
