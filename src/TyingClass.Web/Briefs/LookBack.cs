using System.Collections.Immutable;

namespace TyingClass.Web.Briefs;

/// <param name="Until">When the evening after it began; null where it is still to come.</param>
public sealed record HeldEvening(int Number, DateTimeOffset At, DateTimeOffset? Until);

/// <summary>A question that was put to the room and revealed.</summary>
/// <param name="Right">Who chose what the engine computes.</param>
/// <param name="Wrong">The commonest other answer; null where all were right.</param>
public sealed record AskedThen(string Title, string Answer, int Right, int Of, string? Wrong, int WrongCount);

/// <summary>
/// The brief of an evening that is over: what was said in the room, what of its exercises is still believed and missed, what moved until the next.
/// </summary>
/// <param name="Room">In the order asked, up to the evening after it.</param>
/// <param name="Held">Wrong answers to its exercises that several hold now.</param>
/// <param name="Groups">Who is stuck on its exercises now.</param>
/// <param name="Moves">Up to the evening after it.</param>
public sealed record LookBack(
    HeldEvening Evening, ImmutableArray<AskedThen> Room, ImmutableArray<BeliefLine> Held, ImmutableArray<StuckGroup> Groups,
    ImmutableArray<ConceptMove> Moves)
{
    /// <summary>By how much each moved, the most first.</summary>
    public ImmutableArray<ConceptMove> Moved => [.. Moves.Where(m => m.Since > 0).OrderByDescending(m => m.Since)];
}
