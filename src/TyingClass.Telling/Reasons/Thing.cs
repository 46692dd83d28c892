using TyingClass.Recipes.Parts;

namespace TyingClass.Telling.Reasons;

public enum ThingKind
{
    Part,
    Hook,
    Eye,
    Intent,
    Water,
    Leader,
    Knot,
    Speed,
    Retrieve,

    /// <summary>Air that a part holds until it has soaked.</summary>
    Air,

    /// <summary>Water that a part carries when it is cast.</summary>
    HeldWater,

    /// <summary>A tyer's small errors with a part.</summary>
    Hands,

    /// <summary>Several things of little say, taken together.</summary>
    Rest,
}

/// <summary>What a figure may hang on, as a tyer would name it.</summary>
/// <param name="Part">As the body names it, "wing 2"; empty where the thing is no part's.</param>
public sealed record Thing(ThingKind Kind, string Part = "")
{
    /// <summary>What the hand does in a retrieve.</summary>
    public const string Strips = "strips", Pauses = "pauses", Count = "count";

    private static readonly string[] Ordinals = ["", "", "second ", "third ", "fourth ", "fifth "];

    /// <summary>"second wing", "air in the wing", "eye".</summary>
    public string Word => Kind switch
    {
        ThingKind.Part or ThingKind.Hands => PartWord,
        ThingKind.Air => $"air in the {PartWord}",
        ThingKind.HeldWater => $"water in the {PartWord}",
        ThingKind.Intent => "way it is meant to ride",
        ThingKind.Rest => "rest",
        ThingKind.Retrieve when Part.Length > 0 => Part,
        _ => Kind.ToString().ToLowerInvariant(),
    };

    public bool IsPlural => Part is "bend" or Strips or Pauses
        || Kind is ThingKind.Part or ThingKind.Hands && KindsOfPart.FindByName(Part) is { IsPlural: true };

    /// <summary>"it", "them".</summary>
    public string Pronoun => IsPlural ? "them" : "it";

    /// <summary>"bead has", "dumbbell eyes have".</summary>
    public string Verb(string one, string many) => IsPlural ? many : one;

    private string PartWord => Part switch
    {
        "bend" => Sentences.FlyWords.Bend,
        "hook eye" => "eye",
        [.., ' ', >= '2' and <= '5' and var n] => Ordinals[n - '0'] + Part[..^2],
        _ => Part,
    };
}
