using System.Collections.Immutable;
using TyingClass.Storage.Editing;
using TyingClass.Storage.Files;
using TyingClass.Storage.Patterns;

namespace TyingClass.Storage.Reviews;

/// <summary>Rounds of review and the comments made in them. Who may ask and decide is for the pages to judge; what fits together is judged here.</summary>
public sealed class ReviewStore
{
    public const int MostTextLength = 4000;
    private const int MostAboutLength = 100;

    private readonly Database _database;
    private readonly TimeProvider _time;

    internal ReviewStore(Database database, TimeProvider time) => (_database, _time) = (database, time);

    /// <summary>Asks about the latest revision. While a round waits, it is moved on to that revision and keeps its place in the queue.</summary>
    /// <returns>Null when this person has no such pattern, or it lies in the trash.</returns>
    public Review? Ask(string patternId, string ownerId, string classId, string? question) => _database.Write(db =>
    {
        if (PatternDocument.Find(db, patternId) is not { TrashedAt: null } pattern || pattern.OwnerId != ownerId) return null;
        string words = CleanText.Lines(question ?? "", MostTextLength);
        Review asked = ReviewDocument.WaitingIn(db, patternId) is { } waiting
            ? waiting with { Revision = pattern.Revision, Question = words.Length > 0 ? words : waiting.Question }
            : new Review(RandomId.New(), patternId, ownerId, classId, pattern.Revision, words, _time.GetUtcNow(), ReviewState.Waiting, 0);
        Review kept = ReviewDocument.Keep(db, asked);
        Follow(db, pattern);
        return kept;
    });

    /// <returns>False when nothing of this person's waits under that pattern.</returns>
    public bool Withdraw(string patternId, string ownerId) => _database.Write(db =>
    {
        if (ReviewDocument.WaitingIn(db, patternId) is not { } waiting || waiting.OwnerId != ownerId) return false;
        ReviewDocument.Keep(db, waiting with { State = ReviewState.Withdrawn, DecidedAt = _time.GetUtcNow() });
        Follow(db, PatternDocument.Find(db, patternId)!);
        return true;
    });

    /// <summary>Returns the pattern to its owner, or signs it off and puts it in the class's book.</summary>
    /// <param name="expectedVersion">Of the review as the mentor read it.</param>
    /// <returns>Null when there is no such review.</returns>
    public EditOutcome<Review>? Decide(string reviewId, string mentorId, int expectedVersion, ReviewDecision decision) => _database.Write(db =>
    {
        if (ReviewDocument.Find(db, reviewId) is not { } review) return null;
        if (review.State != ReviewState.Waiting || review.Version != expectedVersion) return new EditOutcome<Review>(false, review);
        Review decided = ReviewDocument.Keep(db, review with
        {
            State = decision.SignOff ? ReviewState.SignedOff : ReviewState.Returned,
            DecidedById = mentorId,
            DecidedAt = _time.GetUtcNow(),
            Words = CleanText.Lines(decision.Words ?? "", MostTextLength),
            Proposal = decision.Proposal,
            Despite = decision.Despite is { } why && CleanText.Lines(why, MostTextLength) is { Length: > 0 } reason ? reason : null,
        });
        Follow(db, PatternDocument.Find(db, review.PatternId)!);
        return new EditOutcome<Review>(true, decided);
    });

    /// <summary>Takes a decision back, and its words with it: the round waits again, at its old place in the queue.</summary>
    /// <returns>Null when there is no such review; not saved when a later round exists or someone changed it meanwhile.</returns>
    public EditOutcome<Review>? Reopen(string reviewId, int expectedVersion) => _database.Write(db =>
    {
        if (ReviewDocument.Find(db, reviewId) is not { } review) return null;
        bool isLast = ReviewDocument.Of(db, review.PatternId).Last().Id == review.Id;
        if (!isLast || review.Version != expectedVersion || review.State is not (ReviewState.Returned or ReviewState.SignedOff))
            return new EditOutcome<Review>(false, review);
        Review waiting = ReviewDocument.Keep(db, review with
        {
            State = ReviewState.Waiting,
            DecidedById = null,
            DecidedAt = null,
            Words = "",
            Proposal = null,
            Despite = null,
        });
        Follow(db, PatternDocument.Find(db, review.PatternId)!);
        return new EditOutcome<Review>(true, waiting);
    });

