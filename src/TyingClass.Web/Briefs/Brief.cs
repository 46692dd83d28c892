using System.Collections.Immutable;
using TyingClass.Lessons.Exercises;
using TyingClass.Storage.Classes;

namespace TyingClass.Web.Briefs;

/// <summary>A belief with what to do about it.</summary>
/// <param name="Answer">An answer of theirs as another person reads it; null where there is only a vote.</param>
/// <param name="Recipe">That answer, where it is a fly.</param>
/// <param name="ToRoom">The question to put to the room about it; null where the course has none of its concept.</param>
/// <param name="Practice">The address of practice of its concept; null where there is none.</param>
public sealed record BeliefLine(Belief Belief, string? Answer, string? Recipe, Demonstration Show, Exercise? ToRoom, string? Practice)
{
    /// <summary>What they hold, in their own choice or answer; null where they tied a fly instead.</summary>
    public string? Thought => Belief.Vote ?? (Recipe is null ? Answer : null);

    /// <summary>What they think, then what they were told, in one clause.</summary>
    public string InWords => (Thought, Belief.Said) switch
    {
        ({ } thought, { } told) => $"they think “{thought}”; they were told: {told}",
        (null, { } told) => $"they were told: {told}",
        ({ } thought, null) => $"they say “{thought}”.",
        _ => "they answer otherwise.",
    };
}

/// <summary>When the class met and meets.</summary>
/// <param name="LastAt">Null before the first.</param>
/// <param name="Next">Number of the evening to prepare; null when none is left.</param>
public sealed record EveningsNow(int? Last, DateTimeOffset? LastAt, int? Next);

/// <summary>The first page of a class: what most of them believe, whom to sit beside, what moved, what to bring.</summary>
/// <param name="Students">How many; mentors are not counted.</param>
/// <param name="AllStuck">Of all groups, by person.</param>
public sealed record Brief(
    ClassRoom Room, int Students, EveningsNow When, ImmutableArray<BeliefLine> Beliefs, int AllBeliefs, ImmutableArray<StuckGroup> Groups, int AllStuck,
    ImmutableArray<ConceptMove> Moves, NextEvening? Next)
{
    private const int MovesShown = 9;

    /// <summary>What moved most, then what stands lowest: as many as are taken in at a glance.</summary>
    public ImmutableArray<ConceptMove> MovedFirst => [.. Moves.OrderByDescending(m => m.Since).ThenBy(m => m.Shares[^1]).Take(MovesShown)];

    /// <summary>The others, in the order of the course.</summary>
    public ImmutableArray<ConceptMove> MovedLess => [.. Moves.Except(MovedFirst)];

    /// <summary>By how much each moved, the most first.</summary>
    public ImmutableArray<ConceptMove> Moved => [.. Moves.Where(m => m.Since > 0).OrderByDescending(m => m.Since)];
}
