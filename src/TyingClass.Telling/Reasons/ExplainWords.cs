using System.Collections.Immutable;
using System.Text.RegularExpressions;
using TyingClass.Recipes.Parts;

namespace TyingClass.Telling.Reasons;

/// <summary>What an explanation can speak of, in a tyer's words.</summary>
internal static class ExplainWords
{
    // Whoever says it otherwise has said it: each thing, and what else it is called.
    private static readonly ImmutableArray<(string Word, string Called)> Besides =
    [
        ("wing", "wings?|hair|fur|feathers?|bucktail|marabou"), ("tail", "tails?"), ("body", "body|bodies|dubbing|dressing"),
        ("dumbbell eyes", "dumbbell eyes|dumbbells?|barbells?|(?:lead|brass|tungsten|heavy) eyes"), ("wraps", "wraps?|wire|turns"),
        ("bead", "beads?|bead-?heads?"), ("eye", "(?<!dumbbell |lead |brass |tungsten |heavy )eyes?|ring"), ("nose", "noses?|head first"),
        ("knot", "knots?|loops?|cinched"),
        ("leader", "leaders?|tippet|nylon|line"), ("pull", "pulls?|pulled|pulling|tugs?|drags? it|holds? (?:it|the nose)"), ("slack", "slack"),
        ("pause", "pauses?|rests?|waits?"), ("lead", "lead"), ("glasses", "glasses|goggles|eye protection"), ("children", "child(?:ren)?|kids?"),
        ("water", "water|wet|soak(?:s|ed|ing)?|(?<!food or |food, )drinks?"), ("air", "air|bubbles?|foam"),
        ("drag", "drags?|push(?:es)?|resist(?:s|ance)?"), ("weight", "weights?|heavy|heavier|heaviest|mass(?:es)?|weighs?"),
        ("mass center", "mass cent(?:er|re)|cent(?:er|re) of (?:mass|gravity)"), ("balance point", "balance points?"), ("line of pull", "line of pull"),
        ("hinge line", "hinge lines?"), ("keel height", "keel height|keels?|stiff(?:er|ness)?"),
        ("gape", "gape"), ("shank", "shank"), ("bend", "bend"), ("hook", "hooks?"),
        ("hands", "hands?|tyers?|tying|slips?"), ("speed", "speeds?|fast(?:er)?|slow(?:er|ly)?"),
        ("count", "counts?|counted|too few|more flies|more of them|samples?|trials?|tie more|how many|(?:three|six|eight|ten) (?:out )?of"),
        ("chance", "chances?|luck|lucky|coin|tell|prove[sd]?|proof|sure|conclude|range|overlaps?|happen"),
    ];

    private static readonly ImmutableArray<(string Word, Regex Called)> All =
    [
        .. Besides.Concat(KindsOfPart.Words.Where(word => !Besides.Any(b => b.Word == word)).Select(word => (word, $"{Regex.Escape(word)}s?")))
            .Select(w => (w.Item1, new Regex($@"(?<!\p{{L}})(?:{w.Item2})(?!\p{{L}})", RegexOptions.IgnoreCase | RegexOptions.CultureInvariant))),
    ];

    /// <summary>Those a text speaks of, the oftenest first.</summary>
    public static IEnumerable<string> In(string text) =>
        All.Select(word => (word.Word, word.Called.Count(text))).Where(w => w.Item2 > 0).OrderByDescending(w => w.Item2).Select(w => w.Word);
}
