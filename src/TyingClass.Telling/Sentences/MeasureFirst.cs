using System.Collections.Frozen;

namespace TyingClass.Telling.Sentences;

/// <summary>What a tyer can do about a guess of the model: measure or weigh a thing and write it into the recipe.</summary>
internal static class MeasureFirst
{
    private static readonly FrozenDictionary<string, string> ByName = new Dictionary<string, string>
    {
        ["hook shank by the scale"] = "measure your hook’s shank",
        ["hook gape by the scale"] = "measure your hook’s gape",
        ["hook wire by the scale"] = "measure your hook’s wire",
        ["eye angle, up and down eyes"] = "measure how far your hook’s eye is bent",
        ["eye angle, jig eyes"] = "measure how far your hook’s eye is bent",
        ["bead size"] = "measure the bead",
        ["bore of a bead or cone"] = "weigh the bead or cone",
        ["cone size"] = "measure the cone",
        ["cone length"] = "measure how long the cone is",
        ["cone nose"] = "weigh the cone",
        ["width of the hole in a cone's rear"] = "weigh the cone",
        ["depth of the hole in a cone's rear"] = "weigh the cone",
        ["size of each dumbbell eye"] = "measure the eyes",
        ["length of an eye's barrel"] = "weigh the eyes",
        ["waist between the eyes"] = "weigh the eyes",
        ["lump of putty"] = "weigh the putty",
        ["rattle diameter"] = "measure the rattle",
        ["rattle length"] = "measure how long the rattle is",
        ["wall of a rattle"] = "weigh the rattle",
        ["ball of a rattle"] = "weigh the rattle",
        ["wire of a rib"] = "measure the wire of the rib",
        ["line of a weed guard"] = "measure the line of the weed guard",
        ["body diameter"] = "measure how thick the body is",
        ["least share of a body that is the body itself"] = "weigh the dubbing of the body",
        ["foam diameter"] = "measure how thick the foam is",
        ["hackle diameter"] = "measure how wide the hackle is",
        ["width of a hackle collar"] = "measure where the collar ends",
        ["hackle fibers on each mm"] = "weigh the hackle",
        ["wing length"] = "measure how long the wing is",
        ["tail length"] = "measure how long the tail is",
        ["leg length"] = "measure how long the legs are",
        ["breaking stress of nylon"] = "measure how thick the leader is",
        ["breaking stress of fluorocarbon"] = "measure how thick the leader is",
    }.ToFrozenDictionary();

    // "mass per length of bucktail": weighed, a bunch needs no guess.
    private static readonly string[] Weighed = ["mass per length of ", "void share of ", "density of "];

    /// <summary>"measure your hook’s wire"; null when a recipe has no key for it.</summary>
    public static string? Of(string estimate) => ByName.TryGetValue(estimate, out string? measure)
        ? measure
        : Weighed.FirstOrDefault(w => estimate.StartsWith(w, StringComparison.Ordinal)) is { } start ? $"weigh the {estimate[start.Length..]}" : null;
}
