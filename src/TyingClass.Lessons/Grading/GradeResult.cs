using System.Collections.Immutable;
using TyingClass.Balance.Reports;
using TyingClass.Recipes.Reports;
using TyingClass.Telling.Reasons;

namespace TyingClass.Lessons.Grading;

/// <summary>An answer that could not be read: not an attempt. Path is the recipe path ("parts[0].size") where one is known, for marking a form field.</summary>
/// <param name="Line">From 1; 0 when no place in the text is known.</param>
public sealed record AnswerProblem(int Line, int Column, string? Path, string Text);

/// <summary>What came of one answer.</summary>
public sealed record GradeResult
{
    /// <summary>When any: nothing was graded, nothing counts as an attempt.</summary>
    public ImmutableArray<AnswerProblem> Problems { get; init; } = [];

    public bool IsAttempt => Problems.IsEmpty;

    public bool Passed { get; init; }

    /// <summary>True for explain and tub test: a person marks it.</summary>
    public bool AwaitsReview { get; init; }

    public Feedback? Feedback { get; init; }

    /// <summary>The submitted fly with the report that it was graded by, when the answer is one.</summary>
    public SolvedFly? Fly { get; init; }

    public BalanceReport? Report => Fly?.Report;

    /// <summary>Tub test: what was seen beside what was predicted.</summary>
    public ImmutableArray<Observation> Observations { get; init; } = [];

    /// <summary>Why, as figures: what each difference, part or error gave. Empty where no figure may be told yet.</summary>
    public ImmutableArray<Reason> Why { get; init; } = [];

    /// <summary>The figures the grade was made from, SI, for telling whether a newer engine would grade otherwise.</summary>
    public ImmutableArray<GradedFigure> Figures { get; init; } = [];

    /// <summary>The engine the grade was made with.</summary>
    public string EngineVersion { get; init; } = BalanceEngine.Version;

    /// <summary>The exercise as it was asked; see <see cref="Exercises.Exercise.Version"/>.</summary>
    public string ExerciseVersion { get; init; } = "";

    internal static GradeResult Refused(params ImmutableArray<AnswerProblem> problems) => new() { Problems = problems };

    internal static GradeResult Refused(string text) => Refused(new AnswerProblem(0, 0, null, text));
}

/// <summary>The four parts of feedback, in the order they are shown. Plain text sentences.</summary>
public sealed record Feedback
{
    /// <summary>
    /// How the thing that was asked stands, in the question's own words. Stands before all else. Null in feedback kept from before there was one.
    /// </summary>
    public string? Reply { get; init; }

    /// <summary>The cause in one sentence: what decides, in a tyer's words. Null in feedback kept from before there was one.</summary>
    public string? First { get; init; }

    /// <summary>1. What it would do.</summary>
    public required string WhatItWouldDo { get; init; }

    /// <summary>2. Goal by goal.</summary>
    public required ImmutableArray<GoalResult> Goals { get; init; }

    /// <summary>3. Why, about the quantity that was asked, with its figures.</summary>
    public required string Why { get; init; }

    /// <summary>4. Where to look next; null once passed or before the first failed attempt.</summary>
    public string? WhereToLook { get; init; }

    /// <summary>What a known misreading says, when the answer matches one.</summary>
    public string? Misreading { get; init; }

    /// <summary>What is said to an answer that is on the right way and not there: no misreading.</summary>
    public string? Remark { get; init; }

    /// <summary>The concept that misreading belongs to.</summary>
    public string? MisreadConcept { get; init; }

    /// <summary>How the fly is drawn beside it; null in feedback kept from before there was a choice, and where no picture may be shown.</summary>
    public AskedPicture? Picture { get; init; }

    /// <summary>Safety cautions the parts call for.</summary>
    public ImmutableArray<string> Cautions { get; init; } = [];
}

/// <param name="Asked">"keel height at least 0.4 mm".</param>
/// <param name="Reached">"-0.9 mm".</param>
public sealed record GoalResult(string Asked, string Reached, bool Met);

/// <param name="Quantity">"hang angle", or "which way up".</param>
/// <param name="PredictedSi">Null for "which way up", and where the engine gives no figure.</param>
public sealed record Observation(string Quantity, double? PredictedSi, double? ObservedSi, string Predicted, string Observed);

/// <param name="Si">Null where the fly has no such figure.</param>
public sealed record GradedFigure(string Quantity, double? Si);
