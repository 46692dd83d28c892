using System.Collections.Immutable;

namespace TyingClass.Storage.Evenings;

/// <summary>A question put to the room: everyone answers, the tally shows, and only then what the engine computes.</summary>
/// <param name="Choices">As they stood when the question was put; answers point into them.</param>
public sealed record RoomQuestion(string Id, string ClassId, string Title, ImmutableArray<string> Choices, DateTimeOffset OpenedAt)
{
    /// <summary>The predict exercise it is; null for a question about <see cref="RecipeText"/>.</summary>
    public string? ExerciseId { get; init; }

    /// <summary>The fly it is about, when it is no exercise of the course.</summary>
    public string? RecipeText { get; init; }

    /// <summary>"which way up" or "nose", with <see cref="RecipeText"/>.</summary>
    public string? Ask { get; init; }

    /// <summary>Kept to be asked some evening, and not before any room yet.</summary>
    public bool IsPrepared { get; init; }

    /// <summary>Null until revealed; from then on no answer is taken.</summary>
    public RoomAnswer? Answer { get; init; }

    /// <summary>Null while it is the question of the room.</summary>
    public DateTimeOffset? ClosedAt { get; init; }

    public bool TakesAnswers => Answer is null && ClosedAt is null && !IsPrepared;
}

/// <summary>What the engine computed when the question was revealed: kept, so that an evening reads later as it went.</summary>
public sealed record RoomAnswer(string Choice, string WhatItWouldDo, string Why, DateTimeOffset RevealedAt);

/// <param name="Counts">Answers to each choice, in their order.</param>
public sealed record RoomTally(ImmutableArray<int> Counts)
{
    public int Total => Counts.Sum();
}

/// <param name="Choice">Its place among the choices, from 0.</param>
public sealed record RoomVote(string PersonId, int Choice, DateTimeOffset At);
