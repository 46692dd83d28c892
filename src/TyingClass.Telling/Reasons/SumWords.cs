using TyingClass.Recipes.Parts;

namespace TyingClass.Telling.Reasons;

/// <summary>Figures that a sum in the hand gives, told by how the sum goes: no part has a say in them beside the one asked about.</summary>
internal static class SumWords
{
    /// <returns>A clause that begins small; null for a figure that the whole fly decides.</returns>
    public static string? Of(Reason reason) => reason.Quantity switch
    {
        "mass of" => OfMass(reason.Part ?? ""),
        "lift" => "the water carries what is left of the fly's weight once the leader has carried its share",
        "line angle" => "the leader's slope is the weight that lift leaves, divided by the drag of the water",
        _ => null,
    };

    /// <summary>For a figure that is asked to be worked out by the rule of square roots.</summary>
    public const string OfRate = "the sink rate grows with the square root of the weight in the water";

    /// <summary>Which way of a figure counts as plus, for who has it the other way; null for one that has no other way.</summary>
    public static string? OfSign(string quantity) => quantity switch
    {
        "mass center, x" or "center of buoyancy, x" or "balance point, x" or "tow point, x" => "behind the front of the shank is plus, before it minus",
        "mass center, z" or "center of buoyancy, z" or "balance point, z" or "tow point, z" =>
            "heights above the shank are plus, those toward the point minus",
        "mass center, behind eye" => "behind the eye is plus, before it minus",
        "mass center, below eye" => "on the point side of the eye is plus, on the other side minus",
        "level-line keel" => "weight below the eye, the way the fly is meant to ride, counts as plus",
        "keel height" => "weight below the hinge line, the way the fly is meant to ride, counts as plus",
        "pitch" or "pitch while sinking" or "pitch in the pause" => "nose up is plus and nose down minus, whichever way up it rides",
        "lift" => "a push of the water upward is plus, one downward minus",
        "line angle" => "a leader that rises from the eye counts as plus",
        "keel moment of" => "what helps it ride as it is meant counts as plus",
        "sink rate" => "down through the water counts as plus",
        _ => null,
    };

    /// <summary>What a figure is measured between, where it is no one part's; null for any other.</summary>
    public static string? OfPlaces(string quantity) => quantity == "level-line keel" ? "the eye and the balance point" : null;

    private static string OfMass(string part) => KindsOfPart.FindByName(part) switch
    {
        { Word: "wraps" } => "the wraps weigh one turn's length, times the turns, times what a millimeter or inch of their wire weighs",
        { IsWeight: true, IsPlural: true } => $"a size goes into the mass of {part} three times over, their metal only once",
        { IsWeight: true } => $"its size goes into the mass of a {part} three times over, its metal only once",
        _ => $"the {part} weighs no more than what is tied in, before the water gets into it",
    };
}
