using System.Collections.Frozen;

namespace TyingClass.Telling.Reasons;

/// <summary>What a tyer sees when a figure gets larger or smaller, as a clause about the fly.</summary>
/// <param name="Larger">"it sinks faster".</param>
/// <param name="LargerWould">"it would sink faster".</param>
public sealed record MoveWords(string Larger, string Smaller, string LargerWould, string SmallerWould)
{
    private static readonly FrozenDictionary<string, MoveWords> ByQuantity = new Dictionary<string, MoveWords>
    {
        ["mass"] = Verb("the fly", "gets", "get", "heavier", "lighter"),
        ["added mass"] = Verb("the fly", "gets", "get", "heavier", "lighter"),
        ["held water"] = Verb("it", "carries", "carry", "more water", "less water"),
        ["mass with held water"] = Verb("it", "gets", "get", "heavier to cast", "lighter to cast"),
        ["wet weight"] = Verb("it", "weighs", "weigh", "more in the water", "less in the water"),
        ["displaced volume"] = Verb("it", "pushes", "push", "more water aside", "less water aside"),
        ["mass center, x"] = Verb("the mass center", "moves", "lie further", "back", "forward"),
        ["mass center, behind eye"] = Verb("the mass center", "moves", "lie further", "back", "forward"),
        ["center of buoyancy, x"] = Verb("the lift of the water", "moves", "lie further", "back", "forward"),
        ["balance point, x"] = Verb("the balance point", "moves", "lie further", "back", "forward"),
        ["tow point, x"] = Verb("the place where the leader pulls", "moves", "lie further", "back", "forward"),
        ["mass center, z"] = Across("the mass center"),
        ["mass center, below eye"] = Turned(Across("the mass center")),
        ["center of buoyancy, z"] = Across("the lift of the water"),
        ["balance point, z"] = Across("the balance point"),
        ["tow point, z"] = Across("the place where the leader pulls"),
        ["hang angle"] = Verb("it", "hangs", "hang", "further from the plumb line", "nearer the plumb line"),
        ["level-line keel"] = Verb("the level-line keel", "gets", "get", "larger", "smaller"),
        ["keel height"] = Verb("the keel height", "gets", "get", "larger", "smaller"),
        ["pitch"] = Verb("it", "rides", "ride", "more nose up", "more nose down"),
        ["lean"] = Verb("it", "leans", "lean", "further over", "less far over"),
        ["drag"] = Verb("the water", "pulls on it", "pull on it", "harder", "less"),
        ["lift"] = Verb("the water", "pushes it", "push it", "up more", "down more"),
        ["line angle"] = Verb("the leader", "leaves the eye", "leave the eye", "more steeply", "less steeply"),
        ["sink rate"] = Verb("it", "sinks", "sink", "faster", "more slowly"),
        ["pitch while sinking"] = Verb("it", "sinks", "sink", "more nose up", "more nose down"),
        ["lean while sinking"] = Verb("it", "leans", "lean", "further over as it sinks", "less far over as it sinks"),
        ["depth"] = Verb("it", "gets", "get", "deeper in the pause", "less deep in the pause"),
        ["rides as intended"] = new("more flies ride as intended", "fewer flies ride as intended",
            "more flies would ride as intended", "fewer flies would ride as intended"),
        ["leans"] = new("more flies lean", "fewer flies lean", "more flies would lean", "fewer flies would lean"),
        ["flips"] = new("more flies flip", "fewer flies flip", "more flies would flip", "fewer flies would flip"),
        ["righting range"] = Verb("it", "comes back", "come back", "from further over", "from less far over"),
        ["hop"] = Verb("a strip", "lifts it", "lift it", "more", "less"),
        ["deepest"] = Verb("it", "fishes", "fish", "deeper", "less deep"),
        ["shallowest"] = Verb("it", "comes", "come", "less near the surface", "nearer the surface"),
        ["pitch in the pause"] = Verb("the nose", "points", "point", "further up in the pause", "further down in the pause"),
        ["upright share"] = Verb("it", "rides", "ride", "the right way up for more of the time", "the right way up for less of the time"),
        ["time to point down"] = Verb("the nose", "needs", "need", "a longer pause to point down", "a shorter pause to point down"),
        ["depth after a count"] = Verb("it", "gets", "get", "deeper on the count", "less deep on the count"),
        ["strips until back up"] = Verb("it", "needs", "need", "more strips to come up", "fewer strips to come up"),
        ["keel moment of"] = Verb("it", "gets", "get", "more say", "less say"),
        ["mass of"] = Verb("it", "gets", "get", "heavier", "lighter"),
        ["parts"] = Verb("the number of parts", "gets", "get", "larger", "smaller"),
    }.ToFrozenDictionary(StringComparer.OrdinalIgnoreCase);

    public static MoveWords Of(string quantity) => ByQuantity.GetValueOrDefault(quantity) ?? Verb($"the {quantity}", "gets", "get", "larger", "smaller");

    public string Say(bool larger) => larger ? Larger : Smaller;

    public string SayWould(bool larger) => larger ? LargerWould : SmallerWould;

    // Across the shank, larger is away from the point.
    private static MoveWords Across(string what) => new($"{what} moves away from the point", $"{what} moves toward the point",
        $"{what} would lie further from the point", $"{what} would lie nearer the point");

    // Measured the other way.
    private static MoveWords Turned(MoveWords of) => new(of.Smaller, of.Larger, of.SmallerWould, of.LargerWould);

    private static MoveWords Verb(string what, string does, string would, string more, string less) =>
        new($"{what} {does} {more}", $"{what} {does} {less}", $"{what} would {would} {more}", $"{what} would {would} {less}");
}
