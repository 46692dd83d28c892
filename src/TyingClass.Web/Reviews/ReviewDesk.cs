using System.Collections.Immutable;
using TyingClass.Recipes.Bodies;
using TyingClass.Recipes.Text;
using TyingClass.Storage.Classes;
using TyingClass.Storage.Editing;
using TyingClass.Storage.Patterns;
using TyingClass.Storage.People;
using TyingClass.Storage.Reviews;
using TyingClass.Web.Classes;
using TyingClass.Web.Identity;
using TyingClass.Web.Patterns;

namespace TyingClass.Web.Reviews;

/// <summary>One line of the queue.</summary>
/// <param name="Class">Named only for someone with several.</param>
public sealed record QueueLine(Review Review, string Pattern, string Owner, string? Class);

/// <summary>What a comment can be about.</summary>
/// <param name="Value">As the form sends it: "part:cone", "finding:flips", "whole".</param>
public sealed record CommentChoice(string Value, string Words);

/// <summary>Everything a mentor needs to judge a revision.</summary>
/// <param name="Against">The revision it is compared with; null where it is the first.</param>
/// <param name="IsMine">One does not judge one's own pattern.</param>
public sealed record ReviewView(
    Review Review, Pattern Pattern, string Owner, FlySheet Sheet, PatternRevision Revision, ImmutableArray<PatternRevision> Revisions,
    RevisionPair? Against, ImmutableArray<CommentChoice> Choices, ImmutableArray<RoundView> Rounds, bool IsMine);

/// <summary>What a review reads and changes.</summary>
public sealed record ReviewStores(ReviewStore Reviews, PatternStore Patterns, PersonStore People);

/// <summary>The mentor's side of reviews. What a visitor may not see is as if it did not exist.</summary>
public sealed class ReviewDesk(ReviewStores store, Visitor visitor, ClassAccess access, FlySheets sheets, RevisionPairs pairs, ReviewThreads threads)
{
    private const int MostDecided = 20;

    /// <summary>Longest wait first, over all classes this visitor mentors or teaches.</summary>
    public ImmutableArray<QueueLine> Queue() => [.. Lines(c => store.Reviews.Queue(c.Id)).OrderBy(l => l.Review.AskedAt)];

    /// <summary>The latest first.</summary>
    public ImmutableArray<QueueLine> Decided() =>
        [.. Lines(c => store.Reviews.Decided(c.Id, MostDecided)).OrderByDescending(l => l.Review.DecidedAt).Take(MostDecided)];

    /// <returns>Null for a review this visitor may not see.</returns>
    public Review? Find(string reviewId) =>
        store.Reviews.Find(reviewId) is { } review && access.MentorsOrRuns(visitor.Person, review.ClassId) && PatternOf(review) is not null ? review : null;

    /// <param name="against">The revision to compare with; the one last judged, or the one before, when null.</param>
    public ReviewView? Open(string reviewId, int? against)
    {
        if (Find(reviewId) is not { } review || PatternOf(review) is not { } pattern) return null;
        ImmutableArray<PatternRevision> revisions = store.Patterns.Revisions(pattern.Id);
        PatternRevision asked = revisions[review.Revision - 1];
        int? other = against is { } number && number != asked.Number && number >= 1 && number <= revisions.Length ? number : BeforeThis(review);
        FlySheet sheet = sheets.Of(asked.RecipeText);
        return new ReviewView(
            review, pattern, threads.NameOf(pattern.OwnerId), sheet, asked, revisions,
            other is { } before ? pairs.Of(revisions[before - 1], asked) : null,
            Choices(asked.RecipeText, sheet), threads.Of(pattern.Id), visitor.Person?.Id == pattern.OwnerId);
    }

    /// <summary>Says something about a part, a finding or the whole.</summary>
    /// <param name="about">A <see cref="CommentChoice.Value"/>.</param>
    /// <returns>False when there was nothing to say, or nobody to say it to.</returns>
    public bool Comment(string reviewId, string? about, string? text)
    {
        if (Find(reviewId) is not { } review || visitor.Person is not { } person) return false;
        string[] subject = (about ?? "").Split(':', 2);
        (CommentSubject kind, string name) = subject switch
        {
            ["part", var part] => (CommentSubject.Part, part),
            ["finding", var code] => (CommentSubject.Finding, code),
            _ => (CommentSubject.Whole, ""),
        };
        return store.Reviews.AddComment(review.Id, person.Id, kind, name, text) is not null;
    }

    /// <returns>Null for a review this visitor may not decide.</returns>
    public EditOutcome<Review>? Decide(string reviewId, int expectedVersion, bool signOff, string? words) =>
        Find(reviewId) is { } review && visitor.Person is { } person && review.OwnerId != person.Id
            ? store.Reviews.Decide(review.Id, person.Id, expectedVersion, signOff, words)
            : null;

    public EditOutcome<Review>? Reopen(string reviewId, int expectedVersion) =>
        Find(reviewId) is { } review && review.OwnerId != visitor.Person?.Id ? store.Reviews.Reopen(review.Id, expectedVersion) : null;

    private int? BeforeThis(Review review)
    {
        int? judged = store.Reviews.Of(review.PatternId)
            .LastOrDefault(r => r.Id != review.Id && r.AskedAt < review.AskedAt && r.Revision < review.Revision && r.State != ReviewState.Withdrawn)?.Revision;
        return judged ?? (review.Revision > 1 ? review.Revision - 1 : null);
    }

    private IEnumerable<QueueLine> Lines(Func<ClassRoom, ImmutableArray<Review>> of)
    {
        ImmutableArray<ClassRoom> mine = [.. access.ClassesOf(visitor.Person).Where(c => access.MentorsOrRuns(visitor.Person, c.Id))];
        return mine.SelectMany(room => of(room)
            .Select(r => (Review: r, Pattern: PatternOf(r)))
            .Where(r => r.Pattern is not null)
            .Select(r => new QueueLine(r.Review, r.Pattern!.Name, threads.NameOf(r.Review.OwnerId), mine.Length > 1 ? room.Name : null)));
    }

    // What lies in the trash, or belongs to someone who was removed, waits there unseen.
    private Pattern? PatternOf(Review review) =>
        store.Patterns.Find(review.PatternId) is { TrashedAt: null } pattern && store.People.Find(pattern.OwnerId) is { RemovedAt: null } ? pattern : null;

    private static ImmutableArray<CommentChoice> Choices(string recipeText, FlySheet sheet) =>
    [
        new("whole", "the whole fly"),
        new("part:hook", "the hook"),
        .. RecipeParser.Parse(recipeText).Value is { } recipe ? FlyBuilder.Names(recipe.Parts).Select(n => new CommentChoice($"part:{n}", $"the {n}")) : [],
        new("part:fishing", "how it is fished"),
        .. sheet.Diagnosis?.Findings.Select(f => new CommentChoice($"finding:{f.Code}", $"the finding “{f.Code}”")) ?? [],
    ];
}
