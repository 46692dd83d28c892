using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;
using TyingClass.Balance.Bodies;
using TyingClass.Balance.Reports;
using TyingClass.Recipes.Parts;
using TyingClass.Recipes.Text;
using TyingClass.Telling.Figures;
using TyingClass.Telling.Reasons;
using TyingClass.Telling.Sentences;

namespace TyingClass.Lessons.Quantities;

/// <summary>A quantity under stated circumstances: "pitch at 0.6 m/s when fresh". What is not stated is the recipe's own, soaked.</summary>
/// <param name="Part">For "keel moment of cone": the part.</param>
public sealed partial record QuantityQuery(
    Quantity Quantity, double? SpeedMS = null, double? PauseS = null, WetState State = WetState.Soaked, Knot? Knot = null, string? Part = null)
{
    /// <summary>For "strips until back up to 0.5 m": the depth, m.</summary>
    public double? DepthM { get; init; }

    // Long names first, so that "hook eye" is not read as a hook.
    private static readonly Regex PartName = new(
        $@"\G\s+(?<part>(?:{string.Join('|', LedgerNames.OrderByDescending(w => w.Length))})(?:\s+[0-9]+)?)\b",
        RegexOptions.IgnoreCase | RegexOptions.CultureInvariant);

    /// <summary>The longest pause the engine follows, s.</summary>
    public const double LongestPauseS = 10;

    /// <summary>As it is shown and as it parses back.</summary>
    public string Name => Quantity.Name + (Part is null ? "" : $" {PartWords}")
        + (DepthM is { } depth ? $" to {Units.Write(depth, Dimension.Length)}" : "")
        + Circumstances(s => $" after {Units.Write(s, Dimension.Duration)}", ms => $" at {Units.Write(ms, Dimension.Speed)}");

    /// <summary>As a sentence names it, in the reader's units.</summary>
    public string Phrase(UnitSystem units) => Quantity.Phrase + OfThePart + UpTo(units) + Told(units);

    /// <summary>Of the one of two flies that has more of it: "sinks faster on a loop knot".</summary>
    internal string More(UnitSystem units) => Part is null ? DegreeWords.Of(Quantity.Name).More + UpTo(units) + Told(units) : $"has the larger {Phrase(units)}";

    /// <summary>As a heading names it, in the reader's units.</summary>
    public string Heading(UnitSystem units) => Quantity.Name + OfThePart + UpTo(units) + Told(units);

    /// <summary>"The pitch while sinking is −89°."</summary>
    internal static string Sentence(FlyFigures fly, IEnumerable<QuantityQuery> queries, UnitSystem units) =>
        FigureSentence.Of(Figures(fly, queries, units));

    /// <summary>Each with its phrase and what is said of it, once.</summary>
    internal static IEnumerable<(string Phrase, string Said)> Figures(FlyFigures fly, IEnumerable<QuantityQuery> queries, UnitSystem units) =>
        queries.DistinctBy(q => q.Name).ToArray() is var told
            ? told.Select(q => (q.Phrase(units) + (told.Any(q.IsFreshOf) ? " when soaked" : ""), q.SayApart(units, q.Of(fly))[0])) : [];

    // Beside the fresh figure the soaked one is told as such.
    private bool IsFreshOf(QuantityQuery other) => State == WetState.Soaked && other == this with { State = WetState.Fresh };

    /// <summary>"keel height: at least 0.4 mm".</summary>
    internal string Asked(Exercises.Goal goal, UnitSystem units) =>
        GoalSentence.Asked(Phrase(units), Quantity.Magnitude, goal.LowSi, goal.HighSi, units);

    /// <summary>What the ledger's line "bend" sums: the hook's wire behind the shank, to the point. Authors may write "bend".</summary>
    internal const string BendWords = FlyWords.Bend;

    private static IEnumerable<string> LedgerNames => [.. KindsOfPart.Words, "hook eye", "hook", "shank", BendWords, "bend", "eye", "knot"];

    private string? PartWords => Part == "bend" ? BendWords : Part;

    private string OfThePart => Part is null ? "" : $" the {PartWords}";

    private string UpTo(UnitSystem units) => DepthM is { } depth ? $" to {Magnitudes.Depth.SayStated(depth, units)}" : "";

    /// <summary>" at 0.3 m/s on a loop knot": what stands after the name.</summary>
    internal string Told(UnitSystem units) => Circumstances(s => FigureSentence.After(s, units), ms => FigureSentence.At(ms, units));

    private string Circumstances(Func<double, string> after, Func<double, string> at) =>
        (PauseS is { } pause ? after(pause) : "")
        + (SpeedMS is { } speed ? at(speed) : "")
        + (State == WetState.Fresh ? " when fresh" : "")
        + (Knot switch { null => "", Balance.Bodies.Knot.Loop => " on a loop knot", _ => " on a cinched knot" });

    /// <summary>SI; null where the figure has no meaning for the fly.</summary>
    public double? Of(FlyFigures fly) => Quantity.Of(fly, this) is { } value && double.IsFinite(value) ? Units.Rounded(value) : null;

    /// <summary>How it is fished where the question states no other speed or knot.</summary>
    public FishingConditions Under(FishingConditions conditions) =>
        conditions with { SpeedMS = SpeedMS ?? conditions.SpeedMS, Knot = Knot ?? conditions.Knot };

    public string Say(double? si, UnitSystem units) => Quantity.Say(si, units);

    /// <summary>In a sentence, where a sign would need a word of its own: "nose down 12°".</summary>
    internal IReadOnlyList<string> SayApart(UnitSystem units, params ReadOnlySpan<double?> si)
    {
        ImmutableArray<string> said = Quantity.SayApart(units, si);
        if (!Quantity.IsOfTheNose) return said;
        double?[] values = si.ToArray();
        return [.. said.Select((text, i) => values[i] is { } rad ? FlyWords.Nose(text, rad) : text)];
    }

    /// <summary>A quantity by its name, which was checked before.</summary>
    internal static QuantityQuery Known(string name) =>
        TryParse(name, out QuantityQuery query, out string error) ? query : throw new InvalidOperationException(error);

    public string SayStated(double si, UnitSystem units) => Quantity.SayStated(si, units);

    /// <summary>
    /// What a student typed, told back as it was typed: "1.44 m", not "144 cm". Without a unit, or with much else about it, as <see cref="SayStated"/>.
    /// </summary>
    internal string SayTyped(string text, double si, UnitSystem units)
    {
        string typed = text.Trim();
        return typed.Length <= LongestTyped && PlainFigure().IsMatch(typed) ? typed.Replace('-', '−') : SayStated(si, units);
    }

    private const int LongestTyped = 16;

    // A number with its unit, and nothing else.
    [GeneratedRegex(@"\A[-−]?[0-9]+(?:\.[0-9]+)?\s*(?:°|%|[\p{L}µ]+(?:[/·][\p{L}]+)?[²³]?)\z")]
    private static partial Regex PlainFigure();

    /// <summary>Reads the whole text as one quantity.</summary>
    /// <param name="error">What is wrong and what to write instead.</param>
    public static bool TryParse(string text, out QuantityQuery query, out string error)
    {
        ArgumentNullException.ThrowIfNull(text);
        if (!TryReadPrefix(text, 0, out query, out int end, out error)) return false;
        if (text[end..].Trim() is { Length: > 0 } rest)
        {
            error = $"“{rest}” after “{query.Name}” is not understood. {Advice(query.Quantity)}";
            return false;
        }

        return true;
    }

    /// <summary>
    /// Reads the longest quantity that begins at <paramref name="start"/>. On failure <paramref name="end"/> lies behind whatever was recognized.
    /// </summary>
    public static bool TryReadPrefix(string text, int start, out QuantityQuery query, out int end, out string error)
    {
        ArgumentNullException.ThrowIfNull(text);
        query = null!;
        end = start;
        error = "";
        while (end < text.Length && char.IsWhiteSpace(text[end])) end++;
        if (QuantityTable.LongestAt(text, end, out int nameEnd) is not { } quantity)
        {
            string typed = text[end..].Trim();
            error = $"“{typed}” is not a quantity of the report.{Nearest.Hint(typed, QuantityTable.All.Select(q => q.Name))} The list is in docs/lessons.md.";
            return false;
        }

        query = new QuantityQuery(quantity);
        end = nameEnd;
        if (quantity.Name.EndsWith(" of", StringComparison.Ordinal) && !TryReadPart(text, ref query, ref end))
        {
            error = $"Say the part after “{quantity.Name}”, as in “{quantity.Name} cone”.";
            return false;
        }

        while (Circumstance().Match(text, end) is { Success: true } match)
        {
            end = match.Index + match.Length;
            if (!TryTake(match, ref query, out error)) return false;
        }

        return true;
    }

    private static bool TryReadPart(string text, ref QuantityQuery query, ref int end)
    {
        if (PartName.Match(text, end) is not { Success: true } match) return false;
        string part = match.Groups["part"].Value.ToLowerInvariant();
        query = query with { Part = part == BendWords ? "bend" : part };
        end = match.Index + match.Length;
        return true;
    }

    private static bool TryTake(Match match, ref QuantityQuery query, out string error)
    {
        string value = match.Groups["value"].Value;
        (Quantities.Circumstances kind, Dimension? dimension) = match.Groups["word"].Value.ToLowerInvariant() switch
        {
            "at" => (Quantities.Circumstances.Speed, Dimension.Speed),
            "after" => (Quantities.Circumstances.Pause, Dimension.Duration),
            "to" => (Quantities.Circumstances.Depth, Dimension.Length),
            "when" => (Quantities.Circumstances.State, (Dimension?)null),
            _ => (Quantities.Circumstances.Knot, null),
        };
        double si = 0;
        error = "";
        if (!query.Quantity.Takes.HasFlag(kind))
        {
            error = $"“{match.Value.Trim()}” makes no difference to {query.Quantity.Name}. {Advice(query.Quantity)}";
            return false;
        }

        if (dimension is { } d && !Units.TryParse(value, d, out si, out string? why))
        {
            error = why;
            return false;
        }

        if (kind == Quantities.Circumstances.Speed && si is not (>= 0.01 and <= 3))
            error = $"A fly is fished at 0.01 m/s to 3 m/s; “{value}” is outside that.";
        if (kind == Quantities.Circumstances.Depth && si is not (>= 0 and <= 50))
            error = $"A depth may be up to 50 m; “{value}” is not.";
        if (kind == Quantities.Circumstances.Pause && si is not (> 0 and <= LongestPauseS))
            error = string.Create(CultureInfo.InvariantCulture, $"A pause may be up to {LongestPauseS} s; “{value}” is not.");
        query = kind switch
        {
            Quantities.Circumstances.Speed => query with { SpeedMS = si },
            Quantities.Circumstances.Pause => query with { PauseS = si },
            Quantities.Circumstances.Depth => query with { DepthM = si },
            Quantities.Circumstances.State =>
                query with { State = value.Equals("fresh", StringComparison.OrdinalIgnoreCase) ? WetState.Fresh : WetState.Soaked },
            _ => query with { Knot = value.Equals("loop", StringComparison.OrdinalIgnoreCase) ? Balance.Bodies.Knot.Loop : Balance.Bodies.Knot.Cinched },
        };
        return error.Length == 0;
    }

    private static string Advice(Quantity quantity)
    {
        List<string> forms = [];
        if (quantity.Takes.HasFlag(Quantities.Circumstances.Speed)) forms.Add("“at 0.6 m/s”");
        if (quantity.Takes.HasFlag(Quantities.Circumstances.Pause)) forms.Add("“after 8 s”");
        if (quantity.Takes.HasFlag(Quantities.Circumstances.Depth)) forms.Add("“to 0.5 m”");
        if (quantity.Takes.HasFlag(Quantities.Circumstances.State)) forms.Add("“when fresh”");
        if (quantity.Takes.HasFlag(Quantities.Circumstances.Knot)) forms.Add("“on a loop knot”");
        return forms.Count == 0 ? $"{quantity.Name} stands alone." : $"After {quantity.Name} may stand {string.Join(", ", forms)}.";
    }

    [GeneratedRegex(
        @"\G\s+(?:(?<word>at)\s+(?<value>[0-9][0-9./]*\s*(?:m/s|cm/s|mm/s|ft/s|in/s))|(?<word>after)\s+(?<value>[0-9.]+\s*(?:s|seconds?|min)\b)"
        + @"|(?<word>to)\s+(?<value>[0-9.]+\s*(?:mm|cm|m|in|ft)\b)|(?<word>when)\s+(?<value>fresh|soaked)\b"
        + @"|(?<word>on|with)\s+a\s+(?<value>loop|cinched)\s+knot\b)",
        RegexOptions.IgnoreCase)]
    private static partial Regex Circumstance();
}
