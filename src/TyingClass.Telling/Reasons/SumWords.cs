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

    private static string OfMass(string part) => KindsOfPart.FindByName(part) switch
    {
        { Word: "wraps" } => "the wraps weigh one turn's length, times the turns, times what a millimeter or inch of their wire weighs",
        { IsWeight: true, IsPlural: true } => $"a size goes into the mass of {part} three times over, their metal only once",
        { IsWeight: true } => $"its size goes into the mass of a {part} three times over, its metal only once",
        _ => $"the {part} weighs no more than what is tied in, before the water gets into it",
    };
}
