using System.Collections.Immutable;
using TyingClass.Recipes.Text;
using TyingClass.Storage.Classes;
using TyingClass.Storage.Patterns;
using TyingClass.Storage.People;
using TyingClass.Storage.Reviews;
using TyingClass.Web.Classes;
using TyingClass.Web.Editing;
using TyingClass.Web.Identity;

namespace TyingClass.Web.Reviews;

/// <summary>One line of the queue.</summary>
/// <param name="Class">Named only for someone with several.</param>
public sealed record QueueLine(Review Review, string Pattern, string Owner, string? Class);

/// <summary>What a review reads and changes.</summary>
public sealed record ReviewStores(ReviewStore Reviews, PatternStore Patterns, PersonStore People);

/// <summary>The mentor's side of reviews: the queue, and what the buttons of a review do.</summary>
public sealed class ReviewDesk(ReviewStores store, ReviewTable table, Visitor visitor, ClassAccess access, ReviewThreads threads)
{
    private const int MostDecided = 20;

    /// <summary>Longest wait first, over all classes this visitor mentors or teaches.</summary>
    public ImmutableArray<QueueLine> Queue() => [.. Lines(c => store.Reviews.Queue(c.Id)).OrderBy(l => l.Review.AskedAt)];

    /// <summary>The latest first.</summary>
    public ImmutableArray<QueueLine> Decided() =>
        [.. Lines(c => store.Reviews.Decided(c.Id, MostDecided)).OrderByDescending(l => l.Review.DecidedAt).Take(MostDecided)];

    /// <summary>Says something about a part, a finding, a drop in the tub or the whole. The same said twice over is said once.</summary>
    public ReviewAnswer Comment(string reviewId, ReviewForm form)
    {
        ArgumentNullException.ThrowIfNull(form);
        if (table.Find(reviewId) is not { } review || visitor.Person is not { } person) return ReviewAnswer.Missing;
        if (string.IsNullOrWhiteSpace(form.Text)) return new ReviewAnswer("Write something first, then send it.");
        (CommentSubject kind, string name) = form.About.Split(':', 2) switch
        {
            ["part", var part] => (CommentSubject.Part, part),
            ["finding", var code] => (CommentSubject.Finding, code),
            ["log", var entry] => (CommentSubject.Log, entry),
            _ => (CommentSubject.Whole, ""),
        };
        string said = form.Text.ReplaceLineEndings("\n").Trim();
        bool isRepeat = store.Reviews.CommentsOn(review.PatternId).LastOrDefault(c => c.ReviewId == review.Id) is { } last
            && last.ById == person.Id && last.Subject == kind && last.About == name && last.Text == said;
        if (!isRepeat) store.Reviews.AddComment(review.Id, person.Id, kind, name, form.Text);
        return ReviewAnswer.Done;
    }

    /// <summary>Puts a comment of one's own right.</summary>
    public ReviewAnswer Correct(string reviewId, string? commentId, ReviewForm form)
    {
        ArgumentNullException.ThrowIfNull(form);
        if (table.Find(reviewId) is null || visitor.Person is not { } person) return ReviewAnswer.Missing;
        return store.Reviews.CorrectComment(commentId ?? "", person.Id, form.Fixes.GetValueOrDefault(commentId ?? "")) ? ReviewAnswer.Done
            : new ReviewAnswer("That comment was not changed: it is not yours, or nothing was left of it.");
    }

    /// <summary>Sends it back with words.</summary>
    public ReviewAnswer Return(string reviewId, ReviewForm form)
    {
        ArgumentNullException.ThrowIfNull(form);
        return string.IsNullOrWhiteSpace(form.Words)
            ? Refuse(reviewId, "Nothing was decided yet: say in a word or two why it comes back. The student reads it first.")
            : Decide(reviewId, form.Version, new ReviewDecision(false, form.Words));
    }

