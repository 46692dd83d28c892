using System.Collections.Immutable;
using TyingClass.Telling.Sentences;

namespace TyingClass.Lessons.Kinds.TubTest;

/// <summary>What a tub test may record beside the quantities of the report.</summary>
public static class TubTestRecord
{
    public const string WhichWayUp = "which way up";

    /// <summary>What may be seen of a nose that is waited for: it does not point down at all.</summary>
    public const string Never = "never";

    /// <summary>Whether it may never come.</summary>
    public static bool MayNeverBe(string quantity) => quantity == Telling.Figures.Magnitudes.PointDownTime.Name;

    /// <summary>What may be seen of which way up, as a prediction says it too.</summary>
    public static ImmutableArray<string> Ways { get; } = ["point down", "point up", WayWords.OnItsSide, WayWords.NoClearWay];
}
