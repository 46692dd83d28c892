using System.Collections.Frozen;
using Humanizer;

namespace TyingClass.Telling.Replies;

/// <summary>On an order of flies.</summary>
public static class OrderReply
{
    private static readonly FrozenDictionary<string, (string Largest, string Smallest)> ByQuantity = new Dictionary<string, (string, string)>
    {
        ["mass"] = ("heaviest", "lightest"),
        ["mass with held water"] = ("heaviest to cast", "lightest to cast"),
        ["wet weight"] = ("heaviest in the water", "lightest in the water"),
        ["sink rate"] = ("fastest", "slowest"),
        ["deepest"] = ("deepest", "least deep"),
        ["depth"] = ("deepest", "least deep"),
        ["keel height"] = ("stiffest", "least stiff"),
        ["level-line keel"] = ("deepest keel", "least keel"),
        ["pitch"] = ("nose highest", "nose lowest"),
        ["pitch while sinking"] = ("nose highest", "nose lowest"),
        ["pitch in the pause"] = ("nose highest", "nose lowest"),
    }.ToFrozenDictionary(StringComparer.OrdinalIgnoreCase);

    /// <summary>"Right, deepest first: Big tungsten, Small brass, Bare floss."</summary>
    public static string Right(string quantity, bool largestFirst, IEnumerable<string> names) =>
        Reply.Fit($"Right, {First(quantity, largestFirst)}: {string.Join(", ", names)}.", $"Right, {First(quantity, largestFirst)}.");

    public static string Backward(string quantity, bool largestFirst) =>
        $"You have it backward: {First(quantity, largestFirst)} was asked.";

    /// <param name="alone">No other two stand wrong.</param>
    public static string OnePair(string one, string other, bool alone) => $"{(alone ? "Only " : "")}{one} and {other} stand the wrong way round.";

    /// <param name="neighbors">How many pairs of neighbors stand wrong.</param>
    public static string Pairs(int neighbors, int of) => $"{Grammar.Capital(neighbors.ToWords())} of {of.ToWords()} neighbors stand the wrong way round.";

    private static string First(string quantity, bool largestFirst) => $"{Words(quantity, largestFirst)} first";

    private static string Words(string quantity, bool largest) =>
        ByQuantity.TryGetValue(quantity, out (string Largest, string Smallest) words) ? largest ? words.Largest : words.Smallest
        : largest ? "largest" : "smallest";
}
