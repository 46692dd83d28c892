using TyingClass.Recipes.Text;
using TyingClass.Storage.Editing;
using TyingClass.Storage.Patterns;
using TyingClass.Storage.Reviews;
using TyingClass.Web.Reviews;

namespace TyingClass.Web.Patterns;

/// <summary>A mentor's version of a pattern, beside the owner's own.</summary>
/// <param name="By">The mentor's name.</param>
/// <param name="Pair">Null where one of the two makes no fly.</param>
public sealed record ProposalView(Pattern Pattern, Review Review, string By, RevisionPair? Pair);

/// <summary>What mentors proposed, for the owner to look at and to take.</summary>
public sealed class Proposals(PatternDesk desk, PatternStores store, RevisionPairs pairs, ReviewThreads threads)
{
    /// <returns>Null for a pattern this visitor does not have, or a review without a proposal.</returns>
    public ProposalView? Open(string patternId, string? reviewId)
    {
        if (desk.Own(patternId) is not { } pattern || reviewId is null) return null;
        if (store.Reviews.Find(reviewId) is not { Proposal: { } text } review || review.PatternId != patternId) return null;
        PatternRevision mine = store.Patterns.Revision(patternId, pattern.Revision)!;
        PatternRevision theirs = new(patternId, pattern.Revision + 1, text, review.Words, review.DecidedAt ?? review.AskedAt);
        return new ProposalView(pattern, review, review.DecidedById is { } by ? threads.NameOf(by) : "your mentor", pairs.Of(mine, theirs));
    }

    /// <summary>Makes it the next revision; the owner's own stay.</summary>
    /// <param name="expected">The latest revision as the page showed it.</param>
    /// <returns>Null when there is no such proposal; not saved when a revision came in between.</returns>
    public EditOutcome<Pattern>? Take(string patternId, string? reviewId, int expected) => Open(patternId, reviewId) is not { } view ? null
        : store.Patterns.Save(patternId, view.Pattern.OwnerId, expected, RecipeParser.Parse(view.Review.Proposal!).Value?.Name ?? view.Pattern.Name,
            view.Review.Proposal!, $"{view.By}’s version.");
}
