using System.Collections.Frozen;
using System.Collections.Immutable;
using TyingClass.Recipes.Catalogue;
using TyingClass.Recipes.Parts;

namespace TyingClass.Web.Editing;

/// <summary>How the form words each key of a recipe. What a key means is the parser's to say.</summary>
internal static class FieldWords
{
    public static readonly ImmutableArray<string> HookKeys = ["size", "shank", "wire", "gape", "eye", "bend", "mass"];
    public static readonly ImmutableArray<string> FishingKeys =
    [
        "leader", "knot", "water", "speed", "retrieve", "repeat", "count down", "line", "line out", "leader length", "rod tip", "water depth", "current",
        "wetted",
    ];

    private static readonly FrozenDictionary<string, FieldView> Known = new[]
    {
        new FieldView("recipe", "Name of the fly") { Example = "Slate Minnow" },
        new FieldView("intent", "Meant to ride") { Options = ["point down", "point up"] },
        new FieldView("hook.size", "Size") { Example = "6 or 1/0" },
        new FieldView("hook.shank", "Shank") { Example = "4XL or 22 mm", Suggestions = ["standard", "1XL", "2XL", "3XL", "4XL", "1XS", "2XS"] },
        new FieldView("hook.wire", "Wire") { Example = "2XH or 0.8 mm", Suggestions = ["standard", "1XH", "2XH", "1XF", "2XF"] },
        new FieldView("hook.gape", "Gape") { Example = "8.5 mm", Rare = true },
        new FieldView("hook.eye", "Eye")
        {
            Example = "down 25°", Usual = "straight", Suggestions = ["straight", "up", "down", "down 25°", "jig 45°", "jig 60°", "jig 90°"]
        },
        new FieldView("hook.bend", "Bend") { Options = ["", "round", "long", "square"], Rare = true },
        new FieldView("hook.mass", "Mass, weighed") { Example = "0.21 g", Rare = true },
        new FieldView("fishing.leader", "Leader") { Example = "0.25 mm or 8 lb",
            Suggestions = ["0.20 mm", "0.25 mm", "0.30 mm", "8 lb nylon", "8 lb fluorocarbon"] },
        new FieldView("fishing.knot", "Knot") { Options = ["", "loop", "cinched"] },
        new FieldView("fishing.water", "Water") { Example = "fresh 12 °C", Suggestions = ["fresh 12 °C", "sea 12 °C"] },
        new FieldView("fishing.speed", "Speed") { Example = "0.4 m/s" },
        new FieldView("fishing.retrieve", "Retrieve")
        {
            Example = "strip 30 cm in 0.5 s, pause 1.5 s", Suggestions = [.. RetrieveScale.Named.Select(n => n.Name)],
        },
        new FieldView("fishing.repeat", "Repeated, times") { Example = "8" },
        new FieldView("fishing.count down", "Counted down") { Example = "5 s" },
        new FieldView("fishing.line", "Fly line")
        {
            Example = "floating", Suggestions = ["floating", "sinks 3 cm/s", "sinks 5 cm/s", "sinks 10 cm/s", "sinks 15 cm/s"],
        },
        new FieldView("fishing.line out", "Line out, leader and all") { Example = "12 m", Rare = true },
        new FieldView("fishing.leader length", "Leader’s length") { Example = "2.7 m", Rare = true },
        new FieldView("fishing.rod tip", "Rod tip above the water") { Example = "10 cm", Rare = true },
        new FieldView("fishing.water depth", "Depth of the water") { Example = "3 m", Rare = true },
        new FieldView("fishing.current", "Current, away from the rod") { Example = "0.3 m/s", Rare = true },
        new FieldView("fishing.wetted", "Wet before it lands") { Example = "60 s", Rare = true },
        new FieldView("part", "Kind") { Options = KindsOfPart.Words },
        new FieldView("material", "Material") { Example = "brass" },
        new FieldView("density", "Density, if not listed") { Example = "8500 kg/m³", Rare = true },
        new FieldView("size", "Size") { Example = "5.6 mm" },
        new FieldView("diameter", "Diameter") { Example = "6 mm" },
        new FieldView("turns", "Turns") { Example = "18" },
        new FieldView("length", "Length") { Example = "45 mm or 1.5 × shank" },
        new FieldView("mass", "Mass") { Example = "0.10 g" },
        new FieldView("at", "From") { Example = "6 mm or bend", Suggestions = ["bend", "behind the bead", "0.5 × shank"] },
        new FieldView("to", "To") { Example = "22 mm", Suggestions = ["bend", "behind the bead", "0.8 × shank"] },
        new FieldView("side", "Side of the shank") { Options = ["", "top", "under", "around"] },
        new FieldView("tied", "Tied down") { Options = ["", "front", "both ends"] },
        new FieldView("side offset", "Off to one side by") { Example = "0.3 mm", Rare = true },
        new FieldView("clocked", "Turned about the shank by") { Example = "10°", Rare = true },
    }.ToFrozenDictionary(f => f.Path);

    /// <summary>A field of the hook, the fishing or the whole.</summary>
    public static FieldView For(string path) => Known.TryGetValue(path, out FieldView? known) ? known : new FieldView(path, path);

    /// <summary>A tying note; the one after the last is there to be filled.</summary>
    public static FieldView ForStep(int index) => new($"steps[{index}]", $"Step {index + 1}") { Example = "Press the barb down.", IsNote = true };

    /// <summary>A field of a part of a kind; the kind may be unknown.</summary>
    public static FieldView ForPart(int index, string key, KindOfPart? kind)
    {
        FieldView field = For(key) with { Path = $"parts[{index}].{key}" };
        if (kind is not { } known) return field;
        return key switch
        {
            "side" => field with { Options = ["", .. known.Sides.Select(s => s.ToString().ToLowerInvariant())] },
            "material" => field with
            {
                Options = ["", .. Materials.All.Select(m => m.Name).Where(known.SuitedMaterials.Contains)],
                OtherOptions = [.. Materials.All.Select(m => m.Name).Where(m => !known.SuitedMaterials.Contains(m))],
            },
            _ when known.FieldFor(key) is { } worded => field with { Label = worded.Label, Example = worded.Example ?? field.Example },
            _ => field,
        };
    }
}
