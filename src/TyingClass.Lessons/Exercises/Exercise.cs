using System.Collections.Immutable;
using TyingClass.Lessons.Kinds;

namespace TyingClass.Lessons.Exercises;

/// <summary>One exercise, checked when its lesson is loaded: what is here can be shown and graded.</summary>
public sealed record Exercise
{
    public required string Id { get; init; }

    /// <summary>What its kind asks.</summary>
    public required ExerciseTask Task { get; init; }

    public ExerciseKind Kind => Task.Kind;

    /// <summary>What an answer may say, in the order shown; empty where it is no choice.</summary>
    public ImmutableArray<string> Choices => Task.Choices;

    /// <summary>What a fly sent in must do.</summary>
    public ImmutableArray<Goal> Goals => (Task as RecipeTask)?.Goals ?? [];

    public required string Title { get; init; }

    /// <summary>One to three.</summary>
    public required ImmutableArray<string> Concepts { get; init; }

    /// <summary>Sanitized HTML.</summary>
    public required string PromptHtml { get; init; }

    /// <summary>The fly it starts from (or is asked about); null where there is none, as in compose.</summary>
    public string? RecipeText { get; init; }

    public ImmutableArray<string> Hints { get; init; } = [];

    /// <summary>For each hint, when it has nothing left to say, a condition as written; null for one that always does.</summary>
    public ImmutableArray<string?> HintsUnless { get; init; } = [];

    public ImmutableArray<Misreading> Misreadings { get; init; } = [];

    /// <summary>Recipe text for repair and compose; otherwise an answer as a student would type it. For explain, the answer shown after submitting.</summary>
    public string? ModelAnswer { get; init; }

    public ImmutableArray<WrongAnswer> WrongAnswers { get; init; } = [];

    /// <summary>Changes whenever what is asked changes: an attempt keeps it beside its grade.</summary>
    public string Version { get; init; } = "";

    /// <summary>Where it is written, for the author's errors.</summary>
    public ExercisePlace Place { get; init; } = ExercisePlace.None;
}

/// <param name="Keys">Line and column of each key's value.</param>
public sealed record ExercisePlace(string File, int Line, int Column, ImmutableDictionary<string, (int Line, int Column)> Keys)
{
    public static ExercisePlace None { get; } = new("", 1, 1, ImmutableDictionary<string, (int Line, int Column)>.Empty);

    public (int Line, int Column) Of(string key) => Keys.TryGetValue(key, out (int, int) at) ? at : (Line, Column);
}

/// <param name="Path">"hook.eye", "parts[0].size", "parts" for adding or removing parts.</param>
/// <param name="LowText">Lower end of the range as written, or null for any value.</param>
public sealed record AllowedChange(string Path, string? LowText, string? HighText)
{
    /// <summary>The values that may stand there; empty for any in the range.</summary>
    public ImmutableArray<string> Words { get; init; } = [];

    /// <summary>"3.2 mm to 6.4 mm", "straight or down", "anything".</summary>
    public string Said => (LowText, HighText, Words) switch
    {
        ({ } low, { } high, _) => $"{low} to {high}",
        (_, _, { Length: 1 } one) => one[0],
        (_, _, { Length: > 1 } many) => string.Join(", ", many[..^1]) + " or " + many[^1],
        _ => "anything",
    };
}

/// <summary>One entry of a parts box.</summary>
/// <param name="Part">The kind, as recipes write it.</param>
/// <param name="AtMost">How many may be used; null for any number.</param>
/// <param name="Rules">By key ("size", "material"); keys not named are free.</param>
public sealed record BoxEntry(string Part, int? AtMost, ImmutableArray<AllowedChange> Rules);

/// <param name="Quantity">"keel height", "rides as intended", "sink rate", "added mass" …</param>
/// <param name="LowSi">Minus infinity for "at most".</param>
/// <param name="HighSi">Infinity for "at least".</param>
public sealed record Goal(string Quantity, double LowSi, double HighSi);

/// <param name="When">The condition as written.</param>
/// <param name="Concept">The concept it belongs to; one of the exercise's.</param>
public sealed record Misreading(string When, string Say, string? Concept)
{
    /// <summary>On the right way and not there yet: it is told, and is no misreading.</summary>
    public bool IsHalfway { get; init; }

    internal string? AsMisreading => IsHalfway ? null : Say;

    internal string? AsRemark => IsHalfway ? Say : null;
}

/// <param name="FindingNamed">The goal, finding code, verdict or misreading that must be named when it fails.</param>
public sealed record WrongAnswer(string Answer, string? FindingNamed)
{
    /// <summary>Named so: an answer that is not marked but given back.</summary>
    public const string Refused = "refused";
}
