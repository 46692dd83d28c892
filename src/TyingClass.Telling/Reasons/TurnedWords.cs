using System.Collections.Immutable;
using TyingClass.Recipes.Catalogue;
using TyingClass.Recipes.Text;

namespace TyingClass.Telling.Reasons;

/// <summary>What was done to a fly, without a figure: "with the eye straight instead of down".</summary>
public static class TurnedWords
{
    public static string Of(ReasonShare share)
    {
        ArgumentNullException.ThrowIfNull(share);
        ImmutableArray<TurnedLine> turned = share.Turned;
        if (turned.IsEmpty) return $"with the {share.What.Word} changed";
        return share.What.Kind switch
        {
            ThingKind.Air when turned[0].Key == "air" => $"once the {share.What.Word} has left",
            ThingKind.Eye => Eye(turned[0]),
            ThingKind.Water => Water(turned[0]),
            ThingKind.Knot => turned[0].After == "cinched" ? "with the knot cinched instead of tied as a loop" : "with the knot tied as a loop",
            ThingKind.Leader => $"on {Sized(turned[0], "a thicker", "a thinner", "another")} leader",
            ThingKind.Speed => $"pulled {Sized(turned[0], "faster", "more slowly", "at another speed")} through the water",
            ThingKind.Retrieve => Grammar.And(turned.Select(Retrieve).Distinct().Take(2)),
            ThingKind.Intent => $"meant to ride {turned[0].After}",
            ThingKind.Hook => $"on {Hook(turned[0])}",
            ThingKind.Rest => "with the rest of the changes",
            ThingKind.Air or ThingKind.HeldWater => Part(new Thing(ThingKind.Part, share.What.Part), turned),
            _ => Part(share.What, turned),
        };
    }

    /// <summary>How a part stands, for one that is set otherwise: "on top of the shank", "in the middle".</summary>
    /// <param name="value">As a recipe states it; null where it does not.</param>
    public static string Standing(string key, string? value) => key switch
    {
        "side" => value switch { "top" => "on top of the shank", "under" => "under the shank", _ => Side(value) },
        "at" => value switch { "front" => "at the front of the shank", "rear" => "near the bend", _ => "" },
        "side offset" => value is null ? "set in the middle" : "set to one side",
        "clocked" => value is null ? "set straight" : "turned about the shank to one side",
        _ => "",
    };

    private static string Eye(TurnedLine eye)
    {
        string before = First(eye.Before), after = First(eye.After);
        return before == after ? "with the eye bent to another angle"
            : after == "jig" ? $"with a jig eye instead of {Grammar.A(before)} one"
            : before == "jig" ? $"with {Grammar.A(after)} eye instead of a jig eye"
            : $"with the eye {after} instead of {before}";

        static string First(string? text) => (text ?? "straight").Split(' ')[0];
    }

    private static string Water(TurnedLine water)
    {
        string before = Kind(water.Before), after = Kind(water.After);
        if (before != after) return $"in {after} water instead of {before} water";
        return $"in {Sized(new TurnedLine("", Degrees(water.Before), Degrees(water.After)), "warmer", "colder", "other")} water";

        static string Kind(string? text) => text?.StartsWith("sea", StringComparison.OrdinalIgnoreCase) == true ? "sea" : "fresh";
        static string? Degrees(string? text) =>
            text?.Split(' ', StringSplitOptions.RemoveEmptyEntries).FirstOrDefault(t => t.Length > 0 && char.IsAsciiDigit(t[0]));
    }

    private static string Retrieve(TurnedLine line) => line.Key switch
    {
        "retrieve" => RetrieveName(line.After) is { } name ? $"with the retrieve “{name}”" : "with another retrieve",
        "count down" => $"on {Sized(line, "a longer", "a shorter", "another")} count",
        "line" => line.After?.StartsWith("sinks", StringComparison.Ordinal) == true ? "on a line that sinks" : "on a line that floats",
        "line out" => $"with {Sized(line, "more", "less", "another length of")} line out",
        "leader length" => $"with {Sized(line, "a longer", "a shorter", "another")} leader",
        "repeat" => $"after {Sized(line, "more", "fewer", "other")} rounds",
        "rod tip" => $"with the rod tip {Sized(line, "higher", "lower", "elsewhere")}",
        "water depth" => $"in {Sized(line, "deeper", "shallower", "other")} water",
        "current" => "in another current",
        _ => "retrieved otherwise",
    };

