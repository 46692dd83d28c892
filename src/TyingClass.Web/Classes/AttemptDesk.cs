using System.Collections.Immutable;
using TyingClass.Lessons.Courses;
using TyingClass.Lessons.Exercises;
using TyingClass.Storage.Attempts;
using TyingClass.Storage.Comments;
using TyingClass.Storage.Editing;
using TyingClass.Storage.People;
using TyingClass.Web.Identity;

namespace TyingClass.Web.Classes;

/// <param name="Exercise">Null when it has left the course since.</param>
public sealed record CellView(Person Person, string ExerciseId, Exercise? Exercise, ImmutableArray<Attempt> Attempts, ImmutableArray<Comment> Comments);

/// <summary>Another person's attempts at one exercise: to read, accept, return, comment on.</summary>
public sealed class AttemptDesk(ICourseSource source, PersonStore personStore, AttemptStore attemptStore, CommentStore commentStore, ClassAccess access,
    Visitor visitor)
{
    /// <returns>Null when there is nothing to show, or not to this visitor: the two look the same.</returns>
    public CellView? Open(string personId, string exerciseId)
    {
        if (!access.MaySeeWorkOf(visitor.Person, personId) || personStore.Find(personId) is not { } person) return null;
        bool known = source.Current.TryFindExercise(exerciseId, out _, out Exercise exercise);
        ImmutableArray<Attempt> attempts = attemptStore.Of(personId, exerciseId);
        ImmutableArray<Comment> comments = [.. commentStore.To(personId).Where(c => c.ExerciseId == exerciseId)];
        return known || attempts.Length > 0 ? new CellView(person, exerciseId, known ? exercise : null, attempts, comments) : null;
    }

    public bool MayJudge(Attempt attempt) => access.MayJudge(visitor.Person, attempt);

    /// <summary>What comes back, and what overrules the engine, is explained; an answer that only waited to be read may be accepted without a word.</summary>
    public static bool NeedsReason(Attempt attempt, bool accept)
    {
        ArgumentNullException.ThrowIfNull(attempt);
        return !accept || !attempt.AwaitsReview;
    }

    public bool MayComment(Person person) => visitor.Person is { } me && person.Id != me.Id;

    /// <returns>Null when it was kept; else what to tell whoever typed it.</returns>
    public string? Judge(TypedJudgment typed)
    {
        ArgumentNullException.ThrowIfNull(typed);
        if (typed.AttemptId is null || attemptStore.Find(typed.AttemptId) is not { } attempt || !MayJudge(attempt))
            return "This attempt is not yours to decide. Nothing was changed.";
        if (typed.Accept is not { } accept) return "Say whether you accept it or return it.";
        if (string.IsNullOrWhiteSpace(typed.Reason) && NeedsReason(attempt, accept))
            return "Give a reason: the student reads it, and whoever looks at this register later.";
        EditOutcome<Attempt>? outcome = attemptStore.Judge(attempt.Id, typed.Expected, visitor.Person!, accept, typed.Reason ?? "");
        if (outcome is { Saved: false, Current.Judgments: [.., { } other] })
            return $"{other.ByName} {(other.Accepted ? "accepted" : "returned")} this attempt while you were writing"
                + $"{(other.Reason.Length > 0 ? $": “{other.Reason}”" : ".")} Yours was not kept, but it stands in the form: "
                + "send it again if you still mean it.";
        return outcome is null ? "This attempt is gone. Nothing was changed." : null;
    }

    /// <returns>Null when it was kept; else what to tell whoever typed it.</returns>
    public string? AddComment(string personId, string? exerciseId, string? text)
    {
        if (visitor.Person is not { } me || me.Id == personId || !access.MaySeeWorkOf(me, personId)) return "You cannot write to this person.";
        if (string.IsNullOrWhiteSpace(text)) return "Write something first.";
        commentStore.Add(personId, me.Id, me.Label, exerciseId, text);
        return null;
    }
}
