using System.Collections.Immutable;
using TyingClass.Storage.Patterns;
using TyingClass.Storage.Reviews;
using TyingClass.Web.Classes;
using TyingClass.Web.Identity;
using TyingClass.Web.Reviews;

namespace TyingClass.Web.Patterns;

/// <summary>One pattern as its owner sees it.</summary>
/// <param name="Sheet">Of the latest revision.</param>
/// <param name="Revisions">The latest first.</param>
/// <param name="MayAsk">False for someone in no class: there is nobody to ask.</param>
public sealed record PatternView(
    Pattern Pattern, PatternEditor Editor, FlySheet Sheet, ImmutableArray<PatternRevision> Revisions, ImmutableArray<RoundView> Rounds, bool MayAsk)
{
    public RoundView? Waiting => Rounds.FirstOrDefault(r => r.Review.State == ReviewState.Waiting);
}

/// <summary>What the pages of patterns read.</summary>
public sealed record PatternStores(PatternStore Patterns, ReviewStore Reviews);

/// <summary>Gathers what a pattern's page shows and carries out its buttons, for the owner only.</summary>
public sealed class PatternPages(PatternStores store, Visitor visitor, ClassAccess access, PatternDesk desk, FlySheets sheets, ReviewThreads threads)
{
    /// <returns>Null for a pattern this visitor does not have.</returns>
    public PatternView? Open(string patternId, int? fromRevision = null) =>
        desk.Own(patternId) is { } pattern ? View(pattern, desk.Open(pattern, fromRevision)) : null;

    public PatternView View(Pattern pattern, PatternEditor editor)
    {
        ArgumentNullException.ThrowIfNull(pattern);
        ImmutableArray<PatternRevision> revisions = [.. store.Patterns.Revisions(pattern.Id).Reverse()];
        return new PatternView(pattern, editor, sheets.Of(revisions[0].RecipeText), revisions, threads.Of(pattern.Id), access.Current is not null);
    }

    /// <returns>False when there is no such pattern of this visitor's, or no class to ask in.</returns>
    public bool Ask(string patternId, string? question) =>
        visitor.Person is { } person && access.Current is { } room && store.Reviews.Ask(patternId, person.Id, room.Id, question) is not null;

    public bool Withdraw(string patternId) => visitor.Person is { } person && store.Reviews.Withdraw(patternId, person.Id);

    public bool Trash(string patternId) => visitor.Person is { } person && store.Patterns.Trash(patternId, person.Id);
}
