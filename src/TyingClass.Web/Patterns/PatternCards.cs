using System.Collections.Immutable;
using TyingClass.Storage.Classes;
using TyingClass.Storage.Patterns;
using TyingClass.Storage.Reviews;
using TyingClass.Web.Classes;
using TyingClass.Web.Identity;
using TyingClass.Web.Reviews;

namespace TyingClass.Web.Patterns;

/// <summary>One revision on one page.</summary>
/// <param name="IsMine">The visitor tied it.</param>
/// <param name="SignedOffBy">Null unless this very revision was signed off.</param>
public sealed record CardView(Pattern Pattern, int Revision, FlySheet Sheet, string Owner, string? SignedOffBy, bool IsMine)
{
    /// <summary>Why it was signed off although it does not ride as it is meant to; null where it does.</summary>
    public string? Despite { get; init; }
}

/// <summary>Recipe cards: one's own, those one is asked to review, and those signed off in one's class.</summary>
public sealed class PatternCards(ReviewStores store, Visitor visitor, ClassAccess access, FlySheets sheets, ReviewThreads threads)
{
    public ClassRoom? Class => access.Current;

    /// <summary>By name; those of people who were removed are left out.</summary>
    public ImmutableArray<CardView> All() => Class is { } room
        ? [.. store.Patterns.Book(room.Id).Where(IsThere).Select(p => Card(p, p.SignedOffRevision!.Value)).OfType<CardView>()]
        : [];

    /// <param name="revision">Null for the one in the book, or else the latest.</param>
    /// <returns>Null for a card this visitor may not see.</returns>
    public CardView? Find(string patternId, int? revision)
    {
        if (store.Patterns.Find(patternId) is not { TrashedAt: null } pattern || !IsThere(pattern)) return null;
        int number = revision ?? (MaySeeAll(pattern) ? pattern.Revision : pattern.SignedOffRevision ?? 0);
        return MaySeeAll(pattern) || (number == pattern.SignedOffRevision && IsInMyBook(pattern)) ? Card(pattern, number) : null;
    }

    private CardView? Card(Pattern pattern, int revision) => store.Patterns.Revision(pattern.Id, revision) is { } found
        ? new CardView(pattern, revision, sheets.Of(found.RecipeText), threads.NameOf(pattern.OwnerId), SignedOffBy(pattern, revision),
        pattern.OwnerId == visitor.Person?.Id)
        { Despite = SignedOff(pattern, revision)?.Despite }
        : null;

    private string? SignedOffBy(Pattern pattern, int revision) => SignedOff(pattern, revision)?.DecidedById is { } id ? threads.NameOf(id) : null;

    private Review? SignedOff(Pattern pattern, int revision) => revision != pattern.SignedOffRevision ? null
        : store.Reviews.Of(pattern.Id).LastOrDefault(r => r.State == ReviewState.SignedOff);

    // Whoever was asked about a pattern may read it: asking is showing.
    private bool MaySeeAll(Pattern pattern) =>
        visitor.Person is { } person
        && (pattern.OwnerId == person.Id || store.Reviews.Of(pattern.Id).Any(r => r.State != ReviewState.Withdrawn && access.MentorsOrRuns(person, r.ClassId)));

    private bool IsInMyBook(Pattern pattern) => access.ClassesOf(visitor.Person).Any(c => c.Id == pattern.BookClassId);

    private bool IsThere(Pattern pattern) => store.People.Find(pattern.OwnerId) is { RemovedAt: null };
}
