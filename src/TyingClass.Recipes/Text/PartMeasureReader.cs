using TyingClass.Recipes.Model;
using TyingClass.Recipes.Parts;

namespace TyingClass.Recipes.Text;

/// <summary>
/// Reads the measures of one part: numbers with units, the trade's short ways to write them, and words that hang on the hook or on other parts.
/// </summary>
/// <param name="tied">Names of the parts tied in before it.</param>
internal sealed class PartMeasureReader(MapReader map, KindOfPart kind, IReadOnlyList<string> tied)
{
    public Sayings Said { get; private set; } = Sayings.None;

    public double? Size()
    {
        if (map.Text("size", kind.LimitOf("size").Example) is not { } text) return null;
        if (TradeText.SizeWord(text) is { } word && kind.SizeNamed(word) is { } sizeM)
        {
            Said = Said.With("size", word);
            return sizeM;
        }

        return Quantity("size", kind.LimitOf("size"));
    }

    public double? Diameter() => Quantity("diameter", kind.LimitOf("diameter"));

    public double? Length()
    {
        if (map.Text("length", kind.LimitOf("length").Example) is not { } text) return null;
        return InWords("length", PlaceText.ReadShanks(text, out string? error), error) ? null : Quantity("length", kind.LimitOf("length"));
    }

    /// <summary>Left out, it follows from the parts tied in before.</summary>
    public double At()
    {
        if (!map.Has("at"))
        {
            Said = Said.With("at", "");
            if (kind.Keys.Contains("to") && !map.Has("to")) Said = Said.With("to", "");
            return 0;
        }

        if (map.Text("at", Limits.Place.Example) is not { } text) return 0;
        if (Units.TryParse(text, Dimension.Length, out double atM, out _) && atM < 0)
        {
            map.Complain("at",
                $"{WordList.Quote(text)} is in front of the shank. “at” counts from the front end of the shank, which is 0 mm, toward the bend.");
            return 0;
        }

        if (!InWords("at", PlaceText.Read(text, tied, out string? error), error)) return Quantity("at", Limits.Place) ?? 0;
        // Wound from there forward: its other end follows.
        if (Said["at"] == PlaceText.Bend && kind.Keys.Contains("to") && !map.Has("to")) Said = Said.With("to", "");
        return 0;
    }

    public double? To()
    {
        if (map.Text("to", Limits.Place.Example) is not { } text) return null;
        if (InWords("to", PlaceText.Read(text, tied, out string? error), error)) return null;
        double? toM = Quantity("to", Limits.Place);
        // Which end of what is wound from the bend this is shows when the hook is known.
        if (toM is { } m && Said["at"] == PlaceText.Bend) Said = Said.With("to", Units.Exact(m, Dimension.Length, "mm"));
        return toM;
    }

    // True when the words were taken, or complained about.
    private bool InWords(string key, string? words, string? error)
    {
        if (words is not null) Said = Said.With(key, words);
        if (error is not null) map.Complain(key, error);
        return words is not null || error is not null;
    }

    private double? Quantity(string key, Limit limit)
    {
        if (map.Text(key, limit.Example) is not { } text) return null;
        string meant = kind.IsInInches(key, text.Trim()) ? $"{text.Trim()} in" : text;
        if (limit.TryRead(meant, out double si) is not { } error) return si;
        map.Complain(key, error + (Units.TryParse(meant, limit.Dimension, out _, out _) ? "" : Hint(key, text) + Offer(key)));
        return null;
    }

    private string Offer(string key) => kind.OfferFor(key) is { } words ? $" {words}" : "";

    private string Hint(string key, string text)
    {
        if (key == "size") return Nearest.Hint(text, kind.SizeWords);
        if (key is "at" or "to") return Nearest.Hint(text, PlaceText.Words);
        // A spool's thousandths with the nought forgotten: nobody winds wire of an eighth of an inch.
        return kind.IsInInches(key, ".015") && TradeText.Decimals(text) is { } decimals ? $" Did you mean .0{decimals} (inches), or 0.{decimals} mm?" : "";
    }
}
