using System.Collections.Frozen;

namespace TyingClass.Telling.Reasons;

/// <summary>How one fly stands to another, or to what was asked, in a figure: clauses that want "it" before them.</summary>
/// <param name="More">"sinks faster".</param>
/// <param name="TooMuch">"sinks too fast".</param>
public sealed record DegreeWords(string More, string Less, string TooMuch, string TooLittle)
{
    private static readonly DegreeWords Mass = Verb("is", "heavier", "lighter", "too heavy", "too light");

    private static readonly FrozenDictionary<string, DegreeWords> ByQuantity = new Dictionary<string, DegreeWords>
    {
        ["mass"] = Mass,
        ["added mass"] = Mass,
        ["mass of"] = Mass,
        ["held water"] = Verb("carries", "more water", "less water", "too much water", "too little water"),
        ["mass with held water"] = Verb("is", "heavier to cast", "lighter to cast", "too heavy to cast", "too light to cast"),
        ["wet weight"] = Verb("weighs", "more in the water", "less in the water", "too much in the water", "too little in the water"),
        ["displaced volume"] = Verb("pushes", "more water aside", "less water aside", "too much water aside", "too little water aside"),
        ["mass center, x"] = Verb("has its mass center", "further back", "further forward", "too far back", "too far forward"),
        ["mass center, behind eye"] = Verb("has its mass center", "further back", "further forward", "too far back", "too far forward"),
        ["hang angle"] = Verb("hangs", "further from plumb", "nearer to plumb", "too far from plumb", "too near to plumb"),
        ["pitch"] = Verb("rides", "more nose up", "more nose down", "with its nose too high", "with its nose too low"),
        ["pitch while sinking"] = Verb("sinks", "more nose up", "more nose down", "with its nose too high", "with its nose too low"),
        ["lean"] = Verb("leans", "further over", "less far over", "too far over", "too little"),
        ["drag"] = Verb("is pulled by the water", "harder", "less hard", "too hard", "too little"),
        ["lift"] = Verb("is pushed up by the water", "more", "less", "too much", "too little"),
        ["line angle"] = Verb("hangs on its leader", "more steeply", "less steeply", "too steeply", "not steeply enough"),
        ["sink rate"] = Verb("sinks", "faster", "more slowly", "too fast", "too slowly"),
        ["depth"] = Verb("gets", "deeper", "less deep", "too deep", "not deep enough"),
        ["keel moment of"] = Verb("has", "more say", "less say", "too much say", "too little say"),
        ["rides as intended"] = Verb("rides right", "more often", "less often", "too often", "too seldom"),
        ["keel height"] = Verb("has", "more keel height", "less keel height", "too much keel height", "too little keel height"),
        ["level-line keel"] = Verb("has", "more level-line keel", "less level-line keel", "too much level-line keel", "too little level-line keel"),
        ["lean while sinking"] = Verb("leans", "further over as it sinks", "less far over as it sinks", "too far over as it sinks", "too little as it sinks"),
        ["hop"] = Verb("rises", "further on a strip", "less far on a strip", "too far on a strip", "not far enough on a strip"),
        ["deepest"] = Verb("gets", "deeper", "less deep", "too deep", "not deep enough"),
        ["shallowest"] = Verb("stays", "deeper", "less deep", "too deep", "not deep enough"),
        ["pitch in the pause"] =
            Verb("carries its nose", "higher in the pause", "lower in the pause", "too high in the pause", "too low in the pause"),
        ["upright share"] = Verb("rides the right way up", "for longer", "for less long", "for too long", "for too short a time"),
        ["time to point down"] = Verb("takes", "longer to point down", "less time to point down", "too long to point down", "too little time to point down"),
        ["depth after a count"] = Verb("gets", "deeper on the count", "less deep on the count", "too deep on the count", "not deep enough on the count"),
        ["righting range"] = Verb("comes back", "from further over", "from less far over", "from too far over", "from not far enough over"),
    }.ToFrozenDictionary(StringComparer.OrdinalIgnoreCase);

    public static DegreeWords Of(string quantity) =>
        ByQuantity.GetValueOrDefault(quantity) ?? Verb("has", $"the larger {Short(quantity)}", $"the smaller {Short(quantity)}",
            $"too large a {Short(quantity)}", $"too small a {Short(quantity)}");

    public string Say(bool larger) => larger ? More : Less;

    public string Too(bool large) => large ? TooMuch : TooLittle;

    private static string Short(string quantity) => quantity.Split(',')[0];

    private static DegreeWords Verb(string does, string more, string less, string tooMuch, string tooLittle) =>
        new($"{does} {more}", $"{does} {less}", $"{does} {tooMuch}", $"{does} {tooLittle}");
}
