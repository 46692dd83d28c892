using System.Collections.Frozen;
using System.Globalization;

namespace TyingClass.Storage.People;

/// <summary>
/// Letters that look like others. Two names that look alike are one name when it comes to who has it, so that nobody can pass for somebody else; each is still
/// shown as it was typed. After the Unicode Consortium's confusables (UTS 39), the Greek and Cyrillic capitals and small letters among them, and the wide forms
/// of Latin ones.
/// </summary>
internal static class Lookalikes
{
    // Upper case, as keys are.
    private static readonly FrozenDictionary<char, char> Latin = Pairs(
        "АВЕЅІЈКМНОРСТУХԌԚԜҮ", "ABESIJKMHOPCTYXGQWY",
        "ΑΒΕΖΗΙΚΜΝΟΡΤΥΧ", "ABEZHIKMNOPTYX");

    // Letters, as Unicode has it, that leave no ink.
    private const string Blank = "\u115F\u1160\u3164\uFFA0\u2800\u034F\u17B4\u17B5";

    /// <summary>Of a key in upper case.</summary>
    public static string Fold(string key) => string.Concat(key.Select(Fold));

    /// <summary>Leaves no ink, or changes the way what stands beside it is read.</summary>
    public static bool IsInvisible(char c) => Blank.Contains(c, StringComparison.Ordinal) || char.GetUnicodeCategory(c)
        is UnicodeCategory.Control or UnicodeCategory.Format or UnicodeCategory.PrivateUse or UnicodeCategory.OtherNotAssigned or UnicodeCategory.LineSeparator
        or UnicodeCategory.ParagraphSeparator;

    private static char Fold(char c)
    {
        // Wide forms, as of some keyboards: U+FF01 to U+FF5E are the printable signs of ASCII in the same order.
        if (c is >= '\uFF01' and <= '\uFF5E') c = char.ToUpperInvariant((char)(c - 0xFEE0));
        return Latin.GetValueOrDefault(c, c);
    }

    private static FrozenDictionary<char, char> Pairs(params string[] rows) => rows.Chunk(2)
        .SelectMany(row => row[0].Zip(row[1], KeyValuePair.Create)).ToFrozenDictionary();
}