    /// <summary>Sends it back with the mentor's own version, which the student may take as the next revision.</summary>
    public ReviewAnswer ReturnMine(string reviewId, ReviewForm form)
    {
        ArgumentNullException.ThrowIfNull(form);
        if (table.Find(reviewId) is not { } review) return ReviewAnswer.Missing;
        if (AnswerLimit.Check(form.Mine) is { } tooLong) return new ReviewAnswer(tooLong.Text);
        ParseResult<Recipes.Model.Recipe> parsed = RecipeParser.Parse(form.Mine);
        if (!parsed.Success) return new ReviewAnswer($"Your version is no recipe yet. Line {parsed.Errors[0].Line}: {parsed.Errors[0].Text}");
        if (form.Mine.Trim() == table.RecipeOf(review).ReplaceLineEndings("\n").Trim())
            return new ReviewAnswer("Your version is still the student’s own: change something in it first, or return it with words alone.");
        if (string.IsNullOrWhiteSpace(form.Words)) return new ReviewAnswer("Nothing was decided yet: say in a word or two what you changed, and why.");
        if (!form.AllTheSame && !table.Rides(form.Mine))
            return new ReviewAnswer($"Nothing was sent yet. By the engine your version does not ride as it is meant to: {table.WhatItWouldDo(form.Mine)} "
                + "Change it, or tick “send it all the same”.")
            { MayAllTheSame = true };
        return Decide(reviewId, form.Version, new ReviewDecision(false, form.Words, form.Mine));
    }

    /// <summary>A fly that does not ride as meant is signed off past a warning, with a reason.</summary>
    public ReviewAnswer SignOff(string reviewId, ReviewForm form)
    {
        ArgumentNullException.ThrowIfNull(form);
        if (table.Find(reviewId) is not { } review) return ReviewAnswer.Missing;
        bool rides = table.Rides(table.RecipeOf(review));
        return !rides && string.IsNullOrWhiteSpace(form.Despite) && review.State == ReviewState.Waiting && review.Version == form.Version
            ? Refuse(reviewId, "Nothing was decided yet. By the engine this fly does not ride as it is meant to: say below why it should stand in the book "
                + "all the same. The book says what it does, and your reason.")
            : Decide(reviewId, form.Version, new ReviewDecision(true, form.Words, null, rides ? null : form.Despite));
    }

    /// <summary>Takes a decision back, and its words with it.</summary>
    /// <returns>As it was decided, its words, version and reason to be used again; null where nothing was taken back.</returns>
    public (ReviewAnswer Answer, Review? Was) Reopen(string reviewId, int expectedVersion)
    {
        if (table.Find(reviewId) is not { } review || review.OwnerId == visitor.Person?.Id) return (ReviewAnswer.Missing, null);
        return store.Reviews.Reopen(review.Id, expectedVersion) switch
        {
            null => (ReviewAnswer.Missing, null),
            { Saved: true } => (ReviewAnswer.Done, review),
            { Current: var now } => (Meanwhile(now), null),
        };
    }

    private ReviewAnswer Refuse(string reviewId, string trouble) =>
        table.Find(reviewId) is { } review && visitor.Person is { } person && review.OwnerId != person.Id ? new ReviewAnswer(trouble) : ReviewAnswer.Missing;

    private ReviewAnswer Decide(string reviewId, int version, ReviewDecision decision)
    {
        if (table.Find(reviewId) is not { } review || visitor.Person is not { } person || review.OwnerId == person.Id) return ReviewAnswer.Missing;
        return store.Reviews.Decide(review.Id, person.Id, version, decision) switch
        {
            null => ReviewAnswer.Missing,
            { Saved: true } => ReviewAnswer.Done,
            { Current: var now } => Meanwhile(now),
        };
    }

    private static ReviewAnswer Meanwhile(Review now) => new(
        now.State == ReviewState.Waiting
            ? "The student moved this on to another revision while you were reading. Nothing was decided: look at it as it is now. What you wrote stands below."
            : $"This was {ReviewThreads.StateWord(now.State)} by someone else while you were reading, or has moved on since. Nothing was changed. What you "
                + "wrote stands below: you can still send it as a comment.",
        StatusCodes.Status409Conflict);

    private IEnumerable<QueueLine> Lines(Func<ClassRoom, ImmutableArray<Review>> of)
    {
        ImmutableArray<ClassRoom> mine = [.. access.ClassesOf(visitor.Person).Where(c => access.MentorsOrRuns(visitor.Person, c.Id))];
        return mine.SelectMany(room => of(room)
            .Select(r => (Review: r, Pattern: table.PatternOf(r)))
            .Where(r => r.Pattern is not null)
            .Select(r => new QueueLine(r.Review, r.Pattern!.Name, threads.NameOf(r.Review.OwnerId), mine.Length > 1 ? room.Name : null)));
    }
}
