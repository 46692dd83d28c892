using System.Collections.Immutable;
using TyingClass.Lessons.Courses;
using TyingClass.Lessons.Exercises;
using TyingClass.Storage.Attempts;
using TyingClass.Storage.Patterns;
using TyingClass.Storage.Reviews;
using TyingClass.Web.Identity;
using TyingClass.Web.Patterns;
using TyingClass.Web.Reviews;

namespace TyingClass.Web.Progress;

/// <summary>What a mentor or instructor did for a student.</summary>
public enum NewsKind
{
    /// <summary>Something came back: it is the student's turn.</summary>
    Returned,
    SignedOff,
    Accepted,
    Commented,
}

/// <param name="Words">What was written with it; may be empty.</param>
public sealed record NewsLine(NewsKind Kind, string Title, string Address, string By, string Words, DateTimeOffset At)
{
    /// <summary>"came back", "signed off": after the title.</summary>
    public string Did => Kind switch
    {
        NewsKind.Returned => "came back",
        NewsKind.SignedOff => "is signed off",
        NewsKind.Accepted => "is accepted",
        _ => "has a comment",
    };
}

/// <summary>Gathers what was done for the visitor: what waits for an answer of theirs until they give it, the rest for a while.</summary>
public sealed class NewsBoard(ICourseSource course, AttemptStore attempts, PatternStores store, ReviewThreads threads, Visitor visitor, TimeProvider time)
{
    public const int MostLines = 3;

    private static readonly TimeSpan Fresh = TimeSpan.FromDays(14);

    /// <summary>What is the visitor's turn first, then the latest.</summary>
    public ImmutableArray<NewsLine> Mine()
    {
        if (!visitor.HasAccount || visitor.Person is not { } me) return [];
        DateTimeOffset since = time.GetUtcNow() - Fresh;
        return
        [
            .. OfAttempts(me.Id).Concat(store.Patterns.Of(me.Id).SelectMany(p => OfPattern(p, me.Id)))
                .Where(n => n.Kind == NewsKind.Returned || n.At >= since)
                .OrderBy(n => n.Kind != NewsKind.Returned).ThenByDescending(n => n.At)
                .Take(MostLines),
        ];
    }

    // Only the last word on the last attempt: an answer sent in since has answered it.
    private IEnumerable<NewsLine> OfAttempts(string personId)
    {
        foreach (Attempt judged in attempts.JudgedOf(personId).GroupBy(a => a.ExerciseId).Select(g => g.MaxBy(a => a.Number)!))
        {
            if (judged.Number < attempts.StandingOf(personId, judged.ExerciseId).Attempts) continue;
            if (!course.Current.TryFindExercise(judged.ExerciseId, out _, out Exercise exercise)) continue;
            Judgment last = judged.Judgments[^1];
            yield return new NewsLine(
                last.Accepted ? NewsKind.Accepted : NewsKind.Returned, exercise.Title,
                $"/exercises/{Uri.EscapeDataString(exercise.Id)}#feedback", last.ByName, last.Reason, last.At);
        }
    }

    private IEnumerable<NewsLine> OfPattern(Pattern pattern, string personId)
    {
        if (store.Reviews.Of(pattern.Id) is not [.., { } round]) yield break;
        string address = PatternDesk.AddressOf(pattern.Id);
        if (round is { State: ReviewState.Returned or ReviewState.SignedOff, DecidedAt: { } at, DecidedById: { } by })
        {
            bool back = round.State == ReviewState.Returned;
            // A revision saved since is the answer to what came back.
            if (back && pattern.Revision > round.Revision) yield break;
            yield return new NewsLine(back ? NewsKind.Returned : NewsKind.SignedOff, pattern.Name, address, threads.NameOf(by), round.Words, at);
        }
        else if (round.State == ReviewState.Waiting && store.Reviews.CommentsOn(pattern.Id)
            .LastOrDefault(c => c.ReviewId == round.Id && c.ById != personId) is { } comment)
        {
            yield return new NewsLine(NewsKind.Commented, pattern.Name, address, threads.NameOf(comment.ById), comment.Text, comment.At);
        }
    }
}
