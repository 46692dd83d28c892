using System.Collections.Immutable;

namespace TyingClass.Lessons.Exercises;

public enum ExerciseKind { Predict, Measure, Repair, Compose, Sort, Explain, TubTest }

/// <summary>One exercise, checked when its lesson is loaded: what is here can be shown and graded.</summary>
public sealed record Exercise
{
    public required string Id { get; init; }

    public required ExerciseKind Kind { get; init; }

    public required string Title { get; init; }

    public required ImmutableArray<string> Concepts { get; init; }

    /// <summary>Sanitized HTML.</summary>
    public required string PromptHtml { get; init; }

    /// <summary>The fly it starts from (or is asked about); null where there is none, as in compose.</summary>
    public string? RecipeText { get; init; }

    /// <summary>Predict: the choices in the order shown. The key is computed.</summary>
    public ImmutableArray<string> Choices { get; init; } = [];

    /// <summary>Predict and measure: the named quantity of the report that the key is computed from.</summary>
    public string? Quantity { get; init; }

    /// <summary>Measure: as the author wrote it, "0.5 mm".</summary>
    public string? ToleranceText { get; init; }

    /// <summary>Repair: what may change, and how far.</summary>
    public ImmutableArray<AllowedChange> Allow { get; init; } = [];

    public ImmutableArray<Goal> Goals { get; init; } = [];

    public ImmutableArray<string> Hints { get; init; } = [];

    public ImmutableArray<Misreading> Misreadings { get; init; } = [];

    public string? ModelAnswer { get; init; }

    public ImmutableArray<WrongAnswer> WrongAnswers { get; init; } = [];
}

/// <param name="Path">"hook.eye", "parts[0].size", "parts" for adding or removing parts.</param>
/// <param name="LowText">Lower end of the range as written, or null for any value.</param>
public sealed record AllowedChange(string Path, string? LowText, string? HighText);

public enum GoalBound { AtLeast, AtMost, Between }

/// <param name="Quantity">"keel height", "rides as intended", "sink rate", "added mass" …</param>
public sealed record Goal(string Quantity, GoalBound Bound, double LowSi, double HighSi, string Written);

/// <param name="When">The condition as written; the grader holds its parsed form.</param>
public sealed record Misreading(string When, string Say, string? Concept);

/// <param name="FindingNamed">The goal, finding code or misreading that must be named when it fails.</param>
public sealed record WrongAnswer(string Answer, string? FindingNamed);