    // A round that has a name is told by it: "short strips, long pauses".
    private static string? RetrieveName(string? after) =>
        RetrieveScale.Named.Select(n => n.Name).FirstOrDefault(n => string.Equals(n, after?.Trim(), StringComparison.OrdinalIgnoreCase));

    private static string Hook(TurnedLine hook) => hook.Key switch
    {
        "gape" => $"a hook with {Sized(hook, "a wider", "a narrower", "another")} gape",
        "wire" => "a hook of another wire",
        "shank" => $"a hook with {Sized(hook, "a longer", "a shorter", "another")} shank",
        "bend" => $"a hook with a {hook.After} bend",
        // The scale runs backward: the larger number is the smaller hook.
        "size" => HookNumber(hook.Before) is { } b && HookNumber(hook.After) is { } a ? a < b ? "a larger hook" : "a smaller hook" : "another hook",
        _ => "another hook",
    };

    private static int? HookNumber(string? text) =>
        text?.Split('/') is [var n, ..] && int.TryParse(n, System.Globalization.CultureInfo.InvariantCulture, out int number)
            ? text.Contains('/', StringComparison.Ordinal) ? -number : number
            : null;

    private static string Part(Thing part, ImmutableArray<TurnedLine> turned)
    {
        string the = $"the {part.Word}";
        if (turned[0].Key.Length == 0) return turned[0].After is null ? $"without {the}" : $"with {the} added";
        string[] said = [.. turned.Select(t => Field(part, t)).Distinct().Take(2)];
        return $"with {the} {Grammar.And(said)}";
    }

    private static string Field(Thing part, TurnedLine turned) => turned.Key switch
    {
        "side" => $"{Side(turned.After)} instead of {Side(turned.Before)}",
        "at" => Sized(turned, "further back", "further forward", "in another place"),
        "to" or "length" => Sized(turned, "longer", "shorter", "of another length"),
        "size" or "diameter" => Sized(turned, "larger", "smaller", "of another size"),
        "mass" => Sized(turned, "heavier", "lighter", "of another mass"),
        "density" => Sized(turned, "denser", "less dense", "of another metal"),
        "material" => turned.After is null ? "of another material"
            : turned.Before is null ? $"of {turned.After}" : $"of {turned.After} instead of {turned.Before}",
        "turns" => Sized(turned, "wound in more turns", "wound in fewer turns", "wound otherwise"),
        "clocked" => turned.After is null ? "set straight" : turned.Before is null ? "turned about the shank" : "turned further about the shank",
        "side offset" => turned.After is null ? "set in the middle" : "set to one side",
        "tied" => turned.After == "both ends" ? "tied down at both ends" : "tied down in front only",
        _ => $"changed in its {turned.Key}",
    };

    private static string Side(string? side) => side switch
    {
        "top" => "on top",
        "under" => "under the shank",
        "beside" => "beside the shank",
        _ => "around the shank",
    };

    private static string Sized(TurnedLine turned, string more, string less, string other)
    {
        double? before = Number(turned.Key, turned.Before), after = Number(turned.Key, turned.After);
        return before is { } b && after is { } a && !a.Equals(b) ? a > b ? more : less : other;
    }

    private static double? Number(string key, string? text)
    {
        Dimension? dimension = key switch
        {
            "mass" => Dimension.Mass,
            "density" => Dimension.Density,
            "speed" => Dimension.Speed,
            "turns" or "repeat" or "" => null,
            "count down" => Dimension.Duration,
            _ => Dimension.Length,
        };
        if (text is null) return key == "at" ? 0 : null;
        if (dimension is { } d && Units.TryParse(text, d, out double si, out _)) return si;
        string digits = string.Concat(text.SkipWhile(c => !char.IsAsciiDigit(c)).TakeWhile(c => char.IsAsciiDigit(c) || c == '.'));
        return double.TryParse(digits, System.Globalization.CultureInfo.InvariantCulture, out double plain) ? plain : null;
    }
}
