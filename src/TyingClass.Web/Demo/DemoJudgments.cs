using System.Collections.Immutable;
using TyingClass.Lessons.Courses;
using TyingClass.Storage.Attempts;
using TyingClass.Storage.Comments;

namespace TyingClass.Web.Demo;

/// <summary>What the invented mentor said.</summary>
internal static class DemoJudgments
{
    public const string MentorId = "demo-mentor";

    private static readonly ImmutableArray<string> Words =
    [
        "You have been at “{0}” for a while. Bring the fly on Wednesday: we will hang it together before you change anything.",
        "Try “{0}” again with one change only. Which part stands highest in the ledger?",
    ];

    /// <summary>Reads what waited longer than twelve days, and returns the thinnest of it; the rest still waits.</summary>
    public static Attempt Read(Attempt attempt, DateTimeOffset now)
    {
        if (!attempt.AwaitsReview || now - attempt.At < TimeSpan.FromDays(12)) return attempt;
        bool thin = attempt.Observations.IsEmpty && DemoAnswers.IsThin(attempt.AnswerText);
        string reason = thin ? "That is a beginning. Read the question once more: what else does it ask for? Then send it again."
            : attempt.Observations.IsEmpty ? "All that was asked is in it. Good." : "Measured with care.";
        return attempt with { Judgments = [new Judgment(MentorId, DemoPeople.Mentor, attempt.At.AddDays(3), !thin, reason)] };
    }

    /// <summary>A word to whoever is stuck: the first of them have read it.</summary>
    public static ImmutableArray<Comment> Comments(Course course, IEnumerable<Attempt> attempts, DateTimeOffset now)
    {
        Dictionary<string, string> titles = course.Exercises.ToDictionary(e => e.Id, e => e.Title);
        var stuck = attempts.GroupBy(a => (a.PersonId, a.ExerciseId))
            .Where(g => g.Count() > 1 && !g.Any(a => a.Counts || a.Waits))
            .OrderBy(g => g.Key.PersonId, StringComparer.Ordinal).ThenBy(g => g.Key.ExerciseId, StringComparer.Ordinal)
            .DistinctBy(g => g.Key.PersonId).Take(6);
        return [.. stuck.Select((g, i) =>
        {
            DateTimeOffset at = Earlier(g.Max(a => a.At).AddDays(1), now.AddHours(-3));
            string text = string.Format(System.Globalization.CultureInfo.InvariantCulture, Words[i % Words.Length], titles[g.Key.ExerciseId]);
            return new Comment($"demo-comment-{i + 1}", g.Key.PersonId, MentorId, DemoPeople.Mentor, g.Key.ExerciseId, at, text,
                i < 2 ? Earlier(at.AddDays(1), now.AddHours(-1)) : null);
        })];
    }

    private static DateTimeOffset Earlier(DateTimeOffset a, DateTimeOffset b) => a < b ? a : b;
}
