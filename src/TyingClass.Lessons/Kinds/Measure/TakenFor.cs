using System.Collections.Immutable;
using TyingClass.Lessons.Quantities;

namespace TyingClass.Lessons.Kinds.Measure;

/// <summary>Another figure of the same fly that an answer gives: a depth for a hop, a dry mass for a wet one.</summary>
internal static class TakenFor
{
    // What is asked for, and what is read or weighed in its place.
    private static readonly ImmutableArray<(string Asked, string Taken)> Pairs =
    [
        ("hop", "deepest"), ("hop", "shallowest"), ("mass with held water", "mass"), ("mass", "mass with held water"), ("held water", "mass"),
        ("held water", "mass with held water"), ("wet weight", "mass"), ("level-line keel", "keel height"), ("keel height", "level-line keel"),
        ("mass center, x", "mass center, behind eye"), ("mass center, behind eye", "mass center, x"), ("balance point, x", "mass center, x"),
        ("balance point, z", "mass center, z"), ("mass center, z", "balance point, z"),
    ];

    /// <returns>Null where the answer is none of these.</returns>
    public static QuantityQuery? Of(QuantityQuery query, FlyFigures fly, double answer)
    {
        if (query is not { Part: null, SpeedMS: null, PauseS: null, Knot: null }) return null;
        return Pairs.Where(p => p.Asked == query.Quantity.Name).Select(p => QuantityQuery.Known(p.Taken)).FirstOrDefault(IsIt);

        bool IsIt(QuantityQuery other) =>
            other.Of(fly) is { } value && Math.Abs(value - answer) <= Math.Max(query.Quantity.NoticeableSi, 0.01 * Math.Abs(value));
    }
}
