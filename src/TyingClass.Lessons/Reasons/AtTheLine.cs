using System.Collections.Immutable;
using TyingClass.Balance.Retrieving;
using TyingClass.Lessons.Quantities;
using TyingClass.Recipes.Catalogue;
using TyingClass.Recipes.Model;
using TyingClass.Telling.Reasons;

namespace TyingClass.Lessons.Reasons;

/// <summary>What the leader and the line hand have to say in a figure of the retrieve, where they say more than any part does.</summary>
internal static class AtTheLine
{
    /// <summary>The one with the most say; null where the fly itself decides.</summary>
    /// <param name="most">What the part with the most say gives.</param>
    public static ReasonShare? Of(QuantityQuery query, FlyFigures fly, double? now, double most) => query.Quantity.Name switch
    {
        "pitch in the pause" => Held(query, fly, now),
        "hop" => Halved(query, fly, now, most, Thing.Strips),
        "deepest" or "shallowest" or "strips until back up" => Halved(query, fly, now, most, Thing.Strips, Thing.Pauses, Thing.Count),
        "depth after a count" when query.PauseS is null => Halved(query, fly, now, most, Thing.Count),
        _ => null,
    };

    // With nothing tied to it only the water holds a fly: where that turns its nose to the other side, the leader decides and no part does.
    private static ReasonShare? Held(QuantityQuery query, FlyFigures fly, double? now)
    {
        if (now is not { } held || QuantityQuery.Known("pitch while sinking").Of(fly) is not { } free) return null;
        bool turned = held * free < 0 && Math.Min(Math.Abs(held), Math.Abs(free)) > query.Quantity.NoticeableSi;
        return turned ? new ReasonShare(new Thing(ThingKind.Leader), held - free, free, held) : null;
    }

    // What the hand gives is seen by giving half as much.
    private static ReasonShare? Halved(QuantityQuery query, FlyFigures fly, double? now, double most, params ReadOnlySpan<string> what)
    {
        if (now is not { } whole) return null;
        ReasonShare? largest = null;
        foreach (string by in what)
        {
            if (query.Of(new FlyFigures(Half(fly.Recipe, by), fly.Start)) is not { } half) continue;
            ReasonShare share = new(new Thing(ThingKind.Retrieve, by), whole - half, half, whole);
            if (share.SaySi > Math.Max(most, largest?.SaySi ?? 0)) largest = share;
        }

        return largest;
    }

    private static Recipe Half(Recipe recipe, string what)
    {
        RetrieveSpec spec = recipe.Fishing.Retrieve;
        ImmutableArray<RetrieveStep> round = spec.Round.IsEmpty ? RetrieveScale.Named[0].Round : spec.Round;
        RetrieveSpec half = what switch
        {
            Thing.Count => spec with { CountDownS = (spec.CountDownS ?? RetrieveScale.CountDown.Value) / 2 },
            Thing.Pauses => spec with { Round = [.. round.Select(s => s.IsStrip ? s : s with { DurationS = s.DurationS / 2 })], Name = null },
            _ => spec with { Round = [.. round.Select(s => s with { StripM = s.StripM / 2 })], Name = null },
        };
        return recipe with { Fishing = recipe.Fishing with { Retrieve = half } };
    }
}
