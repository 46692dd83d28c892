using TyingClass.Balance.Retrieving;
using TyingClass.Lessons.Quantities;
using TyingClass.Recipes.Model;
using TyingClass.Telling.Reasons;

namespace TyingClass.Lessons.Reasons;

/// <summary>What the leader and the line hand have to say in a figure of the retrieve, where they say more than any part does.</summary>
internal static class AtTheLine
{
    /// <summary>Null where the fly itself decides.</summary>
    /// <param name="most">What the part with the most say gives.</param>
    public static ReasonShare? Of(QuantityQuery query, FlyFigures fly, double? now, double most) => query.Quantity.Name switch
    {
        "pitch in the pause" => Held(query, fly, now),
        "hop" => Halved(query, fly, now) is { } half && half.SaySi >= most ? half : null,
        _ => null,
    };

    // With nothing tied to it only the water holds a fly: where that turns its nose to the other side, the leader decides and no part does.
    private static ReasonShare? Held(QuantityQuery query, FlyFigures fly, double? now)
    {
        if (now is not { } held || QuantityQuery.Known("pitch while sinking").Of(fly) is not { } free) return null;
        bool turned = held * free < 0 && Math.Min(Math.Abs(held), Math.Abs(free)) > query.Quantity.NoticeableSi;
        return turned ? new ReasonShare(new Thing(ThingKind.Leader), held - free, free, held) : null;
    }

    private static ReasonShare? Halved(QuantityQuery query, FlyFigures fly, double? now)
    {
        RetrieveSpec spec = fly.Recipe.Fishing.Retrieve;
        if (now is not { } whole || spec.Round.IsEmpty) return null;
        RetrieveStep[] round = [.. spec.Round.Select(step => step with { StripM = step.StripM / 2 })];
        Recipe other = fly.Recipe with { Fishing = fly.Recipe.Fishing with { Retrieve = spec with { Round = [.. round], Name = null } } };
        return query.Of(new FlyFigures(other, fly.Start)) is { } half ? new ReasonShare(new Thing(ThingKind.Retrieve), whole - half, half, whole) : null;
    }
}
