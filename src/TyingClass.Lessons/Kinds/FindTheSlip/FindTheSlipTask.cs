using System.Collections.Immutable;

namespace TyingClass.Lessons.Kinds.FindTheSlip;

/// <summary>A tyer's argument in steps, one of which goes wrong.</summary>
/// <param name="Slip">The step that goes wrong, from 1; null where the engine finds it by the claims.</param>
/// <param name="Reasons">What may be wrong with it, in the order shown.</param>
/// <param name="RightReason">The one that is, from 1.</param>
public sealed record FindTheSlipTask(ImmutableArray<ArgumentStep> Steps, int? Slip, ImmutableArray<string> Reasons, int RightReason) : ExerciseTask
{
    /// <summary>How the step should read; told to those who found it.</summary>
    public string? Instead { get; init; }

    /// <summary>The fly after what the tyer proposes, where the argument is about a change. Claims are then about this fly.</summary>
    public string? Proposed { get; init; }

    public override ExerciseKind Kind => FindTheSlipKind.Instance;

    public override ImmutableArray<string> Choices =>
        [.. Enumerable.Range(1, Steps.Length).Select(StepWord), .. Enumerable.Range(1, Reasons.Length).Select(ReasonWord)];

    public override string? ChangedRecipe => Proposed;

    internal static string StepWord(int number) => FormattableString.Invariant($"step {number}");

    internal static string ReasonWord(int number) => FormattableString.Invariant($"reason {number}");
}

/// <summary>One sentence of the argument.</summary>
/// <param name="Claim">What it states of the fly, as a condition; null where nothing of it can be computed.</param>
/// <param name="Line">Where the lesson's file has it.</param>
public sealed record ArgumentStep(string Say, string? Claim, int Line, int Column);
