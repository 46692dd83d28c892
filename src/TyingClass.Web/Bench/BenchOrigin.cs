using TyingClass.Storage.People;
using TyingClass.Storage.Reviews;
using TyingClass.Web.Classes;
using TyingClass.Web.Identity;
using TyingClass.Web.Reviews;

namespace TyingClass.Web.Bench;

/// <summary>Somebody's fly that was opened on the bench, and the way back.</summary>
/// <param name="Fly">"Wren’s Slate Minnow, revision 2".</param>
/// <param name="Page">The address it came from.</param>
/// <param name="PageName">"the review".</param>
/// <param name="TakesVersion">What becomes of it here can be sent back from there as one's own version.</param>
public sealed record BenchOrigin(string Fly, string Page, string PageName, bool TakesVersion);

/// <summary>Tells whose fly is on the bench, to whoever may see it where it came from. To everyone else it came from nowhere.</summary>
public sealed class BenchOrigins(ReviewTable reviews, ReviewThreads threads, AttemptDesk attempts, Visitor visitor)
{
    /// <param name="from">A page of this program, as the address of the bench has it.</param>
    public BenchOrigin? Of(string? from) => visitor.PersonIfReadable is not { } me ? null : from?.Split('/') switch
    {
        ["", "reviews", var id] => OfReview(id, me),
        ["", "class", "students", var person, var exercise] when attempts.Open(person, exercise) is { } cell =>
            new BenchOrigin($"{cell.Person.Label}’s answer to “{cell.Exercise?.Title ?? exercise}”", from, "the answers", TakesVersion: false),
        _ => null,
    };

    private BenchOrigin? OfReview(string id, Person me) => reviews.Find(id) is { } review && reviews.PatternOf(review) is { } pattern
        ? new BenchOrigin(
            $"{threads.NameOf(pattern.OwnerId)}’s {pattern.Name}, revision {review.Revision}", $"/reviews/{review.Id}", "the review",
            review.State == ReviewState.Waiting && review.OwnerId != me.Id)
        : null;
}
