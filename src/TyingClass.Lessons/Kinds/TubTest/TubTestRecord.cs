using System.Collections.Immutable;
using TyingClass.Lessons.Grading;
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

    /// <summary>Of what has no figure. A fly that the model leaves to the cast rides some way in every tub, and any of them is as it says.</summary>
    internal static bool AgreesInWords(Observation seen) => seen.Observed == seen.Predicted || IsOfTheCast(seen);

    internal static bool IsOfTheCast(Observation seen) => seen is { Quantity: WhichWayUp, Predicted: WayWords.NoClearWay, Observed: not WayWords.NoClearWay };
}