    /// <summary>Longest wait first.</summary>
    public ImmutableArray<Review> Queue(string classId) =>
        _database.Read(db => OnShelf(db, classId, ReviewState.Waiting).OrderBy(r => r.AskedAt).ToImmutableArray());

    /// <summary>Returned or signed off, the latest first.</summary>
    public ImmutableArray<Review> Decided(string classId, int most) => _database.Read(db => OnShelf(db, classId, ReviewState.Returned)
        .Concat(OnShelf(db, classId, ReviewState.SignedOff)).OrderByDescending(r => r.DecidedAt).Take(most).ToImmutableArray());

    public Review? Find(string reviewId) => _database.Read(db => ReviewDocument.Find(db, reviewId));

    /// <summary>Every round of a pattern, first to last.</summary>
    public ImmutableArray<Review> Of(string patternId) => _database.Read(db => ReviewDocument.Of(db, patternId).ToImmutableArray());

    /// <returns>Null when there is no such review or nothing was written.</returns>
    public ReviewComment? AddComment(string reviewId, string byId, CommentSubject subject, string about, string? text) => _database.Write(db =>
    {
        if (ReviewDocument.Find(db, reviewId) is not { } review || CleanText.Lines(text ?? "", MostTextLength) is not { Length: > 0 } words) return null;
        ReviewComment comment = new(
            RandomId.New(), review.PatternId, review.Id, review.Revision, byId, _time.GetUtcNow(),
            subject, CleanText.Line(about, MostAboutLength) ?? "", words);
        ReviewDocument.Comments(db).Insert(ReviewDocument.From(comment));
        return comment;
    });

    /// <summary>By its writer only; it says when.</summary>
    /// <returns>False when there is no such comment of this person's, or nothing was written.</returns>
    public bool CorrectComment(string commentId, string byId, string? text) => _database.Write(db =>
    {
        if (ReviewDocument.Comments(db).FindById(commentId) is not { } found || ReviewDocument.ToComment(found) is not { } comment || comment.ById != byId
            || CleanText.Lines(text ?? "", MostTextLength) is not { Length: > 0 } words) return false;
        return words == comment.Text || ReviewDocument.Comments(db).Update(
            ReviewDocument.From(comment with { Text = words, CorrectedAt = _time.GetUtcNow() }));
    });

    /// <summary>Every comment on a pattern, first to last.</summary>
    public ImmutableArray<ReviewComment> CommentsOn(string patternId) => _database.Read(db => ReviewDocument.Comments(db).FindAll("patternId = @0", patternId)
        .Select(ReviewDocument.ToComment).OrderBy(c => c.At).ThenBy(c => c.Id, StringComparer.Ordinal).ToImmutableArray());

    private static IEnumerable<Review> OnShelf(OpenData db, string classId, ReviewState state) =>
        ReviewDocument.Reviews(db).FindAll("shelf = @0", ReviewDocument.Shelf(classId, state)).Select(ReviewDocument.ToReview);

    // The pattern's own words about its reviews follow from its rounds; the book holds the last revision signed off, whatever came after.
    private static void Follow(OpenData db, Pattern pattern)
    {
        Review? book = ReviewDocument.Of(db, pattern.Id).LastOrDefault(r => r.State == ReviewState.SignedOff);
        PatternDocument.Keep(db, pattern with
        {
            State = ReviewDocument.StateOf(db, pattern.Id),
            SignedOffRevision = book?.Revision,
            BookClassId = book?.ClassId,
        });
    }
}
