using System.Collections.Immutable;
using TyingClass.Storage.Patterns;
using TyingClass.Storage.People;
using TyingClass.Storage.Reviews;

namespace TyingClass.Web.Reviews;

/// <param name="By">The writer's name.</param>
/// <param name="On">What it is about, as a heading: "the cone", "only while dry"; null for the whole fly.</param>
public sealed record CommentView(ReviewComment Comment, string By, string? On);

/// <summary>One round with all that was said in it.</summary>
/// <param name="DecidedBy">Null while it waits.</param>
public sealed record RoundView(Review Review, string? DecidedBy, ImmutableArray<CommentView> Comments);

/// <summary>What was said about a pattern, round by round, for its owner and its mentors alike.</summary>
public sealed class ReviewThreads(ReviewStore reviewStore, PersonStore personStore)
{
    /// <summary>The latest round first; rounds withdrawn before a word was said are left out.</summary>
    public ImmutableArray<RoundView> Of(string patternId)
    {
        ILookup<string, ReviewComment> comments = reviewStore.CommentsOn(patternId).ToLookup(c => c.ReviewId);
        return [.. reviewStore.Of(patternId).Reverse()
            .Where(r => r.State != ReviewState.Withdrawn || comments.Contains(r.Id))
            .Select(r => new RoundView(r, r.DecidedById is { } id ? NameOf(id) : null, [.. comments[r.Id].Select(View)]))];
    }

    public string NameOf(string personId) => personStore.Find(personId)?.Label ?? "someone no longer on this server";

    /// <summary>How a pattern stands, said of the revision it is true of: "revision 2 came back with advice, revision 3 is not shown to anyone yet".</summary>
    public string Standing(Pattern pattern)
    {
        ArgumentNullException.ThrowIfNull(pattern);
        string word = StateWord(pattern.State);
        return reviewStore.Of(pattern.Id).LastOrDefault(r => r.State != ReviewState.Withdrawn) is { } last && last.Revision < pattern.Revision
            ? $"revision {last.Revision} {(last.State == ReviewState.SignedOff ? "is " : "")}{word}, revision {pattern.Revision} is not shown to anyone yet"
            : word;
    }

    private static string StateWord(PatternState state) => state switch
    {
        PatternState.Waiting => "waits for a mentor",
        PatternState.Returned => "came back with advice",
        PatternState.SignedOff => "signed off",
        _ => "not shown to anyone",
    };

    public static string StateWord(ReviewState state) => state switch
    {
        ReviewState.Waiting => "waiting",
        ReviewState.Returned => "returned",
        ReviewState.SignedOff => "signed off",
        _ => "taken back",
    };

    private CommentView View(ReviewComment comment) => new(comment, NameOf(comment.ById), comment.Subject switch
    {
        CommentSubject.Part => comment.About is "fishing" ? "how it is fished" : $"the {comment.About}",
        CommentSubject.Finding => $"the finding “{comment.About}”",
        CommentSubject.Log => "what the real fly did",
        _ => null,
    });
}
