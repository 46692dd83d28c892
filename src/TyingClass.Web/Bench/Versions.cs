using System.Collections.Immutable;
using System.Globalization;

namespace TyingClass.Web.Bench;

/// <summary>
/// What stood on the bench, step by step, for undo and redo. It travels in the form, so that it works without scripting and keeps nothing on the server.
/// </summary>
/// <param name="All">Oldest first, never empty.</param>
/// <param name="Index">Which of them stands there now.</param>
/// <param name="Gesture">The field that made the newest one. A slider that is still being dragged goes on with its own version instead of leaving a hundred
/// behind.</param>
public sealed record Versions(ImmutableArray<string> All, int Index, string Gesture)
{
    public const int Most = 40;

    private const int MostBytes = 512 * 1024;

    // Ends no line of a recipe and stands in none: the parser refuses control characters.
    private const char Between = '\u001e';

    public static Versions Of(string text) => new([Plain(text)], 0, "");

    public string Current => All[Index];

    public bool CanUndo => Index > 0;

    public bool CanRedo => Index < All.Length - 1;

    /// <summary>What came after is dropped, as everywhere.</summary>
    public Versions With(string text, string gesture = "")
    {
        string plain = Plain(text);
        if (plain == Current) return this with { Gesture = gesture.Length > 0 ? gesture : Gesture };
        bool goesOn = gesture.Length > 0 && gesture == Gesture && Index > 0;
        ImmutableArray<string> kept = [.. All.Take(goesOn ? Index : Index + 1), plain];
        if (kept.Length > Most) kept = kept[^Most..];
        return new Versions(kept, kept.Length - 1, Plain(gesture));
    }

    public Versions Undo() => this with { Index = Math.Max(Index - 1, 0), Gesture = "" };

    public Versions Redo() => this with { Index = Math.Min(Index + 1, All.Length - 1), Gesture = "" };

    public string Pack() => Packed.Pack(string.Join(Between, [Index.ToString(CultureInfo.InvariantCulture), Gesture, .. All]));

    public static Versions? Unpack(string? packed)
    {
        if (!Packed.TryUnpack(packed, MostBytes, out string? text)) return null;
        string[] fields = text.Split(Between);
        return fields.Length >= 3 && int.TryParse(fields[0], NumberStyles.None, CultureInfo.InvariantCulture, out int index) && index < fields.Length - 2
            && fields.Length - 2 <= Most
            ? new Versions([.. fields[2..]], index, fields[1])
            : null;
    }

    private static string Plain(string text) => text.Replace(Between, '\uFFFD');
}
