using System.Collections.Immutable;
using TyingClass.Lessons.Kinds.Compose;
using TyingClass.Lessons.Kinds.Explain;
using TyingClass.Lessons.Kinds.FindTheSlip;
using TyingClass.Lessons.Kinds.Measure;
using TyingClass.Lessons.Kinds.Predict;
using TyingClass.Lessons.Kinds.Repair;
using TyingClass.Lessons.Kinds.Sort;
using TyingClass.Lessons.Kinds.TubTest;

namespace TyingClass.Lessons.Kinds;

/// <summary>Every kind of exercise there is, one line each.</summary>
public static class ExerciseKinds
{
    public static ImmutableArray<ExerciseKind> All { get; } =
    [
        PredictKind.Instance,
        MeasureKind.Instance,
        RepairKind.Instance,
        ComposeKind.Instance,
        FindTheSlipKind.Instance,
        SortKind.Instance,
        ExplainKind.Instance,
        TubTestKind.Instance,
    ];

    public static ImmutableArray<string> Words { get; } = [.. All.Select(k => k.Word)];

    public static bool TryFind(string word, out ExerciseKind kind)
    {
        kind = All.FirstOrDefault(k => k.Word == word)!;
        return kind is not null;
    }
}
